package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import java.util.function.Function;

/** A good file with one piece of its text replaced, and what its reader says of it. */
record Edit(String file, Function<String, Object> reader, String text, long line) {
    static final String FILE = "full.site.json";
    static final String PROPOSAL = "full.proposal.json";

    /** A text for the reader of sites. */
    Edit(String text, long line) {
        this(FILE, site -> SiteReader.parse(site, FILE), text, line);
    }

    /** The full site. */
    static Edit of(String piece, String replacement) {
        return new Edit("", 0).with(Fixtures.text(FILE), piece, replacement);
    }

    /** The full proposal, for the full site. */
    static Edit ofProposal(String piece, String replacement) {
        return proposal("").with(Fixtures.text(PROPOSAL), piece, replacement);
    }

    /** The result that holds everything, as a proposal for the full site. */
    static Edit ofResult(String piece, String replacement) {
        return proposal("").with(Fixtures.text("everything.result.json"), piece, replacement);
    }

    /** A text for the reader of proposals, for the full site. */
    static Edit proposal(String text) {
        return new Edit(PROPOSAL, proposal -> ProposalReader.parse(proposal, PROPOSAL, Fixtures.fullSite()), text, 0);
    }

    private Edit with(String full, String piece, String replacement) {
        int at = full.indexOf(piece);
        assertThat(at).as("place of %s", piece).isNotNegative();
        long on = full.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        return new Edit(file, reader, full.substring(0, at) + replacement + full.substring(at + piece.length()), on);
    }

    /** One message, on the line of the edit: what follows file and line. */
    void says(String message) {
        saysOnLine(line, message);
    }

    void saysOnLine(long expectedLine, String message) {
        saysAll(file + ":" + expectedLine + ": " + message);
    }

    /** All messages, whole. */
    void saysAll(String... messages) {
        InputException refused = catchThrowableOfType(InputException.class, () -> reader.apply(text));
        assertThat(refused).as("reader of %s", text).isNotNull();
        assertThat(refused.problems().stream().map(Problem::toString)).containsExactly(messages);
        assertThat(refused).hasMessage(String.join("\n", Arrays.asList(messages)));
    }

    void isAccepted() {
        assertThat(reader.apply(text)).isNotNull();
    }
}
