package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** 250.53(C), 250.52(B), 250.68(C): metal that may not carry, drawn as a link or passed on the way. */
class LinkTest {
    private static String site(String edition) {
        return Sites.linesOnly(100, 40, edition + """
                "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [
                  {"id": "C1", $footing, "use": true, "connections": [{"id": "a", "at": [0, 5]}, {"id": "b", "at": [0, 8]}]},
                  {"id": "R1", $rod, $at(90, 0)},
                  {"id": "R2", $rod, $at(90, 6)}],
                "paths": [
                  {"id": "bars", "medium": "footing-rebar", "line": [[0, 5], [90, 5]]},
                  {"id": "gas", "medium": "gas-pipe", "line": [[0, 5], [90, 5]]},
                  {"id": "deck", "medium": "roof-deck", "line": [[0, 5], [90, 5]]},
                  {"id": "rail", "medium": "other", "line": [[0, 5], [90, 5]]}]""");
    }

    private static final String SITE = site("");
    private static final String NEAR = "A 4 AWG S > C1.a\nB 6 AWG R1 > R2\n";

    @Test
    void declaredRebarLinkIsAViolationWhereSomethingReliesOnIt() {
        Judged judged = Judged.of(SITE, NEAR + "C 6 AWG S > (5,0)\nlink bars: (5,0) > R1");
        assertThat(judged.violations()).containsExactly("250.53(C) bars");
        assertThat(judged.message("250.53(C)")).contains("Footing rebar bars", "Run copper of full size instead.");
    }

    @Test
    void declaredRebarLinkBesideALawfulWayIsStillSaid() {
        Judged judged = Judged.of(SITE, NEAR + "C 6 AWG S > R1\nlink bars: C1 > R1");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).containsExactly("250.53(C) bars");
        assertThat(judged.message("250.53(C)")).contains("Nothing relies on it.");
    }

    @Test
    void conductorsThatNameARebarPathAreLinkedByIt() {
        Judged judged = Judged.of(SITE, NEAR + "C 6 AWG S > bars\nD 6 AWG bars > R1");
        assertThat(judged.violations()).containsExactly("250.53(C) bars");
    }

    @Test
    void rebarBefore2020IsRefusedAllTheSameAndTheEditionSaysSo() {
        Judged judged = Judged.of(site("\"codeEdition\": 2017, "), NEAR + "C 6 AWG S > bars\nD 6 AWG bars > R1");
        assertThat(judged.violations()).containsExactly("250.53(C) bars");
        assertThat(judged.message("250.53(C)"))
                .containsOnlyOnce("The 2017 text does not yet name rebar; Bondspan keeps it out in every edition.");
    }

    @Test
    void gasPipeRoofDeckAndOtherMetalAreNamedByTheirSections() {
        assertThat(Judged.of(SITE, NEAR + "C 6 AWG S > gas\nD 6 AWG gas > R1").violations())
                .containsExactly("250.52(B) gas");
        assertThat(Judged.of(SITE, NEAR + "C 6 AWG S > deck\nD 6 AWG deck > R1").violations())
                .containsExactly("250.68(C) deck");
        assertThat(Judged.of(SITE, NEAR + "C 6 AWG S > rail\nD 6 AWG rail > R1").violations())
                .containsExactly("250.68(C) rail");
    }

    @Test
    void aConductorThatOnlyEndsOnSuchMetalIsNoLink() {
        Judged judged = Judged.of(SITE, NEAR + "C 6 AWG S > R1\nD 6 AWG S > gas");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).isEmpty();
    }

    @Test
    void throughAFootingAtOneStubOrTwo() {
        assertThat(Judged.of(SITE, NEAR + "C 6 AWG C1.a > R1").violations()).containsExactly("250.53(C) C1");
        assertThat(Judged.of(SITE, NEAR + "C 6 AWG C1.b > R1").violations()).containsExactly("250.53(C) C1");
    }

    @Test
    void pastAFootingOnATapIsInOrder() {
        Judged judged = Judged.of(SITE, """
                A 4 AWG S > R1
                B 4 AWG A~5 > C1.a
                C 6 AWG R1 > R2
                """);
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).isEmpty();
    }

    @Test
    void throughAFootingBesideALawfulWayIsANote() {
        Judged judged = Judged.of(SITE, NEAR + "C 6 AWG S > R1\nD 6 AWG C1.b > R2");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).containsExactly("250.53(C) C1");
    }

    @Test
    void aRodOnTheWayWithFullSizeThroughItIsInOrderAndASmallerOneIsNot() {
        assertThat(Judged.of(SITE, "A 4 AWG S > R1\nB 4 AWG R1 > C1.a\nC 6 AWG R1 > R2")
                        .violations())
                .isEmpty();
        assertThat(Judged.of(SITE, "A 6 AWG S > R1\nB 4 AWG R1 > C1.a\nC 6 AWG R1 > R2")
                        .violations())
                .containsExactly("250.66 A");
    }

    private static final String STEEL = Sites.linesOnly(100, 40, """
            "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
            "electrodes": [
              {"id": "T", $footing, $at(10, 0), "tiedToFrame": {"frame": "F", "means": "tie-wire"}},
              {"id": "R1", $rod, $at(90, 0)},
              {"id": "R2", $rod, $at(90, 6)}],
            "paths": [{"id": "F", "medium": "structural-frame", "levels": ["L1"], "columns": [[10, 20], [50, 20]],
                "beams": [[[10, 20], [50, 20]]], "top": 10, "continuous": true}]""");

    private static final String OVER_STEEL = """
            A 1/0 AWG S > F
            B 6 AWG F > R1
            C 6 AWG R1 > R2
            """;

    @Test
    void aFootingTiedToAConnectedFrameNeedsNoCopper() {
        Judged judged = Judged.of(STEEL, OVER_STEEL);
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).containsExactlyInAnyOrder("250.68(C)(2) F", "250.12 F", "250.68(A) F");
        assertThat(Judged.of(STEEL.replace("tie-wire", "exothermic"), OVER_STEEL)
                        .violations())
                .isEmpty();
    }

    @Test
    void boltsSetIntoWetConcreteDoNotTie() {
        assertThat(Judged.of(STEEL.replace("tie-wire", "wet-set"), OVER_STEEL).violations())
                .containsExactly("250.50 T");
        Judged declared = Judged.of(STEEL.replace("tie-wire", "wet-set"), OVER_STEEL + "link F: F > T");
        assertThat(declared.violations()).containsExactly("250.50 T");
        assertThat(declared.notes()).containsExactly("250.68(C) T");
    }

    @Test
    void boltsBringTheFrameIntoNoTie() {
        assertThat(Judged.of(STEEL, OVER_STEEL.replace("A 1/0 AWG S > F", "A 1/0 AWG S > T"))
                        .violations())
                .containsExactlyInAnyOrder("250.104(C) F", "250.50 R1", "250.50 R2");
    }

    @Test
    void aFrameThatMayNotCarryIsBondedAndNoMore() {
        String bonded = STEEL.replace("\"top\": 10", "\"top\": 10, \"mayCarry\": false");
        assertThat(Judged.of(bonded, OVER_STEEL).violations()).containsExactlyInAnyOrder("250.50 T", "250.68(C)(2) F");
        assertThat(Judged.of(bonded, """
                A 1/0 AWG S > F
                B 6 AWG S > R1
                C 6 AWG R1 > R2
                D 4 AWG S > T
                """).violations()).isEmpty();
    }

    @Test
    void anInGroundMemberIsConnectedWithItsFrame() {
        String site = STEEL.replace(
                "\"electrodes\": [",
                "\"electrodes\": [{\"id\": \"I\", $inGround, \"frame\": \"F\", $at(50, 20)}, "
                        .replace("$inGround", "\"type\": \"in-ground-metal\", \"earthContact\": 10")
                        .replace("$at(50, 20)", "\"connections\": [{\"at\": [50, 20]}]"));
        assertThat(Judged.of(site, OVER_STEEL).violations()).isEmpty();
        assertThat(Judged.of(site, OVER_STEEL.replace("S > F", "S > I")).violations())
                .isEmpty();
        String bonded = site.replace("\"top\": 10", "\"top\": 10, \"mayCarry\": false");
        String apart = """
                A 1/0 AWG S > I
                B 6 AWG S > R1
                C 6 AWG R1 > R2
                D 4 AWG S > T
                """;
        assertThat(Judged.of(bonded, apart).violations()).containsExactly("250.104(C) F");
        assertThat(Judged.of(bonded, apart + "E 1/0 AWG S > F").violations()).isEmpty();
    }
}
