package org.bondspan.usecase;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.layout.Excluded;
import org.bondspan.layout.ExclusionCost;
import org.bondspan.layout.ExclusionCost.Outcome;
import org.bondspan.layout.Layout;
import org.bondspan.network.Interconnection;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.NeverCarries;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.WireSize;

/**
 * What the exclusion of each path costs in copper: the site is routed once more as if that path alone carried. Rebar,
 * gas pipe, deck and other metal are then taken for an installed conductor of the largest size; a frame for continuous,
 * a ring for one that may interconnect, a pipe for exposed under qualified supervision. Nothing of it is lawful.
 */
public final class WhatExclusionsCost {
    private WhatExclusionsCost() {}

    /**
     * One for each path of the site that may not carry, where there is a way to suppose that it did.
     *
     * @param limits for all of them together; what they do not leave time for is not computed
     */
    public static List<ExclusionCost> of(Site site, RouteLimits limits) {
        Countdown countdown = Countdown.of(limits);
        List<String> excluded = MediaThatMayCarry.of(site).excluded().stream()
                .map(Excluded::path)
                .distinct()
                .toList();
        return site.paths().stream()
                .filter(path -> excluded.contains(path.id()))
                .flatMap(path ->
                        suppose(site, path).map(supposed -> cost(path.id(), supposed, countdown.left())).stream())
                .toList();
    }

    private static ExclusionCost cost(String path, Site supposed, RouteLimits limits) {
        Optional<Layout> found =
                limits.isOver() ? Optional.empty() : Interconnection.find(supposed, limits.forNetwork());
        return found.map(layout -> switch (layout.status()) {
                    case LEAST -> new ExclusionCost(path, Outcome.LEAST, layout.copper());
                    case IMPOSSIBLE -> new ExclusionCost(path, Outcome.IMPOSSIBLE, Optional.empty());
                    case BEST_FOUND -> new ExclusionCost(path, Outcome.NOT_COMPUTED, Optional.empty());
                })
                .orElse(new ExclusionCost(path, Outcome.NOT_COMPUTED, Optional.empty()));
    }

    private static Optional<Site> suppose(Site site, SitePath path) {
        if (path instanceof NeverCarries never) {
            return Optional.of(
                    replace(site, path, new InstalledConductor(never.id(), never.line(), WireSize.KCMIL_2000)));
        }
        if (path instanceof StructuralFrame frame) {
            return Optional.of(replace(site, path, carrying(frame)));
        }
        if (path instanceof RingPath ring) {
            return ring.mayInterconnect()
                    ? Optional.empty()
                    : Optional.of(replace(site, path, ring.withMayInterconnect(true)));
        }
        return path instanceof WaterPiping pipe
                        && MediaThatMayCarry.of(site).find(pipe.id()).isPresent()
                ? Optional.of(furtherIn(site, pipe))
                : Optional.empty();
    }

    private static StructuralFrame carrying(StructuralFrame frame) {
        return new StructuralFrame(
                frame.id(),
                frame.levels(),
                frame.columns(),
                frame.beams(),
                frame.bottom(),
                frame.top(),
                frame.beamHeight(),
                true,
                true,
                frame.bondingRequired());
    }

    /**
     * Qualified supervision, but only that pipe is exposed; where there is supervision, the others stay as they are.
     */
    private static Site furtherIn(Site site, WaterPiping pipe) {
        List<SitePath> paths = site.paths().stream()
                .map(path -> path instanceof WaterPiping other
                        ? exposed(
                                other, other.id().equals(pipe.id()) || (site.qualifiedPersonsOnly() && other.exposed()))
                        : path)
                .toList();
        return site.withPaths(paths).withQualifiedPersonsOnly(true);
    }

    private static SitePath exposed(WaterPiping pipe, boolean exposed) {
        return new WaterPiping(
                pipe.id(), pipe.electrode(), pipe.line(), exposed, pipe.metal(), pipe.bondingRequired(), pipe.breaks());
    }

    private static Site replace(Site site, SitePath old, SitePath supposed) {
        List<SitePath> paths = Stream.concat(
                        site.paths().stream().filter(path -> !path.equals(old)), Stream.of(supposed))
                .toList();
        return site.withPaths(paths);
    }
}
