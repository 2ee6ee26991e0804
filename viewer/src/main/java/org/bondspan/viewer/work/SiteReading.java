package org.bondspan.viewer.work;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.bondspan.io.PriceReader;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Objective;
import org.bondspan.layout.SiteCheck;
import org.bondspan.layout.Status;
import org.bondspan.site.Site;
import org.bondspan.usecase.CheckSite;
import org.bondspan.usecase.Question;
import org.bondspan.viewer.state.Opened;
import org.bondspan.viewer.state.Plan;

/** Reads sites and price books. Throws what their readers throw. */
final class SiteReading {
    private SiteReading() {}

    static Opened read(Path path) {
        SiteFile file = SiteFile.read(path);
        Site site = file.site();
        return new Opened(path, file.digest(), site, Question.asDrawn(site), unrouted(site));
    }

    /** The same at the prices of a book. */
    static Opened priced(Opened opened, Path book) {
        Site site = opened.site().withPrices(PriceReader.read(book));
        return new Opened(opened.path(), opened.digest(), site, opened.question(), unrouted(site));
    }

    /** What is known of a site before it is routed, as an answer without copper. */
    private static Plan unrouted(Site site) {
        SiteCheck check = CheckSite.of(site);
        Layout layout = new Layout(
                site.name(),
                site.adoption(),
                site.codeEdition(),
                site.lengthUnit(),
                Status.IMPOSSIBLE,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                BigDecimal.ZERO,
                List.of(),
                List.of(),
                List.of(),
                check.services(),
                check.electrodes(),
                check.bonds(),
                check.excluded(),
                check.findings(),
                check.assumed(),
                check.notChecked(),
                check.cautions(),
                Objective.COPPER,
                Optional.empty());
        return Plan.drawn(site, layout, Optional.empty());
    }
}
