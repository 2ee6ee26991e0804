package org.bondspan.io;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.io.json.Node;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.NotPermitted;
import org.bondspan.site.Electrode.OtherUndergroundMetal;
import org.bondspan.site.Electrode.TieMeans;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Electrode.WaterUse;
import org.bondspan.site.FireLine;
import org.bondspan.site.Service;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.WaterPiping;

/** What several things of a site together must hold. */
final class SiteChecks {
    private final Fields site;
    private final Optional<FireLine> fireLine;
    private final List<Bound<SitePath>> paths;
    private final Set<String> waterPipeIds = new HashSet<>();

    SiteChecks(Fields site, Optional<FireLine> fireLine, List<Bound<SitePath>> paths) {
        this.site = site;
        this.fireLine = fireLine;
        this.paths = paths;
    }

    /** Services name what feeds them, and those of one supply have one material. */
    void checkServices(List<Bound<Service>> services) {
        Map<String, Bound<Service>> firsts = new HashMap<>();
        for (Bound<Service> service : services) {
            if (services.size() > 1 && !service.fields().has("supply")) {
                service.fields()
                        .report(
                                "supply",
                                "is missing",
                                "With several services each names the service drop or lateral that feeds it");
                continue;
            }
            Bound<Service> first = firsts.putIfAbsent(service.value().supply(), service);
            if (first != null) {
                compareMaterials(first, service);
            }
        }
    }

    private static void compareMaterials(Bound<Service> first, Bound<Service> other) {
        Optional<String> one = material(first.fields());
        Optional<String> two = material(other.fields());
        if (one.isPresent() && two.isPresent() && !one.equals(two)) {
            other.fields()
                    .report(
                            "ungrounded",
                            "is of " + two.get() + ", but service \""
                                    + first.value().id() + "\" on the same supply is of " + one.get(),
                            "Services of one supply have one material; name another supply where there is one");
        }
    }

    /** As written, where it is one of the two words. */
    private static Optional<String> material(Fields service) {
        return service.find("ungrounded")
                .filter(Node.Struct.class::isInstance)
                .flatMap(phase -> ((Node.Struct) phase).find("material"))
                .filter(Node.Text.class::isInstance)
                .map(word -> ((Node.Text) word).value())
                .filter(word -> word.equals("copper") || word.equals("aluminum"));
    }

    void checkElectrodes(List<Bound<Electrode>> electrodes) {
        electrodes.stream()
                .map(Bound::value)
                .filter(WaterPipeElectrode.class::isInstance)
                .forEach(electrode -> waterPipeIds.add(electrode.id()));
        for (Bound<Electrode> electrode : electrodes) {
            if (electrode.value() instanceof WaterPipeElectrode pipe) {
                checkWaterPipe(pipe, electrode.fields());
            } else if (needsConnection(electrode.value()) && electrode.fields().isWithout("connections")) {
                electrode
                        .fields()
                        .reportNone("connections", "Give at least one place where a conductor can land on it");
            }
        }
    }

    private boolean needsConnection(Electrode electrode) {
        if (electrode instanceof InGroundMetal metal) {
            return metal.frame().isEmpty();
        }
        if (electrode instanceof ConcreteEncased encased) {
            boolean tied = encased.tiedToFrame()
                    .filter(tie -> tie.means() != TieMeans.WET_SET)
                    .isPresent();
            return encased.reachable() && !tied;
        }
        return !(electrode instanceof NotPermitted)
                && !(electrode instanceof OtherUndergroundMetal metal && !metal.use());
    }

    private void checkWaterPipe(WaterPipeElectrode pipe, Fields fields) {
        boolean fire = pipe.use() == WaterUse.FIRE;
        if (fire && fireLine.isEmpty() && !site.has("fireLine")) {
            fields.report(
                    "use",
                    "is \"fire\", but the site has no fireLine",
                    "Write \"fireLine\": \"electrode\" or \"bond-only\" into the site, as the project decides: NFPA 70 and"
                            + " NFPA 13 and 24 differ");
        }
        if (hasMetalPath(pipe.id()) || mayHaveMisspeltPath()) {
            return;
        }
        if (fields.isWithout("connections")) {
            fields.reportNone(
                    "connections",
                    "Draw its path inside the building, or give the places where a conductor can land on it");
        } else if (!(fire && fireLine.equals(Optional.of(FireLine.BOND_ONLY)))) {
            checkDistances(pipe, fields);
        }
    }

    private boolean hasMetalPath(String electrode) {
        return paths.stream()
                .anyMatch(path -> path.value() instanceof WaterPiping piping
                        && piping.metal()
                        && piping.electrode().equals(Optional.of(electrode)));
    }

    /**
     * A pipe that names no water-pipe electrode of the file may be meant for this one: its name is the one mistake to
     * tell.
     */
    private boolean mayHaveMisspeltPath() {
        return paths.stream()
                .filter(path -> path.value() instanceof WaterPiping)
                .flatMap(path -> electrodeOf(path.value()).stream())
                .anyMatch(id -> !waterPipeIds.contains(id));
    }

    private static void checkDistances(WaterPipeElectrode pipe, Fields fields) {
        if (!(fields.node().find("connections").orElse(null) instanceof Node.Array list)) {
            return;
        }
        for (int i = 0; i < list.items().size(); i++) {
            if (list.items().get(i) instanceof Node.Struct connection
                    && connection.find("fromEntrance").isEmpty()) {
                fields.scope()
                        .values()
                        .reject(
                                connection,
                                fields.path("connections") + "[" + i + "].fromEntrance",
                                "is missing, as no metal path continues \"" + pipe.id() + "\"",
                                "Give the distance along the pipe from the point of entrance; 250.68(C)(1) lets the first"
                                        + " 5 ft be used");
            }
        }
    }

    /** No two pipes, no two rings name one electrode. */
    void checkPaths() {
        Map<String, String> taken = new HashMap<>();
        for (Bound<SitePath> path : paths) {
            electrodeOf(path.value()).ifPresent(electrode -> {
                String first = taken.putIfAbsent(electrode, path.value().id());
                if (first != null) {
                    path.fields()
                            .report(
                                    "electrode",
                                    "the path \"" + first + "\" names the electrode \"" + electrode + "\" too",
                                    "Draw one path for each electrode");
                }
            });
        }
    }

    private static Optional<String> electrodeOf(SitePath path) {
        if (path instanceof RingPath ring) {
            return Optional.of(ring.electrode()).filter(id -> !id.isEmpty());
        }
        return path instanceof WaterPiping piping ? piping.electrode() : Optional.empty();
    }
}
