package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.LeastCopper;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.site.CodeEdition;
import org.bondspan.units.LengthUnit;
import org.junit.jupiter.api.Test;

class ReviewWriterTest {
    /**
     * 33 1/3 ft of bare copper by ASTM B8: 6 AWG at 81.0 lb per 1000 ft is 2.7 lb, 4 AWG at 128.9 is 4.297 lb, 59.14 %
     * more.
     */
    @Test
    void writesEveryFieldInTheOrderOfTheFormat() {
        assertThat(ReviewWriter.toJson(Reviews.ofEverything(LengthUnit.FOOT)))
                .isEqualTo(Fixtures.text("everything.review.json"));
    }

    /** 33 1/3 ft are 10.16 m, 2.7 lb are 1.2247 kg, 4.29667 lb are 1.94894 kg. */
    @Test
    void writesMetresAndKilogramsForMetricSites() {
        assertThat(ReviewWriter.toJson(Reviews.ofEverything(LengthUnit.METRE)))
                .contains("\"lengthUnit\": \"m\"")
                .contains("\"copper\": {\"length\": 10.16, \"weight\": 1.22}")
                .contains("\"least\": 1.95,")
                .doesNotContain("33.33");
    }

    @Test
    void writesNullForWhatIsNotKnown() {
        assertThat(ReviewWriter.toJson(Reviews.ofNothing()))
                .contains("\"verdict\": \"complies\",\n  \"findings\": [],")
                .contains("\"copper\": null,\n  \"least\": null,\n  \"leastStatus\": null,\n  \"lowerBound\": null,\n"
                        + "  \"gapPercent\": null,\n  \"conductors\": [],");
    }

    @Test
    void verdictAndFindingsCannotDisagree() {
        ReviewOutcome violates = Reviews.ofEverything(LengthUnit.FOOT);
        assertThatThrownBy(() -> new ReviewOutcome(
                        true,
                        violates.findings(),
                        List.of(),
                        Optional.empty(),
                        LeastCopper.NOT_KNOWN,
                        LengthUnit.FOOT,
                        List.of(),
                        List.of(),
                        List.of(),
                        "Hall 3",
                        "",
                        CodeEdition.NEC_2020,
                        List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("250.66");
    }
}
