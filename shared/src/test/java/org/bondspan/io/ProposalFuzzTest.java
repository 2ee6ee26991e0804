package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.bondspan.site.Site;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever happens to a good file, the reader gives a proposal, which the published schema accepts too, or says what is
 * wrong, on lines that the file has.
 */
class ProposalFuzzTest {
    private static final FuzzedText GOOD = new FuzzedText(Fixtures.text("full.proposal.json"));
    private static final Site SITE = Fixtures.fullSite();

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("org.bondspan.Seeds#seeds")
    void damagedProposalIsReadOrRefusedWithAdvice(long seed) {
        GOOD.isReadOrRefusedWithAdvice(new SplittableRandom(seed), "fuzz.proposal.json", text -> {
            assertThat(ProposalReader.parse(text, "fuzz.proposal.json", SITE)).isNotNull();
            assertThat(SchemaTest.errors("proposal", text)).as(text).isEmpty();
        });
    }
}
