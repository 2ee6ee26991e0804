package org.bondspan.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Level;
import org.bondspan.site.Line;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** A line through a closed area, or outside the outline, away from the lines drawn for copper. */
final class OffPlanCheck implements ConductorCheck {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** Interior meets interior, whatever else (dimensionally extended nine-intersection model). */
    private static final String INTERIORS_MEET = "T********";

    private final Site site;

    OffPlanCheck(Site site) {
        this.site = site;
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        List<Position> line = conductor.line();
        for (int i = 1; i < line.size(); i++) {
            Position a = line.get(i - 1);
            Position b = line.get(i);
            Optional<String> where = a.level().equals(b.level()) ? findWhere(a, b) : Optional.empty();
            if (where.isPresent()) {
                return Optional.of(new Offence(
                        CheckedRule.OFF_THE_PLAN,
                        conductor.id(),
                        "The run of " + conductor.id() + " from " + print(a.at()) + " to " + print(b.at()) + " "
                                + where.get() + ".",
                        "Show that copper may run there, or lead it round."));
            }
        }
        return Optional.empty();
    }

    private Optional<String> findWhere(Position a, Position b) {
        Level level = site.level(a.level());
        if (a.at().equals(b.at()) || isAlongDrawnLine(a, b)) {
            return Optional.empty();
        }
        Geometry run = segment(a.at(), b.at());
        for (Line line : drawn(a.level())) {
            for (int i = 1; i < line.vertices().size(); i++) {
                PlanPoint from = line.vertices().get(i - 1).at();
                PlanPoint to = line.vertices().get(i).at();
                run = from.equals(to) ? run : run.difference(segment(from, to));
            }
        }
        for (ClosedArea area : level.closedAreas()) {
            if (!run.isEmpty() && run.relate(polygon(area.outline()), INTERIORS_MEET)) {
                return Optional.of("passes closed area " + area.id() + " on level " + level.id());
            }
        }
        return run.isEmpty() || polygon(level.outline()).covers(run)
                ? Optional.empty()
                : Optional.of("leaves the outline of level " + level.id());
    }

    /** Both ends lie on one line that is drawn for copper, or on one installed conductor. */
    private boolean isAlongDrawnLine(Position a, Position b) {
        return drawn(a.level()).stream().anyMatch(line -> isOn(line, a) && isOn(line, b));
    }

    private List<Line> drawn(String level) {
        List<Line> drawn = new ArrayList<>();
        site.listPaths(CopperLine.class).forEach(path -> drawn.add(path.line()));
        site.listPaths(InstalledConductor.class).forEach(path -> drawn.add(path.line()));
        drawn.removeIf(line -> !line.level().equals(level));
        return drawn;
    }

    private static Geometry segment(PlanPoint a, PlanPoint b) {
        return GEOMETRY.createLineString(new Coordinate[] {coordinate(a), coordinate(b)});
    }

    private static boolean isOn(Line line, Position place) {
        return LineLengths.findDistance(line, place.at(), place.height()).isPresent();
    }

    private static Geometry polygon(List<PlanPoint> outline) {
        List<Coordinate> ring =
                new ArrayList<>(outline.stream().map(OffPlanCheck::coordinate).toList());
        ring.add(ring.get(0));
        return GEOMETRY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static Coordinate coordinate(PlanPoint at) {
        return new Coordinate((double) at.x(), (double) at.y());
    }

    private String print(PlanPoint at) {
        return "(" + Numbers.rounded(Length.ofNanometres(at.x()).in(site.lengthUnit())) + ", "
                + Numbers.rounded(Length.ofNanometres(at.y()).in(site.lengthUnit())) + ")";
    }
}
