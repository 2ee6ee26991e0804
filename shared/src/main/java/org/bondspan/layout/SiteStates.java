package org.bondspan.layout;

import java.util.List;
import org.bondspan.finding.Finding;
import org.bondspan.site.Evidence;

/** What is said of the parts of a site, be it routed or not. */
public sealed interface SiteStates permits Layout, SiteCheck {
    List<ServiceState> services();

    List<ElectrodeState> electrodes();

    List<BondState> bonds();

    List<Excluded> excluded();

    List<Finding> findings();

    /** Facts of the site marked as assumed. */
    List<Evidence> assumed();

    List<String> notChecked();

    List<String> cautions();
}
