package org.bondspan.io;

import java.util.List;
import java.util.Optional;
import org.bondspan.site.Line;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.Break;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.Medium;
import org.bondspan.site.SitePath.NeverCarries;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;

/** Reads paths; structural frames have a reader of their own. */
final class PathReader {
    static final List<String> MEDIA = List.of(
            "copper",
            "structural-frame",
            "water-pipe",
            "ring",
            "conductor",
            "footing-rebar",
            "gas-pipe",
            "roof-deck",
            "other");

    private static final String LINE = "Draw it from vertex to vertex: [[x, y], [x, y]] or [x, y, height], in {unit}";

    private PathReader() {}

    static SitePath path(Fields fields) {
        Optional<String> medium = fields.require("medium", "Write one of " + String.join(", ", MEDIA))
                .flatMap(node -> fields.scope().values().text(node, fields.path("medium")));
        return switch (medium.orElse("")) {
            case "copper" -> copper(fields);
            case "structural-frame" -> FrameReader.frame(fields);
            case "water-pipe" -> waterPipe(fields);
            case "ring" -> ring(fields);
            case "conductor" ->
                new InstalledConductor(
                        id(fields),
                        line(fields),
                        fields.size("size", "Give its size; 250.66 lets it carry up to that"));
            case "footing-rebar" -> never(fields, Medium.FOOTING_REBAR);
            case "gas-pipe" -> never(fields, Medium.GAS_PIPE);
            case "roof-deck" -> never(fields, Medium.ROOF_DECK);
            case "other" -> never(fields, Medium.OTHER);
            default -> unclear(fields, medium);
        };
    }

    private static SitePath unclear(Fields fields, Optional<String> medium) {
        medium.ifPresent(word ->
                fields.report("medium", "\"" + word + "\" is no medium of a path", Nearest.advice(word, MEDIA)));
        fields.acceptAll();
        return new NeverCarries(fields.id(Kind.UNCLEAR), Medium.OTHER, new Line("", List.of()));
    }

    private static String id(Fields fields) {
        return fields.id(Kind.OTHER_PATH);
    }

    private static Line line(Fields fields) {
        return LineReader.read(fields, LINE);
    }

    private static SitePath copper(Fields fields) {
        CopperLine copper = new CopperLine(id(fields), line(fields), fields.findDistance("length"));
        if (copper.measured().filter(Length::isZero).isPresent()) {
            fields.report("length", "must be more than 0", "Give the measured length in {unit}, or leave it out");
        }
        return copper;
    }

    private static SitePath never(Fields fields, Medium medium) {
        return new NeverCarries(id(fields), medium, line(fields));
    }

    private static SitePath ring(Fields fields) {
        return new RingPath(
                id(fields),
                fields.reference("electrode", Kind.RING_ELECTRODE, "Give the id of the ring electrode"),
                LineReader.find(fields),
                fields.flag("mayInterconnect", false));
    }

    private static SitePath waterPipe(Fields fields) {
        Line line = line(fields);
        Optional<Length> along = lengthOf(line);
        return new WaterPiping(
                id(fields),
                fields.findReference("electrode", Kind.WATER_PIPE_ELECTRODE),
                line,
                fields.flag("exposed", false),
                fields.flag("metal", true),
                fields.flag("bondingRequired", true),
                fields.each("breaks", "break", item -> pipeBreak(item, along)));
    }

    private static Break pipeBreak(Fields fields, Optional<Length> along) {
        Length distance =
                fields.distance("distance", "Give the distance from the point of entrance along the pipe in {unit}");
        if (along.isPresent() && along.get().isLessThan(distance)) {
            fields.report(
                    "distance", "lies beyond the end of the pipe", "Measure from the point of entrance along the line");
        }
        return new Break(
                distance,
                fields.findText("kind").orElse("break"),
                fields.distance("jumper", "Give the length of the jumper around it in {unit}"),
                fields.flag("installed", false));
    }

    /** Empty where too little of the line could be read. */
    private static Optional<Length> lengthOf(Line line) {
        Length sum = Length.ZERO;
        for (int i = 1; i < line.vertices().size(); i++) {
            var from = line.vertices().get(i - 1);
            var to = line.vertices().get(i);
            sum = sum.plus(Length.ofRun(
                    to.at().x() - from.at().x(),
                    to.at().y() - from.at().y(),
                    to.height().minus(from.height()).nanometres()));
        }
        return line.vertices().size() < 2 ? Optional.empty() : Optional.of(sum);
    }
}
