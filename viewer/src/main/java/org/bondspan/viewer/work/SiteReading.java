package org.bondspan.viewer.work;

import java.nio.file.Path;
import org.bondspan.io.PriceReader;
import org.bondspan.io.SiteFile;
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
        return new Opened(path, file.digest(), site, Question.asDrawn(site), Plan.unrouted(site, CheckSite.of(site)));
    }

    /** The same at the prices of a book. */
    static Opened priced(Opened opened, Path book) {
        Site site = opened.site().withPrices(PriceReader.read(book));
        return new Opened(
                opened.path(), opened.digest(), site, opened.question(), Plan.unrouted(site, CheckSite.of(site)));
    }
}
