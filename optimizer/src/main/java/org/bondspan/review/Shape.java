package org.bondspan.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.review.Stroke.Heights;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.StructuralFrame;

/** Drawn metal as strokes; the same on each of its levels. */
record Shape(List<String> levels, List<Stroke> strokes) {
    Shape {
        levels = List.copyOf(levels);
        strokes = List.copyOf(strokes);
    }

    static Shape of(SitePath path) {
        return path instanceof StructuralFrame frame
                ? of(frame)
                : path.findLine().map(Shape::of).orElse(new Shape(List.of(), List.of()));
    }

    private static Shape of(Line line) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 1; i < line.vertices().size(); i++) {
            strokes.add(new Stroke(line.vertices().get(i - 1), line.vertices().get(i)));
        }
        return new Shape(List.of(line.level()), strokes);
    }

    private static Shape of(StructuralFrame frame) {
        Stream<Stroke> columns = frame.columns().stream()
                .map(at -> new Stroke(new LineVertex(at, frame.bottom()), new LineVertex(at, frame.top())));
        Stream<Stroke> beams = frame.beams().stream()
                .map(beam -> new Stroke(
                        new LineVertex(beam.from(), frame.beamHeight()),
                        new LineVertex(beam.to(), frame.beamHeight())));
        return new Shape(frame.levels(), Stream.concat(columns, beams).toList());
    }

    /** With these places besides. */
    Shape with(List<Position> places) {
        List<String> allLevels = new ArrayList<>(levels);
        List<Stroke> all = new ArrayList<>(strokes);
        for (Position place : places) {
            LineVertex point = new LineVertex(place.at(), place.height());
            allLevels.add(place.level());
            all.add(new Stroke(point, point));
        }
        return new Shape(allLevels.stream().distinct().toList(), all);
    }

    boolean isAt(Position place) {
        Heights point = new Heights(place.height(), place.height());
        return levels.contains(place.level())
                && strokes.stream()
                        .flatMap(stroke -> stroke.findHeights(place.at()).stream())
                        .anyMatch(heights -> heights.findCommon(point).isPresent());
    }

    /** Places at which both have something at one height: ends, columns and crossings. */
    Set<Position> meet(Shape other) {
        Set<Position> meetings = new LinkedHashSet<>();
        List<String> common = levels.stream().filter(other.levels::contains).toList();
        for (Stroke mine : strokes) {
            for (Stroke theirs : other.strokes) {
                for (PlanPoint at : candidates(mine, theirs)) {
                    mine.findHeights(at)
                            .flatMap(a -> theirs.findHeights(at).flatMap(a::findCommon))
                            .ifPresent(
                                    height -> common.forEach(level -> meetings.add(new Position(level, at, height))));
                }
            }
        }
        return meetings;
    }

    private static List<PlanPoint> candidates(Stroke a, Stroke b) {
        return Stream.concat(
                        Stream.of(a.from().at(), a.to().at(), b.from().at(), b.to().at()), a.findCrossing(b).stream())
                .toList();
    }
}
