package org.bondspan.viewer.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;
import org.bondspan.io.SiteFile;
import org.bondspan.sheet.SheetSize;
import org.bondspan.site.Site;
import org.bondspan.usecase.HandOut;
import org.bondspan.usecase.RouteLimits;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Message;
import org.bondspan.viewer.state.Opened;

/** Writes result, take-off, sheets and report of an answer. */
final class HandingOut {
    private HandingOut() {}

    /**
     * Stopped, it does without what is not computed yet; given up, it writes nothing.
     *
     * @param overwrite asked when some of the files are there already; without leave nothing is written
     */
    static Message of(
            Opened opened, Answer answer, String program, Path directory, Predicate<List<Path>> overwrite, Halt halt) {
        RouteLimits limits = new RouteLimits(Optional.empty(), halt::isStopped, (best, bound) -> {});
        HandOut out = HandOut.of(
                        new SiteFile(answered(opened, answer), opened.digest()),
                        answer.layout(),
                        new HandOut.Form(opened.stem(), SheetSize.ARCH_D, program),
                        limits)
                .unless(halt::isGivenUp);
        List<Path> existing = out.listExisting(directory);
        if (!existing.isEmpty() && !overwrite.test(existing)) {
            return Message.notice("Nothing was written.");
        }
        try {
            return written(directory, out.write(directory), out.notComputed());
        } catch (CancellationException givenUp) {
            return Halt.NOTHING_WRITTEN;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Message written(Path directory, List<Path> files, List<String> notComputed) {
        List<String> lines = new ArrayList<>();
        if (!notComputed.isEmpty()) {
            lines.add("The report does not say what the exclusion of these costs: " + String.join(", ", notComputed));
        }
        files.forEach(file -> lines.add(String.valueOf(file.getFileName())));
        return Message.notice(files.size() + " files written to " + directory, lines.toArray(String[]::new));
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
