package org.bondspan.code;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.units.Length;

/**
 * The lines of a site whose measured length replaces the drawn one, shared out in proportion: what runs along them is
 * as long as the tape says. Immutable.
 */
public final class MeasuredLines {
    private final Site site;
    private final List<CopperLine> lines;

    public MeasuredLines(Site site) {
        this.site = site;
        this.lines = site.listPaths(CopperLine.class).stream()
                .filter(line -> findLength(line).isPresent())
                .toList();
    }

    /** The measured length of a line; empty where that of the drawing holds. */
    public static Optional<Length> findLength(CopperLine line) {
        return line.measured().filter(length -> !length.equals(LineLengths.of(line.line())));
    }

    /** By how much copper may be shorter than drawn, along all of them. */
    public Length mostSaved() {
        Length saved = Length.ZERO;
        for (CopperLine line : lines) {
            Length drawn = LineLengths.of(line.line());
            Length measured = line.measured().orElse(drawn);
            saved = measured.isLessThan(drawn) ? saved.plus(drawn.minus(measured)) : saved;
        }
        return saved;
    }

    /** Length of a run as drawn but along these lines, where it is as measured. */
    public Length of(List<Position> run) {
        Length sum = Length.ZERO;
        for (int i = 1; i < run.size(); i++) {
            sum = sum.plus(of(run.get(i - 1), run.get(i)));
        }
        return sum;
    }

    /** A straight run that may go along a line over a part of it: cut where a line begins, bends or ends. */
    private Length of(Position a, Position b) {
        TreeMap<Length, Position> cuts = new TreeMap<>();
        for (CopperLine line : lines) {
            line.line().vertices().stream()
                    .map(vertex -> new Position(line.line().level(), vertex.at(), vertex.height()))
                    .forEach(place -> LineLengths.findDistance(a, b, place).ifPresent(along -> cuts.put(along, place)));
        }
        cuts.put(site.distance(a, b), b);
        Length sum = Length.ZERO;
        Position before = a;
        for (Position cut : cuts.values()) {
            sum = sum.plus(piece(before, cut));
            before = cut;
        }
        return sum;
    }

    private Length piece(Position a, Position b) {
        return lines.stream()
                .flatMap(line -> findAlong(line, a, b).stream())
                .findFirst()
                .orElseGet(() -> site.distance(a, b));
    }

    /** Between two places of a line; empty where they do not both lie on it. */
    private static Optional<Length> findAlong(CopperLine line, Position a, Position b) {
        Optional<Length> from = LineLengths.findDistance(line.line(), a);
        Optional<Length> to = LineLengths.findDistance(line.line(), b);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        long drawn = from.get().distanceTo(to.get()).nanometres();
        long whole = LineLengths.of(line.line()).nanometres();
        return line.measured()
                .map(measured -> Length.ofNanometres(LineLengths.share(measured.nanometres(), drawn, whole)));
    }
}
