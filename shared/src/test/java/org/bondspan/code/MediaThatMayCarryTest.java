package org.bondspan.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.layout.Excluded;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * 250.68(C): EC&M Q&A on metal piping interconnection; teaching pages of the 2017 and 2023 text of 250.68(C)(1) and
 * (C)(2). Rebar: a teaching page of the 2020 text of 250.53(C).
 */
class MediaThatMayCarryTest {
    private static final String ENTERING = "'electrode': 'W'";

    @Test
    void aContinuousFrameCarries() {
        MediaThatMayCarry media = judge(SiteSketch.site().frame("F", "'continuous': true"));
        assertThat(media.find("F")).containsInstanceOf(Carrier.Frame.class);
        assertThat(media.excluded()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"'continuous': false", "'continuous': true, 'mayCarry': false"})
    void anotherFrameDoesNot(String facts) {
        assertExcluded(judge(SiteSketch.site().frame("F", facts)), "F", "structural-frame", "250.68(C)(2)");
    }

    @Test
    void aFrameIsEnteredAtItsQualifyingMembersInTheGroundToo() {
        Site site = SiteSketch.site()
                .frame("F", "'continuous': true")
                .electrode("P1", "in-ground-metal", "'earthContact': 10, 'frame': 'F'")
                .electrode("P2", "in-ground-metal", "'earthContact': 9.99, 'frame': 'F'")
                .electrode("P3", "in-ground-metal", "'earthContact': 10")
                .read();
        assertThat(MediaThatMayCarry.of(site).carriers())
                .singleElement()
                .isInstanceOfSatisfying(
                        Carrier.Frame.class,
                        frame -> assertThat(frame.inGround())
                                .isEqualTo(site.electrodes().get(0).connections()));
    }

    @Test
    void aWaterPipeCarriesItsFirstFiveFeet() {
        MediaThatMayCarry media = judge(SiteSketch.site().waterPipe("W").piping("P", ENTERING));
        assertThat(usable(media)).isEqualTo(Length.ofFeet(5));
        assertExcluded(media, "P", "water-pipe", "250.68(C)(1)");
    }

    /** The exception asks for both: only qualified persons, and a pipe exposed for its whole length. */
    @ParameterizedTest(name = "qualified persons {0}, exposed {1}")
    @CsvSource({"true, true, 20", "true, false, 5", "false, true, 5", "false, false, 5"})
    void aWaterPipeCarriesFurtherOnlyExposedAndUnderSupervision(boolean qualified, boolean exposed, long feet) {
        MediaThatMayCarry media = judge(SiteSketch.site()
                .with("'qualifiedPersonsOnly': " + qualified)
                .waterPipe("W")
                .piping("P", ENTERING + ", 'exposed': " + exposed));
        assertThat(usable(media)).isEqualTo(Length.ofFeet(feet));
        assertThat(media.excluded()).hasSize(feet == 20 ? 0 : 1);
    }

    /** Measured along the pipe, rises included, as the 2023 text says. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "[[0, 0], [5, 0]] | 5 | 0",
                "[[0, 0], [4, 0]] | 4 | 0",
                "[[0, 0], [5.01, 0]] | 5 | 1",
                "[[0, 0, 0], [2, 0, 0], [2, 0, 3]] | 5 | 0",
                "[[0, 0, 0], [3, 0, 0], [3, 0, 3]] | 5 | 1"
            })
    void aShortPipeCarriesAllOfItself(String line, long feet, int excluded) {
        MediaThatMayCarry media =
                judge(SiteSketch.site().waterPipe("W").path("P", "water-pipe", ENTERING + ", 'line': " + line));
        assertThat(usable(media)).isEqualTo(Length.ofFeet(feet));
        assertThat(media.excluded()).hasSize(excluded);
    }

    @Test
    void pipingThatContinuesNoQualifyingElectrodeCarriesNothing() {
        assertExcluded(judge(SiteSketch.site().piping("P", "")), "P", "water-pipe", "250.68(C)(1)");
        assertExcluded(
                judge(SiteSketch.site()
                        .electrode("W", "water-pipe", "'earthContact': 9.99")
                        .piping("P", ENTERING)),
                "P",
                "water-pipe",
                "250.68(C)(1)");
        assertExcluded(
                judge(SiteSketch.site().waterPipe("W").piping("P", ENTERING + ", 'metal': false")),
                "P",
                "water-pipe",
                "250.68(C)(1)");
    }

    @Test
    void aFireMainCarriesOnlyWhereTheProjectTakesItForAnElectrode() {
        String fire = "'earthContact': 10, 'use': 'fire'";
        MediaThatMayCarry electrode = judge(SiteSketch.site()
                .with("'fireLine': 'electrode'")
                .electrode("W", "water-pipe", fire)
                .piping("P", ENTERING));
        assertThat(usable(electrode)).isEqualTo(Length.ofFeet(5));
        MediaThatMayCarry bondOnly = judge(SiteSketch.site()
                .with("'fireLine': 'bond-only'")
                .electrode("W", "water-pipe", fire)
                .piping("P", ENTERING));
        assertExcluded(bondOnly, "P", "water-pipe", "250.68(C)(1)");
    }

    @Test
    void bondingFireMainsOnlyLeavesOtherPipesAlone() {
        MediaThatMayCarry media = judge(SiteSketch.site()
                .with("'fireLine': 'bond-only'")
                .electrode("W", "water-pipe", "'earthContact': 10, 'use': 'combined'")
                .piping("P", ENTERING));
        assertThat(usable(media)).isEqualTo(Length.ofFeet(5));
    }

    @Test
    void aRingCarriesOnlyWithLeaveAndWhereItQualifies() {
        String ring = "'conductorSize': '2 AWG', 'conductorLength': 320";
        assertThat(judge(SiteSketch.site()
                                .electrode("R", "ring", ring)
                                .path("G", "ring", "'electrode': 'R', 'mayInterconnect': true"))
                        .find("G"))
                .containsInstanceOf(Carrier.Ring.class);
        assertExcluded(
                judge(SiteSketch.site().electrode("R", "ring", ring).path("G", "ring", "'electrode': 'R'")),
                "G",
                "ring",
                "250.66");
        assertExcluded(
                judge(SiteSketch.site()
                        .electrode("R", "ring", "'conductorSize': '3 AWG', 'conductorLength': 320")
                        .path("G", "ring", "'electrode': 'R', 'mayInterconnect': true")),
                "G",
                "ring",
                "250.52(A)(4)");
    }

    @ParameterizedTest
    @ValueSource(ints = {2014, 2017, 2020, 2023})
    void rebarCarriesInNoEdition(int year) {
        MediaThatMayCarry media = judge(
                SiteSketch.edition(year).footing("E", "").path("B", "footing-rebar", "'line': [[0, 0], [100, 0]]"));
        assertExcluded(media, "B", "footing-rebar", "250.53(C)", "250.68(C)(3)");
        assertThat(media.excluded().get(0).reason().contains("does not yet name"))
                .isEqualTo(year < 2020);
    }

    @ParameterizedTest
    @CsvSource({"gas-pipe, 250.52(B), 250.68(C)", "roof-deck, 250.68(C),", "other, 250.68(C),"})
    void otherMetalNeverCarries(String medium, String section, String another) {
        MediaThatMayCarry media = judge(SiteSketch.site().path("X", medium, "'line': [[0, 0], [100, 0]]"));
        assertExcluded(media, "X", medium, another == null ? new String[] {section} : new String[] {section, another});
    }

    @Test
    void copperIsNeitherACarrierNorExcluded() {
        MediaThatMayCarry media = judge(SiteSketch.site()
                .path("L", "copper", "'line': [[0, 0], [100, 0]]")
                .path("C", "conductor", "'line': [[0, 0], [100, 0]], 'size': '3/0 AWG'"));
        assertThat(media).isEqualTo(new MediaThatMayCarry(List.of(), List.of()));
    }

    private static MediaThatMayCarry judge(SiteSketch sketch) {
        return MediaThatMayCarry.of(sketch.read());
    }

    private static Length usable(MediaThatMayCarry media) {
        return media.find("P").map(carrier -> ((Carrier.Pipe) carrier).usable()).orElseThrow();
    }

    /** That path is excluded once, and carries at most in part. */
    private static void assertExcluded(MediaThatMayCarry media, String path, String medium, String... basis) {
        assertThat(media.excluded())
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("reason")
                .containsExactly(new Excluded(path, medium, "", List.of(basis)));
        assertThat(media.excluded().get(0).reason()).isNotBlank();
        assertThat(media.find(path).filter(carrier -> !(carrier instanceof Carrier.Pipe)))
                .isEmpty();
    }
}
