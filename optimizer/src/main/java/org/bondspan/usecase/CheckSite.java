package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.code.Carrier;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.Obligation;
import org.bondspan.code.SiteFindings;
import org.bondspan.code.StandingCautions;
import org.bondspan.finding.Finding;
import org.bondspan.layout.SiteCheck;
import org.bondspan.network.States;
import org.bondspan.site.Evidence;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Numbers;

/** Explains a site before anything is routed: what must be connected, at which size, and what may carry. */
public final class CheckSite {
    private CheckSite() {}

    public static SiteCheck of(Site site) {
        GroundingElectrodeSystem system = GroundingElectrodeSystem.of(site);
        MediaThatMayCarry media = MediaThatMayCarry.of(site);
        States states = States.wanted(site, system);
        List<Finding> findings = SiteFindings.of(site, system);
        return new SiteCheck(
                site,
                states.services(),
                states.electrodes(),
                states.bonds(),
                system.obligations().stream().map(Obligation::name).toList(),
                carrying(site, media),
                media.excluded(),
                findings,
                site.evidence().stream().filter(Evidence::isAssumed).toList(),
                StandingCautions.NOT_CHECKED,
                StandingCautions.CAUTIONS);
    }

    private static List<String> carrying(Site site, MediaThatMayCarry media) {
        List<String> lines = new ArrayList<>();
        media.carriers().forEach(carrier -> lines.add(describe(carrier, site)));
        site.listPaths(InstalledConductor.class)
                .forEach(installed -> lines.add(installed.id() + ": installed conductor, carries up to "
                        + installed.size().label() + " (250.53(C), 250.66)"));
        long copper = site.listPaths(CopperLine.class).size();
        long open = site.levels().stream()
                .filter(level -> level.openHeight().isPresent())
                .count();
        lines.add("New copper may run along drawn lines (" + copper + ") and on open floors (" + open + ").");
        return lines;
    }

    private static String describe(Carrier carrier, Site site) {
        String id = carrier.path().id();
        if (carrier instanceof Carrier.Pipe pipe) {
            return id + ": water pipe, carries " + Numbers.print(pipe.usable(), site.lengthUnit())
                    + " from its entrance (250.68(C)(1))";
        }
        if (carrier instanceof Carrier.Ring ring) {
            return id + ": ring, carries up to its own "
                    + ring.electrode().conductorSize().label() + " (250.66)";
        }
        return id + ": structural frame, carries any size over any length (250.68(C)(2))";
    }
}
