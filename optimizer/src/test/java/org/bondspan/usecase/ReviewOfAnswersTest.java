package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.io.LayoutWriter;
import org.bondspan.io.ProposalReader;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.site.Site;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The review finds no violation in an answer but those that the site itself has. */
class ReviewOfAnswersTest {
    static LongStream blocks() {
        return SeedBlocks.upTo(10);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void everyAnswerPasses(long block) {
        SeedBlocks.seeds(block).forEach(seed -> {
            RandomSites drawn = seed % 2 == 0 ? RandomSites.ofOneLevel(seed) : RandomSites.ofTwoLevels(seed);
            String text = drawn.sketch().write(Pen.PLAIN);
            Site site = SiteReader.parse(text, "seed-" + seed);
            Layout answer = RouteSite.of(site);
            if (answer.status() != Status.IMPOSSIBLE) {
                var review = ReviewProposal.of(site, ProposalReader.parse(LayoutWriter.toJson(answer), "answer", site));
                assertThat(violations(review.findings()))
                        .as("seed %d: %s%n%s", seed, text, new Routed(answer).conductors())
                        .isSubsetOf(violations(answer.findings()));
            }
        });
    }

    private static List<String> violations(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.VIOLATION)
                .map(finding -> finding.rule() + " " + finding.subject())
                .toList();
    }
}
