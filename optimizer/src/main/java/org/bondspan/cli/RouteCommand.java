package org.bondspan.cli;

import java.util.concurrent.Callable;
import org.bondspan.finding.Finding;
import org.bondspan.io.LayoutWriter;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.report.RouteText;
import org.bondspan.usecase.RouteSite;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code route SITE}. */
@Command(
        name = "route",
        description =
                "Finds the interconnection of all that must be connected with the least copper, and proves it least.",
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
            paramLabel = "copper",
            defaultValue = "copper",
            description = "what is to be least: copper, the weight of new copper")
    private String objective;

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
        SiteFile read = site.readFile(streams);
        Layout layout = RouteSite.of(
                read.site(), limits.limits(streams, watch, read.site().lengthUnit()));
        out.write(read, site.stem(), layout, streams);
        streams.answer(json ? LayoutWriter.toJson(layout) : RouteText.of(layout, streams.ink()));
        boolean found = layout.status() == Status.IMPOSSIBLE || Finding.anyViolation(layout.findings());
        return found ? Exit.FOUND : Exit.CLEAN;
    }

    private void checkObjective() {
        if (objective.equals("cost")) {
            throw usage("--objective cost: prices are not supported yet. Leave the option out to get the least copper");
        }
        if (!objective.equals("copper")) {
            throw usage("--objective " + objective + ": unknown. Write --objective copper");
        }
    }

    private CommandLine.ParameterException usage(String message) {
        return new CommandLine.ParameterException(command.commandLine(), message);
    }
}
