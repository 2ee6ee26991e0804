package org.bondspan.io;

import java.util.Optional;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Level;
import org.bondspan.site.Riser;
import org.bondspan.site.Wall;
import org.bondspan.units.Length;

/** Reads levels, their closed areas, and risers. */
final class LevelReader {
    private LevelReader() {}

    static Level level(Fields fields) {
        return new Level(
                fields.id(Kind.LEVEL),
                fields.findLength("floor").orElse(Length.ZERO),
                OutlineReader.read(fields),
                fields.findObject("open", "open floor", LevelReader::openHeight).flatMap(height -> height),
                fields.each("closedAreas", "closed area", LevelReader::closedArea),
                fields.each("walls", "wall", LevelReader::wall));
    }

    private static Optional<Length> openHeight(Fields fields) {
        fields.require("height", "Give the height above the floor, in {unit}, at which copper runs");
        return fields.findLength("height");
    }

    private static ClosedArea closedArea(Fields fields) {
        return new ClosedArea(fields.id(Kind.CLOSED_AREA), OutlineReader.read(fields));
    }

    private static Wall wall(Fields fields) {
        return new Wall(
                fields.id(Kind.WALL),
                LineReader.readPlan(fields, "Draw it from vertex to vertex: [[x, y], [x, y]]"),
                PriceReader.findMoney(fields, "crossing"));
    }

    static Riser riser(Fields fields) {
        Riser riser = new Riser(
                fields.id(Kind.RISER), Drawn.in(fields).at(), Drawn.in(fields).levels());
        if (riser.levels().size() == 1
                && (fields.has("levels") || fields.scope().levels().size() == 1)) {
            fields.report("levels", "names fewer than two levels", "Name the levels that the riser joins");
        }
        return riser;
    }
}
