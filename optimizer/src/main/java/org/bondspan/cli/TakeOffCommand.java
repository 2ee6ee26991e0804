package org.bondspan.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.bondspan.io.LayoutReader;
import org.bondspan.report.TakeOffCsv;
import org.bondspan.report.TakeOffText;
import org.bondspan.report.TakeOffWorkbook;
import org.bondspan.site.Site;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.usecase.RouteSite;
import org.bondspan.usecase.TakeOffSite;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code takeoff SITE [RESULT]}. */
@Command(
        name = "takeoff",
        description =
                "Takes off quantities, labor and money of a route: of a result, or without one of the least-copper route. Without prices quantities only.",
        footer = {"", "Without RESULT an interrupt (Ctrl-C) takes off the best route found so far."})
final class TakeOffCommand implements Callable<Integer> {
    private final Streams streams;
    private final Watch watch;

    @Spec
    private CommandSpec command;

    @Mixin
    private SiteArgument site;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "RESULT",
            description = "result of that site (route --json); left out, the site is routed")
    private @Nullable String result;

    @Mixin
    private PricesOption prices;

    @Option(names = "--csv", paramLabel = "FILE", description = "write the rows as comma-separated values")
    private @Nullable String csv;

    @Option(names = "--xlsx", paramLabel = "FILE", description = "write a workbook")
    private @Nullable String xlsx;

    @Option(names = "--force", description = "overwrite files that are there already")
    private boolean force;

    @Mixin
    private LimitOptions limits;

    TakeOffCommand(Streams streams, Watch watch) {
        this.streams = streams;
        this.watch = watch;
    }

    @Override
    public Integer call() {
        limits.check();
        List<NewFile> files = new ArrayList<>();
        if (csv != null) {
            files.add(NewFile.of(command, "--csv", csv));
        }
        if (xlsx != null) {
            files.add(NewFile.of(command, "--xlsx", xlsx));
        }
        if (files.size() == 2 && files.get(0).isAt(files.get(1))) {
            throw Usage.wrong(command, "--csv and --xlsx name the same file. Name two");
        }
        files.forEach(force ? NewFile::checkDirectory : NewFile::checkIsNew);
        Site drawn = site.read(streams);
        Site read = prices.read().map(drawn::withPrices).orElse(drawn);
        TakeOff takeOff = result == null
                ? TakeOffSite.of(read, RouteSite.of(read, limits.limits(streams, watch, read.lengthUnit())))
                : TakeOffSite.ofResult(read, LayoutReader.read(Usage.file(command, "RESULT", result), read));
        for (NewFile file : files) {
            file.write(
                    file.option().equals("--csv")
                            ? TakeOffCsv.of(takeOff).getBytes(StandardCharsets.UTF_8)
                            : TakeOffWorkbook.of(takeOff));
        }
        streams.answer(TakeOffText.of(takeOff, streams.ink()));
        return Exit.of(takeOff.layout());
    }
}
