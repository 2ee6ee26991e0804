package org.bondspan.io;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.code.LineLengths;
import org.bondspan.layout.End;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;

/** Reads where conductors and links begin and end. */
final class EndReader {
    private static final List<String> KINDS = List.of("service", "electrode", "path", "conductor", "joint", "place");
    private static final String ONE = "Write one of " + String.join(", ", KINDS) + ", such as {\"electrode\": \"E1\"}";

    /** Stands in for an end that cannot be told. */
    private static final End NOWHERE = new End.AtJoint("");

    private final Site site;

    EndReader(Site site) {
        this.site = site;
    }

    End end(Fields fields, String name) {
        fields.require(name, ONE);
        return fields.findObject(name, "end", this::end).orElse(NOWHERE);
    }

    private End end(Fields fields) {
        List<String> named = KINDS.stream().filter(fields::has).toList();
        if (named.size() != 1) {
            fields.reportWhole(
                    named.isEmpty() ? "says nothing" : "says " + String.join(" and ", named) + " at once", ONE);
            fields.accept(KINDS);
            fields.accept(List.of("connection", "distance", "at"));
            return NOWHERE;
        }
        return switch (named.get(0)) {
            case "service" -> service(fields);
            case "electrode" -> electrode(fields);
            case "path" -> path(fields);
            case "conductor" ->
                new End.OnConductor(
                        fields.findReference("conductor", Kind.CONDUCTOR).orElse(""),
                        fields.distance("at", "Give the distance from the from end of that conductor in {unit}"));
            case "joint" -> new End.AtJoint(fields.name("joint", "Give the id of the joint"));
            default ->
                fields.findObject("place", "place", place -> Drawn.in(place).position())
                        .<End>map(End.AtPlace::new)
                        .orElse(NOWHERE);
        };
    }

    private End path(Fields fields) {
        String id = fields.findReference("path", Kind.PATH).orElse("");
        Optional<Length> distance = fields.findDistance("distance");
        site.paths().stream()
                .filter(path -> path.id().equals(id))
                .flatMap(path -> findLength(path).stream())
                .filter(whole -> distance.isPresent()
                        && whole.plus(LineLengths.SAME_PLACE).isLessThan(distance.get()))
                .forEach(whole -> fields.report(
                        "distance",
                        "lies beyond the end of " + id + ", which is "
                                + Numbers.print(whole, fields.scope().values().unit()) + " long",
                        "Measure along its line, from the first vertex on"));
        return new End.OnPath(id, distance);
    }

    /** Of a line drawn for it, or measured where that is longer. */
    private static Optional<Length> findLength(SitePath path) {
        Optional<Length> drawn = path.findLine().map(LineLengths::of);
        return path instanceof CopperLine copper
                ? Stream.concat(drawn.stream(), copper.measured().stream()).max(Comparator.naturalOrder())
                : drawn;
    }

    private End service(Fields fields) {
        String id = fields.findReference("service", Kind.SERVICE).orElse("");
        Optional<List<Connection>> connections = site.services().stream()
                .filter(service -> service.id().equals(id))
                .map(Service::connections)
                .findFirst();
        return new End.AtService(id, connection(fields, "service " + id, connections));
    }

    private End electrode(Fields fields) {
        String id = fields.findReference("electrode", Kind.ELECTRODE).orElse("");
        Optional<List<Connection>> connections = site.electrodes().stream()
                .filter(electrode -> electrode.id().equals(id))
                .map(Electrode::connections)
                .findFirst();
        return new End.AtElectrode(id, connection(fields, "electrode " + id, connections));
    }

    /** Connections of what is unknown are not looked for. */
    private static Optional<String> connection(Fields fields, String owner, Optional<List<Connection>> connections) {
        Optional<String> id = fields.findText("connection");
        List<String> known = connections.orElse(List.of()).stream()
                .flatMap(connection -> connection.id().stream())
                .toList();
        if (connections.isPresent() && id.isPresent() && !known.contains(id.get())) {
            fields.report(
                    "connection",
                    owner + " has no connection \"" + id.get() + "\"",
                    Nearest.advice(id.get(), known, "Leave it out: its connections have no ids"));
        }
        return id;
    }
}
