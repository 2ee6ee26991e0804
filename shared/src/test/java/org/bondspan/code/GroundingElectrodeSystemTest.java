package org.bondspan.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.code.GroundingElectrodeSystem.LeftOut;
import org.bondspan.code.Landing.AlongPath;
import org.bondspan.code.Landing.AtConnection;
import org.bondspan.code.Landing.WithCarrier;
import org.bondspan.code.Obligation.Kind;
import org.bondspan.site.Connection;
import org.bondspan.site.Site;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What must be connected. 250.50 with its exception: San Francisco's copy of the section and a forum's quotation
 * (thread 31126). One concrete-encased electrode is enough: EC&M, 2011 code changes. One in-ground support is enough:
 * from memory. Frames of the 2014 edition: EC&M Q&A, "Metal frame as grounding electrode". 250.104: a teaching page of
 * the 2023 text.
 */
class GroundingElectrodeSystemTest {
    private static final String TIED = "'tiedToFrame': {'frame': 'F', 'means': 'tie-wire'}";
    private static final String CONTINUOUS = "'continuous': true";

    @Test
    void everyQualifyingElectrodeIsConnected() {
        Site site = SiteSketch.site()
                .waterPipe("W")
                .rod("R1")
                .rod("R2")
                .electrode("L", "plate", "'area': 2, 'material': 'steel', 'thickness': 0.25")
                .electrode("G", "ring", "'conductorSize': '1/0 AWG', 'conductorLength': 320")
                .electrode("O", "other-listed", "")
                .read();
        assertThat(obligations(site))
                .containsExactly(
                        electrode(site, 0, Need.TABLE),
                        electrode(site, 1, Need.DRIVEN),
                        electrode(site, 2, Need.DRIVEN),
                        electrode(site, 3, Need.DRIVEN),
                        electrode(site, 4, Need.ring(WireSize.AWG_1_0)),
                        electrode(site, 5, Need.TABLE));
        assertThat(GroundingElectrodeSystem.of(site).leftOut()).isEmpty();
    }

    @Test
    void whatDoesNotQualifyIsLeftOut() {
        GroundingElectrodeSystem system = of(SiteSketch.site()
                .electrode("R", "rod", "'rodLength': 7, 'diameter': 0.5")
                .electrode("G", "gas-pipe", ""));
        assertThat(system.obligations()).isEmpty();
        assertThat(system.leftOut())
                .containsOnly(
                        Map.entry(
                                "R",
                                new LeftOut(
                                        false,
                                        "Does not qualify: rod shorter than 8 ft; rod thinner than 5/8 in and not listed.",
                                        Rule.ROD_OR_PIPE)),
                        Map.entry(
                                "G",
                                new LeftOut(
                                        false,
                                        "Does not qualify: gas-pipe is not permitted as an electrode.",
                                        Rule.NOT_AN_ELECTRODE)));
    }

    @Test
    void oneOfSeveralConcreteEncasedElectrodesIsEnough() {
        Site site = SiteSketch.site()
                .footing("E1", "")
                .footing("E2", "")
                .electrode(
                        "E3",
                        "concrete-encased",
                        "'conductorLength': 19, 'conductor': 'rebar', 'diameter': 0.5, 'cover': 2")
                .read();
        assertThat(obligations(site))
                .containsExactly(new Obligation(
                        Kind.ELECTRODE,
                        List.of("E1", "E2"),
                        Rule.ELECTRODE_SYSTEM,
                        Need.ENCASED,
                        List.of(at(site, 0), at(site, 1))));
        assertThat(obligations(site).get(0).name()).isEqualTo("one of E1, E2");
    }

    @Test
    void theSiteMayNameTheOnesToUse() {
        Site site = SiteSketch.site()
                .footing("E1", "")
                .footing("E2", "'use': true")
                .footing("E3", "'use': true")
                .read();
        assertThat(obligations(site))
                .containsExactly(electrode(site, 1, Need.ENCASED), electrode(site, 2, Need.ENCASED));
        LeftOut leftOut = leftOut(site, "E1");
        assertThat(leftOut.electrode()).isTrue();
        assertThat(leftOut.rule()).isEqualTo(Rule.CONCRETE_ENCASED);
    }

    @ParameterizedTest
    @CsvSource({"true, false", "false, true"})
    void barsOutOfReachNeedNotBeUsedInAnExistingBuilding(boolean existing, boolean connected) {
        Site site = SiteSketch.site()
                .with("'existingBuilding': " + existing)
                .footing("E", "'reachable': false")
                .read();
        assertThat(obligations(site)).hasSize(connected ? 1 : 0);
        assertThat(GroundingElectrodeSystem.of(site).leftOut().containsKey("E")).isEqualTo(!connected);
    }

    @Test
    void anExistingBuildingUsesTheBarsThatCanBeReached() {
        Site site = SiteSketch.site()
                .with("'existingBuilding': true")
                .footing("E1", "'reachable': false")
                .footing("E2", "")
                .read();
        assertThat(obligations(site)).containsExactly(electrode(site, 1, Need.ENCASED));
        assertThat(leftOut(site, "E1").rule()).isEqualTo(Rule.ELECTRODE_SYSTEM);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({
        "tie-wire, true, true",
        "weld, true, true",
        "exothermic, true, true",
        "wet-set, true, false",
        "weld, false, false"
    })
    void barsTiedToACarryingFrameAreConnectedWithIt(String means, boolean mayCarry, boolean withFrame) {
        Site site = SiteSketch.site()
                .footing("E", "'tiedToFrame': {'frame': 'F', 'means': '%s'}".formatted(means))
                .frame("F", CONTINUOUS + ", 'mayCarry': " + mayCarry)
                .read();
        List<Landing> landings = obligations(site).get(0).landings();
        assertThat(landings)
                .isEqualTo(withFrame ? List.of(new WithCarrier("E", "F"), at(site, 0)) : List.of(at(site, 0)));
    }

    @Test
    void oneOfSeveralInGroundMembersIsEnough() {
        Site site = SiteSketch.site()
                .electrode("P1", "in-ground-metal", "'earthContact': 10, 'frame': 'F'")
                .electrode("P2", "in-ground-metal", "'earthContact': 12")
                .electrode("P3", "in-ground-metal", "'earthContact': 9")
                .frame("F", CONTINUOUS)
                .read();
        assertThat(obligations(site).get(0))
                .isEqualTo(new Obligation(
                        Kind.ELECTRODE,
                        List.of("P1", "P2"),
                        Rule.ELECTRODE_SYSTEM,
                        Need.TABLE,
                        List.of(new WithCarrier("P1", "F"), at(site, 1))));
    }

    @Test
    void membersOfAFrameThatCarriesNothingAreReachedThemselves() {
        Site site = SiteSketch.site()
                .electrode("P", "in-ground-metal", "'earthContact': 10, 'frame': 'F'")
                .frame("F", CONTINUOUS + ", 'mayCarry': false")
                .read();
        assertThat(obligations(site))
                .containsExactly(
                        electrode(site, 0, Need.TABLE),
                        new Obligation(
                                Kind.FRAME,
                                List.of("F"),
                                Rule.FRAME_BOND,
                                Need.TABLE,
                                List.of(new AlongPath(
                                        "F", site.electrodes().get(0).connections()))));
    }

    @ParameterizedTest
    @CsvSource({"true, 1", "false, 0"})
    void otherUndergroundMetalIsConnectedOnlyWhereItIsToBeUsed(boolean use, int connected) {
        Site site = SiteSketch.site()
                .electrode("T", "other-underground-metal", "'use': " + use)
                .read();
        assertThat(obligations(site)).hasSize(connected);
        assertThat(GroundingElectrodeSystem.of(site).leftOut()).hasSize(1 - connected);
        assertThat(GroundingElectrodeSystem.of(site).leftOut().values()).allMatch(LeftOut::electrode);
    }

    @Test
    void aWaterPipeWithAPathIsConnectedWithIt() {
        Site site =
                SiteSketch.site().waterPipe("W").piping("P", "'electrode': 'W'").read();
        assertThat(obligations(site))
                .containsExactly(new Obligation(
                        Kind.ELECTRODE,
                        List.of("W"),
                        Rule.ELECTRODE_SYSTEM,
                        Need.TABLE,
                        List.of(new WithCarrier("W", "P"))));
    }

    @Test
    void aWaterPipeWithoutAPathIsReachedWithinFiveFeetOfItsEntrance() {
        Site site = SiteSketch.site()
                .electrode(
                        "W",
                        "water-pipe",
                        "'earthContact': 10, 'connections': [{'at': [9, 9], 'fromEntrance': 5.01}, {'at': [9, 8], 'fromEntrance': 5}]")
                .read();
        Connection near = site.electrodes().get(0).connections().get(1);
        assertThat(obligations(site).get(0).landings()).containsExactly(new AtConnection("W", near));
    }

    @Test
    void aFireMainToBeBondedOnlyIsPipingAndNoElectrode() {
        Site site = SiteSketch.site()
                .with("'fireLine': 'bond-only'")
                .electrode("W", "water-pipe", "'earthContact': 10, 'use': 'fire'")
                .read();
        assertThat(obligations(site))
                .containsExactly(
                        new Obligation(Kind.PIPING, List.of("W"), Rule.PIPING_BOND, Need.TABLE, List.of(at(site, 0))));
        assertThat(leftOut(site, "W").electrode()).isFalse();
    }

    @Test
    void aFireMainWithAPathIsBondedAnywhereAlongIt() {
        Site site = SiteSketch.site()
                .with("'fireLine': 'bond-only'")
                .electrode("W", "water-pipe", "'earthContact': 10, 'use': 'fire'")
                .piping("P", "'electrode': 'W'")
                .read();
        assertThat(obligations(site)).containsExactly(pipingAlong("P"));
    }

    @ParameterizedTest
    @CsvSource({"electrode, fire", "bond-only, domestic", "bond-only, combined"})
    void anotherWaterPipeIsAnElectrode(String choice, String use) {
        Site site = SiteSketch.site()
                .with("'fireLine': '" + choice + "'")
                .electrode(
                        "W",
                        "water-pipe",
                        "'earthContact': 10, 'use': '%s', 'connections': [{'at': [9, 9], 'fromEntrance': 0}]"
                                .formatted(use))
                .read();
        assertThat(obligations(site)).containsExactly(electrode(site, 0, Need.TABLE));
    }

    @Test
    void pipingThatContinuesNoQualifyingElectrodeIsBondedAnywhere() {
        Site site = SiteSketch.site()
                .electrode("W", "water-pipe", "'earthContact': 9.99")
                .piping("P1", "'electrode': 'W'")
                .piping("P2", "")
                .piping("P3", "'metal': false")
                .piping("P4", "'bondingRequired': false")
                .read();
        assertThat(obligations(site)).containsExactly(pipingAlong("P1"), pipingAlong("P2"));
        assertThat(GroundingElectrodeSystem.of(site).leftOut()).containsOnlyKeys("W", "P3", "P4");
        assertThat(leftOut(site, "P3").reason()).contains("Not metal");
    }

    @ParameterizedTest
    @CsvSource({"true, true", "false, false"})
    void aRingWithLeaveIsConnectedWithItsPath(boolean leave, boolean withPath) {
        Site site = SiteSketch.site()
                .electrode("R", "ring", "'conductorSize': '2 AWG', 'conductorLength': 320")
                .path("G", "ring", "'electrode': 'R', 'mayInterconnect': " + leave)
                .read();
        assertThat(obligations(site).get(0).landings())
                .containsExactly(withPath ? new WithCarrier("R", "G") : at(site, 0));
    }

    @Test
    void aFrameIsBondedWithItselfWhereItCarriesAndElseAnywhereAlongIt() {
        Site site = SiteSketch.site()
                .frame("F1", CONTINUOUS)
                .path(
                        "F2",
                        "structural-frame",
                        "'columns': [[10, 50]], 'top': 9, 'continuous': true, 'mayCarry': false")
                .read();
        assertThat(obligations(site))
                .containsExactly(
                        new Obligation(
                                Kind.FRAME,
                                List.of("F1"),
                                Rule.FRAME_BOND,
                                Need.TABLE,
                                List.of(new WithCarrier("F1", "F1"))),
                        new Obligation(
                                Kind.FRAME,
                                List.of("F2"),
                                Rule.FRAME_BOND,
                                Need.TABLE,
                                List.of(new AlongPath("F2", List.of()))));
    }

    @Test
    void aFrameInPartsOrWithoutABondToMakeIsLeftOut() {
        assertThat(of(SiteSketch.site().frame("F", "'continuous': false")).leftOut())
                .containsOnlyKeys("F");
        assertThat(of(SiteSketch.site().frame("F", "'continuous': false")).obligations())
                .isEmpty();
        assertThat(of(SiteSketch.site().frame("F", CONTINUOUS + ", 'bondingRequired': false"))
                        .leftOut())
                .containsOnlyKeys("F");
    }

    /** Only the 2014 text makes the frame an electrode, by a member in the ground or bolts tied to bars. */
    @ParameterizedTest
    @CsvSource({"2014, true", "2017, false", "2020, false", "2023, false"})
    void aFrameIsAnElectrodeIn2014Only(int year, boolean electrode) {
        Site byMember = SiteSketch.edition(year)
                .electrode("P", "in-ground-metal", "'earthContact': 10, 'frame': 'F'")
                .frame("F", CONTINUOUS + ", 'bondingRequired': false")
                .read();
        Site byBolts = SiteSketch.edition(year)
                .footing("E", TIED)
                .frame("F", CONTINUOUS + ", 'bondingRequired': false")
                .read();
        for (Site site : List.of(byMember, byBolts)) {
            assertThat(obligations(site)).hasSize(electrode ? 2 : 1);
            assertThat(obligations(site).stream().filter(obligation -> obligation.kind() == Kind.FRAME))
                    .allMatch(frame -> frame.rule() == Rule.IN_GROUND_METAL)
                    .hasSize(electrode ? 1 : 0);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "'tiedToFrame': {'frame': 'F', 'means': 'wet-set'}",
                "'isolated': true, 'tiedToFrame': {'frame': 'F', 'means': 'weld'}",
                ""
            })
    void otherFootingsDoNotMakeItOne(String facts) {
        Site site = SiteSketch.edition(2014)
                .footing("E", facts)
                .frame("F", CONTINUOUS + ", 'bondingRequired': false")
                .read();
        assertThat(obligations(site)).noneMatch(obligation -> obligation.kind() == Kind.FRAME);
    }

    @Test
    void aMemberTooShortOrOfAnotherFrameDoesNotMakeItOne() {
        Site site = SiteSketch.edition(2014)
                .electrode("P1", "in-ground-metal", "'earthContact': 9.99, 'frame': 'F'")
                .electrode("P2", "in-ground-metal", "'earthContact': 10")
                .frame("F", CONTINUOUS + ", 'bondingRequired': false")
                .read();
        assertThat(obligations(site)).noneMatch(obligation -> obligation.kind() == Kind.FRAME);
    }

    @Test
    void aFrameInPartsIsNoElectrodeIn2014() {
        Site site = SiteSketch.edition(2014)
                .footing("E", TIED)
                .frame("F", "'continuous': false")
                .read();
        assertThat(obligations(site)).containsExactly(electrode(site, 0, Need.ENCASED));
    }

    private static GroundingElectrodeSystem of(SiteSketch sketch) {
        return GroundingElectrodeSystem.of(sketch.read());
    }

    private static List<Obligation> obligations(Site site) {
        return GroundingElectrodeSystem.of(site).obligations();
    }

    private static LeftOut leftOut(Site site, String id) {
        return Optional.ofNullable(GroundingElectrodeSystem.of(site).leftOut().get(id))
                .orElseThrow();
    }

    private static Obligation pipingAlong(String id) {
        return new Obligation(
                Kind.PIPING, List.of(id), Rule.PIPING_BOND, Need.TABLE, List.of(new AlongPath(id, List.of())));
    }

    /** That electrode of the site alone, at its connections. */
    private static Obligation electrode(Site site, int index, Need need) {
        String id = site.electrodes().get(index).id();
        return new Obligation(Kind.ELECTRODE, List.of(id), Rule.ELECTRODE_SYSTEM, need, List.of(at(site, index)));
    }

    private static Landing at(Site site, int electrode) {
        return new AtConnection(
                site.electrodes().get(electrode).id(),
                site.electrodes().get(electrode).connections().get(0));
    }
}
