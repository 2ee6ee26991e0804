package org.bondspan.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.Landing;
import org.bondspan.code.Need;
import org.bondspan.code.Obligation;
import org.bondspan.code.StretchNeed;
import org.bondspan.finding.Finding;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.Break;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/** 250.53(D)(1): every break of a pipe that must be connected has a jumper around it, of the pipe's bond size. */
final class BreakCheck {
    private final Site site;
    private final GroundingElectrodeSystem system;
    private final Proposal proposal;
    private final WireSize need;
    private final WireSize needAluminum;

    BreakCheck(Site site, GroundingElectrodeSystem system, Proposal proposal) {
        this.site = site;
        this.system = system;
        this.proposal = proposal;
        StretchNeed sizes = new StretchNeed(site.services(), system.obligations());
        this.need = sizes.ofWhole(Need.TABLE);
        this.needAluminum = sizes.ofWholeInAluminum();
    }

    List<Finding> find() {
        List<Finding> findings = new ArrayList<>();
        for (WaterPiping pipe : site.listPaths(WaterPiping.class)) {
            if (isConnected(pipe)) {
                pipe.breaks().stream()
                        .filter(gap -> !gap.installed())
                        .forEach(gap -> find(pipe, gap).ifPresent(findings::add));
            }
        }
        return findings;
    }

    private boolean isConnected(WaterPiping pipe) {
        return system.obligations().stream()
                .map(Obligation::landings)
                .flatMap(List::stream)
                .anyMatch(landing ->
                        (landing instanceof Landing.AlongPath && landing.of().equals(pipe.id()))
                                || (landing instanceof Landing.WithCarrier with
                                        && with.path().equals(pipe.id())));
    }

    private Optional<Finding> find(WaterPiping pipe, Break gap) {
        List<ProposedConductor> around = proposal.conductors().stream()
                .filter(conductor -> isAround(conductor, pipe, gap))
                .toList();
        if (around.isEmpty()) {
            String at = Numbers.print(gap.distance(), site.lengthUnit());
            return Optional.of(new Offence(
                            CheckedRule.BREAK_WITHOUT_JUMPER,
                            pipe.id(),
                            "The " + gap.kind() + " at " + at + " in " + pipe.id() + " has no jumper around it.",
                            "Run " + need.label() + " from the pipe before it to the pipe after it.")
                    .asViolation());
        }
        if (around.stream().anyMatch(this::isLargeEnough)) {
            return Optional.empty();
        }
        ProposedConductor small = around.get(0);
        WireSize size = small.material() == Material.COPPER ? need : needAluminum;
        return Optional.of(SizeOffence.ofConductor(small, size, pipe.id() + " around its " + gap.kind())
                .asViolation());
    }

    /** What a jumper around a break needs; empty for any other conductor. */
    Optional<SharedStretches.Required> findNeed(ProposedConductor conductor) {
        return site.listPaths(WaterPiping.class).stream()
                .filter(this::isConnected)
                .flatMap(pipe -> pipe.breaks().stream()
                        .filter(gap -> isAround(conductor, pipe, gap))
                        .map(gap -> new SharedStretches.Required(
                                need,
                                conductor.material() == Material.COPPER ? need : needAluminum,
                                pipe.id() + " around its " + gap.kind(),
                                site.services().size())))
                .findFirst();
    }

    private boolean isLargeEnough(ProposedConductor conductor) {
        return conductor.size().isAtLeast(conductor.material() == Material.COPPER ? need : needAluminum);
    }

    private static boolean isAround(ProposedConductor conductor, WaterPiping pipe, Break gap) {
        List<Length> ends = Stream.of(conductor.from(), conductor.to())
                .filter(End.OnPath.class::isInstance)
                .map(End.OnPath.class::cast)
                .filter(end -> end.path().equals(pipe.id()))
                .flatMap(end -> end.distance().stream())
                .sorted()
                .toList();
        return ends.size() == 2
                && !gap.distance().isLessThan(ends.get(0))
                && !ends.get(1).isLessThan(gap.distance());
    }
}
