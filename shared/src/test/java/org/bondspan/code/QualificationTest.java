package org.bondspan.code;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Each type at its limit and just below. Limits: EC&M, "Grounding and Bonding, Part 2" (2017) for 250.52(A)(2) to (8)
 * and (B); EC&M, 2011 code changes, for the water pipe, the concrete cover and the vapor barrier; ECMag, "Driven
 * grounding electrodes", for rods and pipes; that a listed rod may have 1/2 in: common practice, no source.
 */
class QualificationTest {

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "water-pipe | 'earthContact': 10, 'connections': [{'at': [9, 9], 'fromEntrance': 1}] | 250.52(A)(1)",
                "in-ground-metal | 'earthContact': 10 | 250.52(A)(2)",
                "concrete-encased | 'conductorLength': 20, 'conductor': 'rebar', 'diameter': 0.5, 'cover': 2 | 250.52(A)(3)",
                "concrete-encased | 'conductorLength': 20, 'conductor': 'copper', 'conductorSize': '4 AWG', 'cover': 2 | 250.52(A)(3)",
                "ring | 'conductorSize': '2 AWG', 'conductorLength': 20 | 250.52(A)(4)",
                "rod | 'rodLength': 8, 'diameter': 0.625 | 250.52(A)(5)",
                "rod | 'rodLength': 8, 'diameter': 0.5, 'listed': true | 250.52(A)(5)",
                "pipe | 'pipeLength': 8, 'tradeSize': 0.75 | 250.52(A)(5)",
                "other-listed | '' | 250.52(A)(6)",
                "plate | 'area': 2, 'material': 'steel', 'thickness': 0.25 | 250.52(A)(7)",
                "plate | 'area': 2, 'material': 'nonferrous', 'thickness': 0.06 | 250.52(A)(7)",
                "other-underground-metal | '' | 250.52(A)(8)"
            },
            quoteCharacter = '"')
    void qualifiesAtItsLimit(String type, String facts, String rule) {
        Qualification verdict = judge(type, facts);
        assertThat(verdict.shortfalls()).isEmpty();
        assertThat(verdict.qualifies()).isTrue();
        assertThat(verdict.rule().section()).isEqualTo(rule);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "water-pipe | 'earthContact': 9.99, 'connections': [{'at': [9, 9], 'fromEntrance': 1}] | 10 ft",
                "in-ground-metal | 'earthContact': 9.99 | 10 ft",
                "concrete-encased | 'conductorLength': 19.99, 'conductor': 'rebar', 'diameter': 0.5, 'cover': 2 | 20 ft",
                "concrete-encased | 'conductorLength': 20, 'conductor': 'rebar', 'diameter': 0.499, 'cover': 2 | 1/2 in",
                "concrete-encased | 'conductorLength': 20, 'conductor': 'rebar', 'diameter': 0.5, 'cover': 1.99 | 2 in",
                "concrete-encased | 'conductorLength': 20, 'conductor': 'rebar', 'diameter': 0.5, 'cover': 2, 'coated': true | coating",
                "concrete-encased | 'conductorLength': 20, 'conductor': 'rebar', 'diameter': 0.5, 'cover': 2, 'isolated': true | vapor barrier",
                "concrete-encased | 'conductorLength': 20, 'conductor': 'copper', 'conductorSize': '6 AWG', 'cover': 2 | 4 AWG",
                "ring | 'conductorSize': '3 AWG', 'conductorLength': 20 | 2 AWG",
                "ring | 'conductorSize': '2 AWG', 'conductorLength': 19.99 | 20 ft",
                "rod | 'rodLength': 7.99, 'diameter': 0.625 | 8 ft",
                "rod | 'rodLength': 8, 'diameter': 0.624 | 5/8 in",
                "rod | 'rodLength': 8, 'diameter': 0.5, 'listed': false | 5/8 in",
                "rod | 'rodLength': 8, 'diameter': 0.499, 'listed': true | 1/2 in",
                "pipe | 'pipeLength': 7.99, 'tradeSize': 0.75 | 8 ft",
                "pipe | 'pipeLength': 8, 'tradeSize': 0.5 | trade size 3/4",
                "plate | 'area': 1.99, 'material': 'steel', 'thickness': 0.25 | 2 sq ft",
                "plate | 'area': 2, 'material': 'steel', 'thickness': 0.249 | 1/4 in",
                "plate | 'area': 2, 'material': 'nonferrous', 'thickness': 0.059 | 0.06 in"
            })
    void fallsShortJustBelow(String type, String facts, String missed) {
        Qualification verdict = judge(type, facts);
        assertThat(verdict.qualifies()).isFalse();
        assertThat(verdict.shortfalls()).hasSize(1);
        assertThat(verdict.shortfalls().get(0)).contains(missed);
    }

    /** The steel limit is that of steel alone, and size of copper has no say over bars. */
    @Test
    void judgesEachMetalByItsOwnLimit() {
        assertThat(judge("plate", "'area': 2, 'material': 'nonferrous', 'thickness': 0.249")
                        .qualifies())
                .isTrue();
        assertThat(judge(
                                "concrete-encased",
                                "'conductorLength': 20, 'conductor': 'rebar', 'diameter': 0.5, 'conductorSize': '8 AWG', 'cover': 2")
                        .qualifies())
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"gas-pipe", "aluminum", "pool-steel"})
    void barsWhatIsNeverAnElectrode(String type) {
        Qualification verdict = judge(type, "");
        assertThat(verdict.qualifies()).isFalse();
        assertThat(verdict.rule()).isEqualTo(Rule.NOT_AN_ELECTRODE);
        assertThat(verdict.shortfalls().get(0)).contains(type);
    }

    @Test
    void namesEverythingThatIsMissing() {
        Qualification verdict = judge(
                "concrete-encased",
                "'conductorLength': 19, 'conductor': 'rebar', 'diameter': 0.4, 'cover': 1, 'coated': true, 'isolated': true");
        assertThat(verdict.shortfalls()).hasSize(5);
    }

    /** 10, 20 and 8 ft are 3.048, 6.096 and 2.4384 m exactly; 2 sq ft are 0.18580608 square metres. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "in-ground-metal | 'earthContact': 3.048 | 'earthContact': 3.047",
                "ring | 'conductorSize': '2 AWG', 'conductorLength': 6.096 | 'conductorSize': '2 AWG', 'conductorLength': 6.095",
                "rod | 'rodLength': 2.4384, 'diameter': 0.625 | 'rodLength': 2.4383, 'diameter': 0.625",
                "plate | 'area': 0.18580608, 'material': 'steel', 'thickness': 0.25 | 'area': 0.1858, 'material': 'steel', 'thickness': 0.25"
            })
    void holdsTheSameLimitsInMetricSites(String type, String atLimit, String below) {
        assertThat(judge(SiteSketch.site().with("'lengthUnit': 'm'"), type, atLimit)
                        .qualifies())
                .isTrue();
        assertThat(judge(SiteSketch.site().with("'lengthUnit': 'm'"), type, below)
                        .qualifies())
                .isFalse();
    }

    private static Qualification judge(String type, String facts) {
        return judge(SiteSketch.site(), type, facts);
    }

    private static Qualification judge(SiteSketch sketch, String type, String facts) {
        Site site = sketch.electrode("E", type, facts.equals("''") ? "" : facts).read();
        return Qualification.of(site.electrodes().get(0));
    }
}
