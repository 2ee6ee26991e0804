package org.bondspan.viewer.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import org.bondspan.io.SiteFile;
import org.bondspan.sheet.SheetSize;
import org.bondspan.site.Site;
import org.bondspan.usecase.HandOut;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Message;
import org.bondspan.viewer.state.Opened;

/** Writes result, take-off, sheets and report of an answer. */
final class HandingOut {
    private HandingOut() {}

    /** @param overwrite asked when some of the files are there already; without leave nothing is written */
    static Message of(Opened opened, Answer answer, String program, Path directory, Predicate<List<Path>> overwrite) {
        SiteFile file = new SiteFile(answered(opened, answer), opened.digest());
        HandOut out = HandOut.of(file, answer.layout(), new HandOut.Form(opened.stem(), SheetSize.ARCH_D, program));
        List<Path> existing = out.listExisting(directory);
        if (!existing.isEmpty() && !overwrite.test(existing)) {
            return Message.notice("Nothing was written.");
        }
        try {
            List<Path> written = out.write(directory);
            return Message.notice(
                    written.size() + " files written to " + directory,
                    written.stream().map(path -> path.getFileName().toString()).toArray(String[]::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The site that the answer is for; what is supposed is printed wherever the adoption is. */
    private static Site answered(Opened opened, Answer answer) {
        Site site = answer.plan().site();
        List<String> supposed = answer.question().suppositions(opened.site());
        if (supposed.isEmpty()) {
            return site;
        }
        String adoption = String.join("; ", supposed) + (site.adoption().isBlank() ? "" : ". " + site.adoption());
        return site.withAdoption(adoption);
    }
}
