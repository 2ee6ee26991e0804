package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.code.Landing;
import org.bondspan.code.Need;
import org.bondspan.code.Obligation;
import org.bondspan.code.StretchNeed;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;
import org.bondspan.site.SitePath.Break;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;

/** Conductors around meters and the like, and the breaks that want one: those of every pipe that must be connected. */
final class BreakJumpers {
    private final SiteMetal metal;
    private final Ends ends;
    private final Proposal proposal;
    private final StretchNeed sizes;
    private final List<OpenBreak> breaks;

    /** A break that wants a jumper. */
    record OpenBreak(WaterPiping pipe, Break gap) {
        String describe() {
            return pipe.id() + " around its " + gap.kind();
        }
    }

    BreakJumpers(SiteMetal metal, Ends ends, Proposal proposal) {
        this.metal = metal;
        this.ends = ends;
        this.proposal = proposal;
        this.sizes = new StretchNeed(metal.site().services(), metal.system().obligations());
        this.breaks = listBreaks();
    }

    List<OpenBreak> breaks() {
        return breaks;
    }

    private List<OpenBreak> listBreaks() {
        return metal.site().listPaths(WaterPiping.class).stream()
                .filter(this::isConnected)
                .flatMap(pipe ->
                        pipe.breaks().stream().filter(gap -> !gap.installed()).map(gap -> new OpenBreak(pipe, gap)))
                .toList();
    }

    private boolean isConnected(WaterPiping pipe) {
        return metal.system().obligations().stream()
                .map(Obligation::landings)
                .flatMap(List::stream)
                .anyMatch(landing -> isOn(landing, pipe.id()));
    }

    private static boolean isOn(Landing landing, String pipe) {
        return (landing instanceof Landing.AlongPath along && along.of().equals(pipe))
                || (landing instanceof Landing.WithCarrier with && with.path().equals(pipe));
    }

    /** From the pipe before it to the pipe after it. */
    List<ProposedConductor> around(OpenBreak open) {
        return proposal.conductors().stream()
                .filter(conductor -> isAround(conductor, open))
                .toList();
    }

    /** Whether it goes around anything in a pipe that breaks its continuity when taken out. */
    boolean isAroundBreak(ProposedConductor conductor) {
        return metal.site().listPaths(WaterPiping.class).stream()
                .flatMap(pipe -> pipe.breaks().stream().map(gap -> new OpenBreak(pipe, gap)))
                .anyMatch(open -> isAround(conductor, open));
    }

    private boolean isAround(ProposedConductor conductor, OpenBreak open) {
        List<Length> landed = Stream.of(conductor.from(), conductor.to())
                .flatMap(end -> findDistance(conductor, end, open.pipe()).stream())
                .sorted()
                .toList();
        return landed.size() == 2
                && !open.gap().distance().isLessThan(landed.get(0))
                && !landed.get(1).isLessThan(open.gap().distance());
    }

    /** How far along that pipe an end lands; the electrode that the pipe continues is at its entrance. */
    private Optional<Length> findDistance(ProposedConductor conductor, End end, WaterPiping pipe) {
        if (end instanceof End.AtElectrode at) {
            return pipe.electrode().equals(Optional.of(at.electrode())) ? Optional.of(Length.ZERO) : Optional.empty();
        }
        return end instanceof End.OnPath on && on.path().equals(pipe.id())
                ? ends.findDistance(conductor, on)
                : Optional.empty();
    }

    /** The size of the pipe's bond. */
    Requirement requirement(OpenBreak open, Material material) {
        return new Requirement(
                material == Material.COPPER ? sizes.ofWhole(Need.TABLE) : sizes.ofWholeInAluminum(), open.describe());
    }

    /** What a jumper around a break needs; empty for any other conductor. */
    Optional<Requirement> findRequirement(ProposedConductor conductor) {
        return breaks.stream()
                .filter(open -> isAround(conductor, open))
                .map(open -> requirement(open, conductor.material()))
                .findFirst();
    }

    boolean isJumper(ProposedConductor conductor) {
        return breaks.stream().anyMatch(open -> isAround(conductor, open));
    }
}
