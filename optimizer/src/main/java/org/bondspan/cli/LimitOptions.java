package org.bondspan.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;
import org.bondspan.units.LengthUnit;
import org.bondspan.usecase.RouteLimits;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How long a search may take, and who hears how it goes. */
final class LimitOptions {
    /** About 31 years: in nanoseconds it fits 64 bits with room. */
    private static final BigDecimal MOST_SECONDS = BigDecimal.valueOf(1_000_000_000);

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--time-limit",
            paramLabel = "SECONDS",
            description = "answer after about this long with the best found, which may then differ from run to run; a"
                    + " plain decimal number, more than 0 and at most 1000000000")
    private @Nullable String timeLimit;

    @Option(names = "--progress", description = "report progress on standard error, even where it is not a terminal")
    private boolean progress;

    /** Complains before any work is done. */
    void check() {
        findTime();
    }

    RouteLimits limits(Streams streams, Watch watch, LengthUnit unit) {
        ProgressLines lines = new ProgressLines(streams, unit);
        RouteLimits.Progress listener = progress || watch.isTerminal() ? lines::report : (best, bound) -> {};
        return new RouteLimits(findTime(), watch.stop(), listener);
    }

    private Optional<Duration> findTime() {
        return Optional.ofNullable(timeLimit).map(this::duration);
    }

    private Duration duration(String word) {
        BigDecimal seconds = NUMBER.matcher(word).matches() ? new BigDecimal(word) : BigDecimal.ZERO;
        if (seconds.signum() <= 0 || seconds.compareTo(MOST_SECONDS) > 0) {
            throw Usage.wrong(
                    command,
                    "--time-limit " + word + ": write a plain decimal number of seconds, more than 0 and at most "
                            + MOST_SECONDS + ", such as 60 or 0.5");
        }
        return Duration.ofMillis(
                seconds.movePointRight(3).setScale(0, RoundingMode.CEILING).longValueExact());
    }
}
