package org.bondspan.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.bondspan.site.CodeEdition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class RuleTest {

    @Test
    void givesEverySectionOneMeaning() {
        assertThat(Arrays.stream(Rule.values()).map(Rule::section)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(Rule.values()).map(Rule::says)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource
    void namesASectionAndSaysWhatItMeans(Rule rule) {
        assertThat(rule.section()).matches("(250|310)\\.\\d+(\\([A-Z]\\)(\\(\\d\\))?)?|length|site|geometry|proof");
        assertThat(rule.says()).isNotBlank();
    }

    /** The sections that findings of sites and reviews, needs, exclusions and results give as their rule or basis. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "250.12",
                "250.24(A)",
                "250.50",
                "250.52(A)(1)",
                "250.52(A)(2)",
                "250.52(A)(3)",
                "250.52(A)(4)",
                "250.52(A)(5)",
                "250.52(A)(6)",
                "250.52(A)(7)",
                "250.52(A)(8)",
                "250.52(B)",
                "250.53(A)(2)",
                "250.53(A)(3)",
                "250.53(C)",
                "250.53(D)(1)",
                "250.53(D)(2)",
                "250.53(F)",
                "250.58",
                "250.64(A)",
                "250.64(B)",
                "250.64(C)",
                "250.64(D)(1)",
                "250.64(E)",
                "250.64(F)",
                "250.64(F)(3)",
                "250.66",
                "250.66(A)",
                "250.66(B)",
                "250.66(C)",
                "250.68(A)",
                "250.68(B)",
                "250.68(C)",
                "250.68(C)(1)",
                "250.68(C)(2)",
                "250.68(C)(3)",
                "250.102(C)(1)",
                "250.104(A)",
                "250.104(C)",
                "310.10(G)"
            })
    void knowsEverySectionThatResultsName(String section) {
        assertThat(Arrays.stream(Rule.values()).map(Rule::section).collect(Collectors.toSet()))
                .contains(section);
    }

    /** EC&M Code Quiz of 2026-02-05 has 310.10(G) for 2020 and 2023; (H) before that is from memory. */
    @ParameterizedTest
    @CsvSource({"NEC_2014, 310.10(H)", "NEC_2017, 310.10(H)"})
    void saysWhereParallelConductorsStoodBefore2020(CodeEdition edition, String section) {
        assertThat(Rule.NO_PARALLEL.findEditionNote(edition))
                .hasValueSatisfying(note -> assertThat(note).contains(section, String.valueOf(edition.year())));
    }

    /** The sentence on rebar came into 250.53(C) with the 2020 edition (a teaching page of its text). */
    @ParameterizedTest
    @EnumSource
    void saysThatEarlierEditionsDoNotNameRebar(CodeEdition edition) {
        boolean named = edition.year() >= 2020;
        assertThat(Rule.ELECTRODE_BONDING_JUMPER.findEditionNote(edition).isEmpty())
                .isEqualTo(named);
        assertThat(Rule.NO_PARALLEL.findEditionNote(edition).isEmpty()).isEqualTo(named);
    }

    /** That the 5 ft are measured along the pipe came with the 2023 edition (a teaching page of its text). */
    @ParameterizedTest
    @EnumSource
    void saysThatMeasuringAlongThePipeIsOf2023(CodeEdition edition) {
        assertThat(Rule.WATER_PIPE_FIVE_FEET.findEditionNote(edition).isPresent())
                .isEqualTo(edition.year() < 2023);
    }

    @ParameterizedTest
    @EnumSource
    void saysNothingWhereEditionsAgree(CodeEdition edition) {
        assertThat(Rule.CONDUCTOR_SIZE.findEditionNote(edition)).isEmpty();
        assertThat(Rule.ELECTRODE_SYSTEM.findEditionNote(edition)).isEmpty();
    }
}
