package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** 250.50, 250.104, 250.58: everything that must be connected is, and all services share one system. */
class ConnectionTest {
    /** 500 kcmil copper: 1/0 AWG by Table 250.66. */
    private static final String HALL = Sites.linesOnly(60, 40, """
            "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
            "electrodes": [
              {"id": "W", $water, "connections": []},
              {"id": "R1", $rod, $at(0, 10)},
              {"id": "R2", $rod, $at(0, 16)},
              {"id": "C1", $footing, $at(20, 0)},
              {"id": "C2", $footing, $at(40, 0)}],
            "paths": [
              {"id": "P", "medium": "water-pipe", "electrode": "W", "line": [[60, 0], [50, 0]]},
              {"id": "Q", "medium": "water-pipe", "line": [[60, 40], [0, 40]]},
              {"id": "F", "medium": "structural-frame", "levels": ["L1"], "columns": [[10, 20], [50, 20]],
                "beams": [[[10, 20], [50, 20]]], "top": 10, "continuous": true}]""");

    private static final String SOUND = """
            A 1/0 AWG S > P@5
            B 6 AWG P@3 > R1
            C 6 AWG R1 > R2
            D 4 AWG S > C1
            E 1/0 AWG S > F
            G 1/0 AWG F > Q
            """;

    private static String without(String conductor) {
        return SOUND.replaceAll("(?m)^" + conductor + " .*\\n", "");
    }

    @Test
    void everythingConnectedComplies() {
        Judged judged = Judged.of(HALL, SOUND);
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).isEmpty();
        assertThat(judged.way("S", "R2")).isEqualTo("A > P > B > R1 > C, thinnest B");
        assertThat(judged.need("B")).isEqualTo("6 AWG from S to R1");
    }

    @Test
    void missingRodIsNamed() {
        assertThat(Judged.of(HALL, without("C")).violations()).containsExactly("250.50 R2");
    }

    @Test
    void oneFootingOfTwoIsEnoughAndOneIsNeeded() {
        assertThat(Judged.of(HALL, SOUND.replace("> C1", "> C2")).violations()).isEmpty();
        assertThat(Judged.of(HALL, without("D")).violations()).containsExactly("250.50 C1");
    }

    @Test
    void missingFrameAndPipingAreNamedByTheirOwnSections() {
        assertThat(Judged.of(HALL, without("E")).violations())
                .containsExactlyInAnyOrder("250.104(C) F", "250.104(A) Q");
        assertThat(Judged.of(HALL, without("G")).violations()).containsExactly("250.104(A) Q");
    }

    @Test
    void nothingProposedMissesEverything() {
        assertThat(Judged.of(HALL, "").violations())
                .containsExactlyInAnyOrder(
                        "250.50 W", "250.50 R1", "250.50 R2", "250.50 C1", "250.104(C) F", "250.104(A) Q");
    }

    /** The 2014 text makes a frame with an in-ground member an electrode itself. */
    @Test
    void frameThatIsAnElectrodeIsMissedAsOne() {
        String site = Sites.linesOnly(60, 40, """
                "codeEdition": 2014,
                "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "I", $inGround, "frame": "F", $at(10, 20)}, {"id": "R", "resistance": 20, $rod, $at(0, 9)}],
                "paths": [{"id": "F", "medium": "structural-frame", "levels": ["L1"], "columns": [[10, 20], [50, 20]],
                    "beams": [[[10, 20], [50, 20]]], "top": 10, "continuous": true, "mayCarry": false, "bondingRequired": false}]""");
        assertThat(Judged.of(site, "A 6 AWG S > R").violations()).containsExactlyInAnyOrder("250.50 I", "250.50 F");
        assertThat(Judged.of(site, "A 6 AWG S > R\nB 1/0 AWG S > I\nC 1/0 AWG S > F")
                        .violations())
                .isEmpty();
    }

    private static final String TWO_SERVICES = Sites.linesOnly(60, 40, """
            "services": [
              {"id": "S1", "supply": "A", $copper(500 kcmil), $at(0, 0)},
              {"id": "S2", "supply": "B", $copper(250 kcmil), $at(60, 0)}],
            "electrodes": [{"id": "C1", "use": true, $footing, $at(10, 0)}, {"id": "C2", "use": true, $footing, $at(50, 0)},
              {"id": "R1", $rod, $at(10, 10)}, {"id": "R2", $rod, $at(50, 10)}],
            "paths": []""");

    @Test
    void twoServicesWithoutALinkAreTwoSystems() {
        Judged judged = Judged.of(TWO_SERVICES, """
                A 4 AWG S1 > C1
                B 6 AWG S1 > R1
                C 4 AWG S2 > C2
                D 6 AWG S2 > R2
                """);
        assertThat(judged.violations()).containsExactlyInAnyOrder("250.58 S1", "250.58 S2");
    }

    @Test
    void aServiceLeftOutIsNamedAlone() {
        Judged judged = Judged.of(TWO_SERVICES, """
                A 4 AWG S1 > C1
                B 4 AWG S1 > R1
                C 4 AWG R1 > C2
                D 6 AWG S1 > R2
                """);
        assertThat(judged.violations()).containsExactly("250.58 S2");
    }

    /** From rod to rod at the size of the footings beyond: S1 to C2 and S2 to C1 pass both rods. */
    @Test
    void servicesTiedOverRodsAtFullSizeAreOneSystem() {
        Judged judged = Judged.of(TWO_SERVICES, """
                A 4 AWG S1 > C1
                B 4 AWG S1 > R1
                C 4 AWG R1 > R2
                D 4 AWG R2 > S2
                E 4 AWG S2 > C2
                """);
        assertThat(judged.violations())
                .as("ways to the footings pass the bus of the other service")
                .containsExactlyInAnyOrder("250.58 S1", "250.58 S2");
        Judged past = Judged.of(TWO_SERVICES, """
                A 4 AWG R1 > C1
                B 4 AWG S1 > R1
                C 4 AWG R1 > R2
                D 4 AWG R2 > S2
                E 4 AWG R2 > C2
                """);
        assertThat(past.violations()).isEmpty();
    }

    /** The tie between the buses is 6 AWG where the footings beyond them need 4 AWG. */
    @Test
    void aWayPastAnotherBusIsNamedAndHidesNoSizeFault() {
        Judged judged = Judged.of(TWO_SERVICES, """
                A 4 AWG S1 > C1
                B 6 AWG S1 > R1
                C 6 AWG R1 > R2
                D 6 AWG R2 > S2
                E 4 AWG S2 > C2
                """);
        assertThat(judged.violations())
                .containsExactlyInAnyOrder("250.58 S1", "250.58 S2", "250.66 B", "250.66 C", "250.66 D");
        assertThat(judged.message("250.58"))
                .contains(
                        "S1 does not share one grounding electrode system with the other services: its only way to C2"
                                + " passes the bus of S2",
                        "Run copper of full size past that bus");
        assertThat(judged.message("250.66")).contains("it needs 4 AWG copper");
        assertThat(judged.way("S1", "C2")).isEqualTo("B > R1 > C > R2 > D > S2 > E, thinnest B");
    }

    @Test
    void whatAServiceMissesIsNamed() {
        Judged judged = Judged.of(TWO_SERVICES, """
                A 4 AWG S1 > C1
                B 6 AWG S1 > R1
                C 4 AWG S2 > C2
                D 6 AWG S2 > R2
                """);
        assertThat(judged.message("250.58")).contains("nothing joins it with R2, C2.");
    }
}
