package org.bondspan.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.code.Carrier;
import org.bondspan.code.LineLengths;
import org.bondspan.code.MeasuredLines;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Level;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Riser;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.Wall;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;

/** Draws a level as the site file has it: outline, closed areas, frame, piping, lines, risers. */
final class BuildingPicture {
    private final Site site;
    private final Level level;
    private final List<Item> items;
    private final List<Note> notes;
    private final MediaThatMayCarry media;

    BuildingPicture(Site site, Level level, List<Item> items, List<Note> notes) {
        this.site = site;
        this.level = level;
        this.items = items;
        this.notes = notes;
        this.media = MediaThatMayCarry.of(site);
    }

    void add() {
        level.closedAreas().forEach(this::addArea);
        List<PlanPoint> outline = new ArrayList<>(level.outline());
        outline.add(outline.get(0));
        run(level.id(), Layer.BUILDING, LineKind.WALL, outline);
        level.walls().forEach(this::addWall);
        site.paths().forEach(this::addPath);
        site.risers().stream()
                .filter(riser -> riser.levels().contains(level.id()))
                .forEach(this::addRiser);
        site.busbars().stream()
                .filter(busbar -> busbar.position().level().equals(level.id()))
                .forEach(busbar -> mark(
                        busbar.id(),
                        Layer.JOINTS,
                        Symbol.BUSBAR,
                        busbar.position().at()));
    }

    private void addArea(ClosedArea area) {
        items.add(new Item.Area(area.id(), Layer.CLOSED_AREAS, area.outline()));
        note(area.id(), Layer.CLOSED_AREAS, Note.Kind.PLACE, PlacesInside.of(area.outline()), area.id());
    }

    private void addWall(Wall wall) {
        run(wall.id(), Layer.BUILDING, LineKind.INNER_WALL, wall.line());
        note(wall.id(), Layer.BUILDING, Note.Kind.PATH, Anchors.along(wall.line()), wall.id());
    }

    private void addRiser(Riser riser) {
        mark(riser.id(), Layer.RISERS, Symbol.RISER, riser.at());
        note(riser.id(), Layer.RISERS, Note.Kind.JOINT, List.of(riser.at()), riser.id());
    }

    private void addPath(SitePath path) {
        if (path instanceof SitePath.StructuralFrame frame) {
            addFrame(frame);
        } else if (path instanceof SitePath.WaterPiping piping) {
            addPiping(piping);
        } else if (path instanceof SitePath.RingPath ring) {
            ring.line().ifPresent(line -> addLine(ring.id(), Layer.PIPING, LineKind.RING, line, ring.id()));
        } else if (path instanceof SitePath.InstalledConductor installed) {
            addLine(
                    installed.id(),
                    Layer.PIPING,
                    LineKind.INSTALLED,
                    installed.line(),
                    installed.id() + ", installed, " + installed.size().label());
        } else if (path instanceof SitePath.CopperLine copper) {
            String[] words = MeasuredLines.findLength(copper).isPresent() ? new String[] {copper.id()} : new String[0];
            addLine(copper.id(), Layer.ALLOWED_COPPER, LineKind.ALLOWED_COPPER, copper.line(), words);
        } else if (path instanceof SitePath.NeverCarries never) {
            addLine(
                    never.id(),
                    Layer.NOT_PERMITTED,
                    kind(never.kind()),
                    never.line(),
                    never.id(),
                    never.medium().replace('-', ' ') + ", NOT PERMITTED");
        }
    }

    private static LineKind kind(SitePath.Medium medium) {
        return switch (medium) {
            case FOOTING_REBAR -> LineKind.FOOTING_REBAR;
            case GAS_PIPE -> LineKind.GAS_PIPE;
            case ROOF_DECK -> LineKind.ROOF_DECK;
            case OTHER -> LineKind.OTHER_METAL;
        };
    }

    private void addFrame(SitePath.StructuralFrame frame) {
        if (!frame.levels().contains(level.id())) {
            return;
        }
        LineKind kind = frame.carries() ? LineKind.BEAM : LineKind.BEAM_THAT_CARRIES_NOTHING;
        frame.beams().forEach(beam -> run(frame.id(), Layer.FRAME, kind, List.of(beam.from(), beam.to())));
        frame.columns().forEach(column -> mark(frame.id(), Layer.FRAME, Symbol.COLUMN, column));
        List<PlanPoint> anchors = frame.beams().isEmpty()
                ? frame.columns()
                : frame.beams().stream()
                        .map(beam -> Anchors.between(beam.from(), beam.to(), 0.5))
                        .toList();
        if (!anchors.isEmpty()) {
            int middle = anchors.size() / 2;
            note(
                    frame.id(),
                    Layer.FRAME,
                    Note.Kind.PATH,
                    anchors.subList(middle, Math.min(anchors.size(), middle + 4)),
                    frame.id(),
                    frame.carries() ? "frame, may carry" : "frame, carries nothing");
        }
    }

    private void addPiping(SitePath.WaterPiping piping) {
        if (!piping.line().level().equals(level.id())) {
            return;
        }
        Length usable = media.find(piping.id())
                .filter(Carrier.Pipe.class::isInstance)
                .map(carrier -> ((Carrier.Pipe) carrier).usable())
                .orElse(Length.ZERO);
        Length whole = LineLengths.of(piping.line());
        List<PlanPoint> first = part(piping.line(), Length.ZERO, usable);
        List<PlanPoint> rest = part(piping.line(), usable, whole);
        if (!usable.isZero()) {
            run(piping.id(), Layer.PIPING, LineKind.PIPE, first);
        }
        if (usable.isLessThan(whole)) {
            run(piping.id(), Layer.PIPING, LineKind.PIPE_THAT_CARRIES_NOTHING, rest);
        }
        for (SitePath.Break gap : piping.breaks()) {
            mark(
                    piping.id(),
                    Layer.PIPING,
                    Symbol.BREAK,
                    LineLengths.placeAt(piping.line(), gap.distance()).at());
        }
        String words = usable.isZero()
                ? "water piping, may not carry"
                : usable.isLessThan(whole)
                        ? "carries for " + Numbers.print(usable, site.lengthUnit())
                        : "water piping, may carry";
        note(
                piping.id(),
                Layer.PIPING,
                Note.Kind.PATH,
                Anchors.along(usable.isLessThan(whole) ? rest : first),
                piping.id(),
                words);
    }

    /** The part of a line between two distances along it. */
    private static List<PlanPoint> part(Line line, Length from, Length to) {
        List<PlanPoint> places = new ArrayList<>();
        places.add(LineLengths.placeAt(line, from).at());
        List<LineVertex> vertices = line.vertices();
        Length along = Length.ZERO;
        for (int i = 1; i < vertices.size(); i++) {
            along = along.plus(LineLengths.between(vertices.get(i - 1), vertices.get(i)));
            if (from.isLessThan(along) && along.isLessThan(to)) {
                places.add(vertices.get(i).at());
            }
        }
        places.add(LineLengths.placeAt(line, to).at());
        return places;
    }

    private void addLine(String id, Layer layer, LineKind kind, Line line, String... words) {
        if (!line.level().equals(level.id())) {
            return;
        }
        List<PlanPoint> places = line.vertices().stream().map(LineVertex::at).toList();
        run(id, layer, kind, places);
        if (words.length > 0) {
            note(id, layer, Note.Kind.PATH, Anchors.along(places), words);
        }
    }

    private void run(String id, Layer layer, LineKind kind, List<PlanPoint> places) {
        items.add(new Item.Run(id, layer, kind, kind.pen(), places));
    }

    private void mark(String id, Layer layer, Symbol symbol, PlanPoint at) {
        items.add(new Item.Mark(id, layer, symbol, "", at));
    }

    private void note(String id, Layer layer, Note.Kind kind, List<PlanPoint> anchors, String... lines) {
        notes.add(new Note(id, layer, kind, List.of(lines), anchors));
    }
}
