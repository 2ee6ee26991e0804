package org.bondspan.viewer.work;

import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.bondspan.io.InputException;
import org.bondspan.io.Problem;
import org.bondspan.price.MissingPriceException;
import org.bondspan.usecase.NothingFoundException;
import org.bondspan.usecase.TooFineException;
import org.bondspan.viewer.state.Message;

/** What went wrong, in words for the window: a file with its place and a way out, or a fault of the program. */
public final class Failures {
    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

    private Failures() {}

    /** The title is for what a user can mend; a fault of the program has its own. */
    public static Message message(String title, Throwable failure) {
        if (failure instanceof InputException input) {
            return Message.trouble(
                    title, input.problems().stream().map(Failures::line).toList());
        }
        if (failure instanceof MissingPriceException missing) {
            return Message.trouble(
                    "Prices are missing",
                    String.valueOf(missing.getMessage()).lines().toList());
        }
        if (failure instanceof TooFineException || failure instanceof NothingFoundException) {
            return Message.trouble(title, List.of(sentence(failure)));
        }
        if (failure instanceof UncheckedIOException io) {
            return Message.trouble(title, List.of(io.getCause() + ". Choose another place."));
        }
        if (failure instanceof OutOfMemoryError) {
            return Message.trouble(
                    title, List.of("Memory does not suffice. Start the viewer with more, for example java -Xmx4g."));
        }
        return Message.trouble(
                "Bondspan failed",
                List.of(failure.toString().lines().findFirst().orElse("")
                        + ". This is not the fault of the file; please report it."));
    }

    /** {@code Line 14, electrodes[2].rodLength: is missing. Give the length of the rod in ft.} */
    private static String line(Problem problem) {
        String place = (problem.line() > 0 ? "Line " + problem.line() + ", " : "")
                + (problem.field().isEmpty() ? problem.file() : problem.field());
        return CONTROL.matcher(place + ": " + problem.message() + ". " + problem.advice() + ".")
                .replaceAll("?");
    }

    private static String sentence(Throwable failure) {
        String words = String.valueOf(failure.getMessage());
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
