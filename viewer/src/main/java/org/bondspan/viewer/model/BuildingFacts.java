package org.bondspan.viewer.model;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.BondState;
import org.bondspan.layout.Excluded;
import org.bondspan.layout.Link;
import org.bondspan.site.Busbar;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Level;
import org.bondspan.site.Riser;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.Wall;
import org.bondspan.units.WireSize;
import org.bondspan.viewer.state.Plan;

/** The facts about what the site file draws: paths, areas, risers, busbars, levels. */
final class BuildingFacts {
    private final Site site;
    private final Plan plan;
    private final Wording wording;

    BuildingFacts(Plan plan) {
        this.site = plan.site();
        this.plan = plan;
        this.wording = Wording.of(site);
    }

    Optional<FactSheet> find(String id) {
        return FactSheets.first(site.paths(), SitePath::id, id).map(this::path).or(() -> findPlace(id));
    }

    private FactSheet path(SitePath path) {
        List<Excluded> excluded = plan.states().excluded().stream()
                .filter(one -> one.path().equals(path.id()))
                .toList();
        List<Link> links = plan.links().stream()
                .filter(one -> one.path().equals(path.id()))
                .toList();
        FactSheet.Writer writer = new FactSheet.Writer(path.id(), subtitle(path, excluded));
        links.forEach(link -> carries(writer, link));
        excluded.forEach(one -> writer.fact("may not carry", one.reason() + " " + String.join(", ", one.basis())));
        writer.fact("landed by", String.join(", ", AnswerFacts.landing(plan, path.id())));
        plan.states().bonds().stream()
                .filter(bond -> bond.path().equals(path.id()))
                .forEach(bond -> bond(writer, bond));
        if (path instanceof SitePath.CopperLine copper) {
            copper.measured().ifPresent(length -> writer.fact("measured", wording.of(length)));
        }
        if (path instanceof SitePath.InstalledConductor installed) {
            writer.fact("size", installed.size().label() + ": carries up to that, 250.53(C), 250.66");
        }
        if (path instanceof SitePath.WaterPiping piping) {
            piping.breaks()
                    .forEach(gap -> writer.fact(
                            gap.kind(),
                            wording.of(gap.distance()) + " from the entrance, jumper " + wording.of(gap.jumper())
                                    + (gap.installed() ? ", installed" : "")));
        }
        return writer.sheet();
    }

    private void carries(FactSheet.Writer writer, Link link) {
        String length = link.length().isZero() ? "" : ", " + wording.of(link.length());
        writer.fact("carries, no copper", wording.between(link) + length + "; " + String.join(", ", link.basis()));
    }

    private void bond(FactSheet.Writer writer, BondState bond) {
        writer.fact("bonding", Wording.of(bond.state(), plan))
                .fact("why", bond.reason())
                .fact("calls for", bond.need().map(WireSize::label).orElse(""))
                .fact("bonding by", String.join(", ", bond.basis()))
                .fact("way to it", String.join(", ", bond.way()));
    }

    private static String subtitle(SitePath path, List<Excluded> excluded) {
        if (path instanceof SitePath.CopperLine) {
            return "new copper may run here";
        }
        String medium = Wording.spaced(path.medium());
        return path instanceof SitePath.NeverCarries || (!excluded.isEmpty() && !(path instanceof SitePath.WaterPiping))
                ? medium + ", may not carry"
                : medium;
    }

    private Optional<FactSheet> findPlace(String id) {
        return FactSheets.first(areas(), ClosedArea::id, id)
                .map(area -> new FactSheet.Writer(id, "closed area")
                        .fact("copper", "No conductor may run inside; its edges are free.")
                        .sheet())
                .or(() -> FactSheets.first(site.risers(), Riser::id, id)
                        .map(riser -> new FactSheet.Writer(id, "riser")
                                .fact(
                                        "copper",
                                        "May run from level to level here: " + String.join(", ", riser.levels()) + ".")
                                .sheet()))
                .or(() -> FactSheets.first(site.busbars(), Busbar::id, id)
                        .map(busbar -> new FactSheet.Writer(id, "busbar")
                                .fact("place", wording.of(busbar.position()))
                                .fact("conductors", "May be joined here, 250.64(F)(3).")
                                .sheet()))
                .or(() -> FactSheets.first(walls(), Wall::id, id)
                        .map(wall -> new FactSheet.Writer(id, "wall")
                                .fact("passing it", wall.crossing().isPresent() ? "has its price" : "costs nothing")
                                .sheet()))
                .or(() -> FactSheets.first(site.levels(), Level::id, id).map(this::level));
    }

    private List<ClosedArea> areas() {
        return site.levels().stream()
                .flatMap(level -> level.closedAreas().stream())
                .toList();
    }

    private List<Wall> walls() {
        return site.levels().stream().flatMap(level -> level.walls().stream()).toList();
    }

    private FactSheet level(Level level) {
        return new FactSheet.Writer(level.id(), "outline of the level")
                .fact("floor", wording.of(level.floor()))
                .fact(
                        "copper",
                        level.openHeight()
                                .map(height -> "May run anywhere at " + wording.of(height)
                                        + " above the floor, outside closed areas.")
                                .orElse("Runs along drawn lines only."))
                .sheet();
    }
}
