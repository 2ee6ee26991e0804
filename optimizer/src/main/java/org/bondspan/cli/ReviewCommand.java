package org.bondspan.cli;

import java.util.concurrent.Callable;
import org.bondspan.io.ProposalReader;
import org.bondspan.io.ReviewWriter;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.report.DictionaryText;
import org.bondspan.report.ReviewText;
import org.bondspan.site.Site;
import org.bondspan.usecase.ReviewProposal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code review SITE PROPOSAL}, {@code review --list}. */
@Command(
        name = "review",
        customSynopsis = {
            "bondspan review [-h] [--json] [--progress] [--trace] [--time-limit=SECONDS] SITE PROPOSAL",
            "       bondspan review --list",
        },
        description =
                "Verifies a proposed interconnection, or a result of route, independently of what finds routes: what violates the code and how to mend it, and how much copper it takes beside the least.",
        footer = {
            "",
            "An interrupt (Ctrl-C) ends the search for the least copper: the review is whole all the same, and sets the copper beside the best found so far."
        })
final class ReviewCommand implements Callable<Integer> {
    private final Streams streams;
    private final Watch watch;

    @Spec
    private CommandSpec command;

    @Mixin
    private SiteArgument site;

    @Parameters(
            index = "1",
            paramLabel = "PROPOSAL",
            description = "proposal file (*.proposal.json) or result of route, or - for standard input")
    private String proposal;

    @Option(names = "--json", description = "print the review as JSON (see schema review) instead of text")
    private boolean json;

    @Option(names = "--list", help = true, description = "print all that a review checks, with sections, and end")
    private boolean list;

    @Mixin
    private LimitOptions limits;

    ReviewCommand(Streams streams, Watch watch) {
        this.streams = streams;
        this.watch = watch;
    }

    @Override
    public Integer call() {
        if (list) {
            streams.answer(DictionaryText.plain());
            return Exit.CLEAN;
        }
        limits.check();
        if (proposal.equals(SiteArgument.STANDARD_INPUT) && site.isStandardInput()) {
            throw Usage.wrong(command, "SITE and PROPOSAL cannot both be standard input: name a file for one of them");
        }
        Site read = site.read(streams);
        ReviewOutcome outcome =
                ReviewProposal.of(read, readProposal(read), limits.limits(streams, watch, read.lengthUnit()));
        streams.answer(json ? ReviewWriter.toJson(outcome) : ReviewText.of(outcome, streams.ink()));
        return outcome.complies() ? Exit.CLEAN : Exit.FOUND;
    }

    private Proposal readProposal(Site of) {
        return proposal.equals(SiteArgument.STANDARD_INPUT)
                ? ProposalReader.read(streams.in(), "standard input", of)
                : ProposalReader.read(Usage.file(command, "PROPOSAL", proposal), of);
    }
}
