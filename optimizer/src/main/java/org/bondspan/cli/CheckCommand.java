package org.bondspan.cli;

import java.util.concurrent.Callable;
import org.bondspan.layout.SiteCheck;
import org.bondspan.report.CheckText;
import org.bondspan.usecase.CheckSite;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code check SITE}. */
@Command(
        name = "check",
        description =
                "Explains a site before anything is routed: which electrodes qualify, what must be connected and at which size, what may carry, what may not.")
final class CheckCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private SiteArgument site;

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        SiteCheck check = CheckSite.of(site.read(streams));
        streams.answer(CheckText.of(check, streams.ink()));
        return Exit.of(check.findings());
    }
}
