package org.bondspan.usecase;

import java.math.BigDecimal;
import org.bondspan.io.LayoutWriter;
import org.bondspan.io.PriceReader;
import org.bondspan.io.ProposalReader;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Cost;
import org.bondspan.layout.Layout;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.site.Site;

/** The least-cost answer for a site, as numbers short enough to write down what is expected. */
record Priced(Site site, Layout layout) {
    static Priced of(String siteFile, String priceBook) {
        Site site = SiteReader.parse(siteFile, "test.site.json")
                .withPrices(PriceReader.parse(priceBook, "test.prices.json"));
        return new Priced(site, RouteSite.leastCost(site, RouteLimits.none()));
    }

    Routed routed() {
        return new Routed(layout);
    }

    Cost cost() {
        return layout.cost().orElseThrow();
    }

    BigDecimal total() {
        return cost().total().amount();
    }

    BigDecimal ofLeastCopper() {
        return cost().leastCopperCost().amount();
    }

    /** Judged by rules alone. */
    ReviewOutcome review() {
        String result = LayoutWriter.toJson(layout);
        return ReviewProposal.of(site, ProposalReader.parse(result, "test.result.json", site));
    }

    BigDecimal takenOff() {
        return TakeOffSite.of(site, layout).total().orElseThrow().total().amount();
    }
}
