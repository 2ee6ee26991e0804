package org.bondspan.layout;

import java.util.List;
import org.bondspan.finding.Finding;
import org.bondspan.site.Evidence;
import org.bondspan.site.Site;

/**
 * A site explained before anything is routed. States are those of an answer, without a way: what is to be connected is
 * {@code BONDED}.
 *
 * @param wanted what is to be connected, by id or as {@code one of} several
 * @param carrying what may carry, in words, one line each
 */
public record SiteCheck(
        Site site,
        List<ServiceState> services,
        List<ElectrodeState> electrodes,
        List<BondState> bonds,
        List<String> wanted,
        List<String> carrying,
        List<Excluded> excluded,
        List<Finding> findings,
        List<Evidence> assumed,
        List<String> notChecked,
        List<String> cautions)
        implements SiteStates {
    public SiteCheck {
        services = List.copyOf(services);
        electrodes = List.copyOf(electrodes);
        bonds = List.copyOf(bonds);
        wanted = List.copyOf(wanted);
        carrying = List.copyOf(carrying);
        excluded = List.copyOf(excluded);
        findings = List.copyOf(findings);
        assumed = List.copyOf(assumed);
        notChecked = List.copyOf(notChecked);
        cautions = List.copyOf(cautions);
    }
}
