package org.bondspan.review;

import java.util.List;
import org.bondspan.code.SiteFindings;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Proposal;
import org.bondspan.site.Site;

/** Reviews any number of proposals for one site. */
public final class Reviewer {
    private final SiteMetal metal;
    private final CopperPlan plan;
    private final List<Finding> ofSite;

    public Reviewer(Site site) {
        this.metal = new SiteMetal(site);
        this.plan = new CopperPlan(site);
        this.ofSite = SiteFindings.of(site, metal.system());
    }

    public Review review(Proposal proposal) {
        return new Review(metal, plan, ofSite, proposal);
    }
}
