package org.bondspan.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.bondspan.io.LayoutWriter;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.Layout;
import org.bondspan.report.RouteText;
import org.bondspan.site.Site;
import org.bondspan.usecase.Countdown;
import org.bondspan.usecase.RouteLimits;
import org.bondspan.usecase.RouteSite;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code route SITE}. */
@Command(
        name = "route",
        description =
                "Finds the interconnection of all that must be connected with the least copper or the least cost, and proves it least.",
        footer = {"", "An interrupt (Ctrl-C) answers with the best found so far."})
final class RouteCommand implements Callable<Integer> {
    private final Streams streams;
    private final Watch watch;

    @Spec
    private CommandSpec command;

    @Mixin
    private SiteArgument site;

    @Option(
            names = "--objective",
            paramLabel = "copper|cost",
            defaultValue = "copper",
            description =
                    "what is to be least: copper, the weight of new copper, or cost, installed, which takes prices")
    private String objective;

    @Mixin
    private PricesOption prices;

    @Option(names = "--json", description = "print the result as JSON (see schema result) instead of text")
    private boolean json;

    @Mixin
    private OutOptions out;

    @Mixin
    private LimitOptions limits;

    RouteCommand(Streams streams, Watch watch) {
        this.streams = streams;
        this.watch = watch;
    }

    @Override
    public Integer call() {
        checkObjective();
        out.check();
        limits.check();
        SiteFile read = priced(site.readFile(streams));
        Countdown countdown =
                Countdown.of(limits.limits(streams, watch, read.site().lengthUnit()));
        Layout layout = layout(read.site(), countdown.left());
        out.write(read, site.stem(), layout, countdown, streams);
        streams.answer(json ? LayoutWriter.toJson(layout) : RouteText.of(layout, streams.ink()));
        return Exit.of(layout);
    }

    private SiteFile priced(SiteFile file) {
        return prices.read()
                .map(book -> new SiteFile(file.site().withPrices(book), file.digest()))
                .orElse(file);
    }

    private Layout layout(Site read, RouteLimits within) {
        if (objective.equals("copper")) {
            return RouteSite.of(read, within);
        }
        if (read.prices().isEmpty()) {
            throw Usage.wrong(
                    command,
                    "--objective cost takes prices, and there are none: write prices into the site file, or give a"
                            + " price book with --prices FILE");
        }
        return RouteSite.leastCost(read, within);
    }

    private void checkObjective() {
        if (!List.of("copper", "cost").contains(objective)) {
            throw Usage.wrong(
                    command, "--objective " + objective + ": unknown. Write --objective copper or --objective cost");
        }
    }
}
