package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** 250.66, 250.64(D)(1), 310.10(G): sizes by the ways that rely on them. Sizes: Table 250.66, see its own test. */
class SizeTest {
    /** 600 kcmil copper: 1/0 AWG copper or 3/0 AWG aluminum. */
    private static final String SITE = Sites.linesOnly(100, 40, """
            "services": [{"id": "S", "supply": "A", $copper(600 kcmil), $at(0, 0)}],
            "electrodes": [
              {"id": "L", "type": "other-listed", $at(50, 0)},
              {"id": "C", $footing, $at(60, 0)},
              {"id": "G", $ring2, $at(70, 0)},
              {"id": "R1", $rod, $at(90, 0)},
              {"id": "R2", $rod, $at(90, 6)}],
            "paths": []""");

    private static final String TIE = """
            A 1/0 AWG S > L
            B 4 AWG S > C
            D 2 AWG S > G
            E 6 AWG S > R1
            F 6 AWG R1 > R2
            """;

    @Test
    void exactlyTheNeededSizeIsInOrderAndOneSizeSmallerIsNot() {
        Judged judged = Judged.of(SITE, TIE);
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).isEmpty();
        assertThat(Judged.of(SITE, TIE.replace("A 1/0", "A 1")).violations()).containsExactly("250.66 A");
        assertThat(Judged.of(SITE, TIE.replace("B 4", "B 6")).violations()).containsExactly("250.66 B");
        assertThat(Judged.of(SITE, TIE.replace("D 2", "D 4")).violations()).containsExactly("250.66 D");
        assertThat(Judged.of(SITE, TIE.replace("E 6 AWG S > R1", "E 8 AWG S > R1 raceway"))
                        .violations())
                .containsExactly("250.66 E");
    }

    @Test
    void findingSaysWhatWasFoundWhatIsNeededAndHowToMendIt() {
        assertThat(Judged.of(SITE, TIE.replace("A 1/0", "A 1")).message("250.66"))
                .isEqualTo("A is 1 AWG copper; from S to L it needs 1/0 AWG copper. Make it 1/0 AWG.");
    }

    @Test
    void largerThanNeededIsANote() {
        Judged judged = Judged.of(SITE, TIE.replace("E 6", "E 2"));
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).containsExactly("250.66 E");
        assertThat(judged.message("250.66")).contains("6 AWG is enough");
    }

    /**
     * To reach L, which needs 1/0 AWG, copper may go on from the rod; R2 needs no more than the 6 AWG that is enough.
     */
    @Test
    void nobodyIsToldToMakeSmallerWhatMendingAnotherFaultMayNeed() {
        String large = TIE.replace("E 6", "E 2");
        Judged withoutListed = Judged.of(SITE, large.replace("A 1/0 AWG S > L\n", ""));
        assertThat(withoutListed.violations()).containsExactly("250.50 L");
        assertThat(withoutListed.notes()).isEmpty();
        Judged withoutRod = Judged.of(SITE, large.replace("F 6 AWG R1 > R2\n", ""));
        assertThat(withoutRod.violations()).containsExactly("250.50 R2");
        assertThat(withoutRod.notes()).containsExactly("250.66 E");
    }

    /** 2/0 AWG is more than S1 needs alone, and what both need together once S2 is tied. */
    @Test
    void norWhatTheSumOfServicesMayNeed() {
        Judged judged = Judged.of(services("A"), "T1 1/0 AWG S1 > J:J1\nA 2/0 AWG J:J1 > L");
        assertThat(judged.violations()).containsExactly("250.58 S2");
        assertThat(judged.notes()).isEmpty();
        assertThat(Judged.of(services("B"), "T1 1/0 AWG S1 > J:J1\nA 2/0 AWG J:J1 > L")
                        .notes())
                .as("services of two laterals do not add")
                .containsExactly("250.66 A");
    }

    /** Aluminum has limits of its own for rods only: 4 AWG; none for footings and rings. */
    @Test
    void aluminumIsJudgedByItsOwnColumn() {
        String aluminum = """
                A 3/0 AWG S > L aluminum
                B 3/0 AWG S > C aluminum
                D 3/0 AWG S > G aluminum
                E 4 AWG S > R1 aluminum
                F 4 AWG R1 > R2 aluminum
                """;
        Judged judged = Judged.of(SITE, aluminum);
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).isEmpty();
        assertThat(Judged.of(SITE, aluminum.replace("B 3/0", "B 4")).violations())
                .containsExactly("250.66 B");
        assertThat(Judged.of(SITE, aluminum.replace("D 3/0", "D 2")).violations())
                .containsExactly("250.66 D");
        assertThat(Judged.of(SITE, aluminum.replace("E 4", "E 6")).violations()).containsExactly("250.66 E");
        assertThat(Judged.of(SITE, aluminum.replace("A 3/0", "A 2/0")).violations())
                .containsExactly("250.66 A");
    }

    @Test
    void aConductorThatGoesOnToLargerThingsHasTheirSize() {
        String chain = """
                A 1/0 AWG S > R1
                B 1/0 AWG R1 > L
                D 2 AWG R1 > G
                E 4 AWG R1 > C
                F 6 AWG R1 > R2
                """;
        assertThat(Judged.of(SITE, chain).violations()).isEmpty();
        assertThat(Judged.of(SITE, chain.replace("A 1/0", "A 6")).violations()).containsExactly("250.66 A");
        assertThat(Judged.of(SITE, chain.replace("A 1/0", "A 6")).need("A")).isEqualTo("1/0 AWG from S to L");
    }

    @Test
    void smallerConductorsSideBySideDoNotMakeUpALargerOne() {
        Judged judged = Judged.of(SITE, TIE.replace("A 1/0 AWG S > L", "A 2 AWG S > L\nA2 2 AWG S > L"));
        assertThat(judged.violations()).containsExactly("310.10(G) A");
        assertThat(judged.notes()).isEmpty();
        assertThat(judged.message("310.10(G)")).contains("1/0 AWG");
    }

    @Test
    void sideBySideIsNamedAcrossJointsAndWithTheSectionOfTheEdition() {
        String draft = TIE.replace("A 1/0 AWG S > L", """
                A1 2 AWG S > J:J1
                A2 2 AWG J:J1 > L
                A3 2 AWG S > L""");
        assertThat(Judged.of(SITE, draft).violations()).isSubsetOf("310.10(G) A1", "310.10(G) A2", "310.10(G) A3");
        Judged older = Judged.of(SITE.replace("{\"format\"", "{\"codeEdition\": 2017, \"format\""), draft);
        assertThat(older.message("310.10(G)")).contains("310.10(H) in the 2017 edition");
    }

    @Test
    void twoConductorsSideBySideOfWhichOneIsLargeEnoughAreInOrder() {
        Judged judged = Judged.of(SITE, TIE.replace("A 1/0 AWG S > L", "A 1/0 AWG S > L\nA2 2 AWG S > L"));
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).containsExactly("250.66 A2");
        assertThat(judged.message("250.66")).contains("it needs 1/0 AWG", "Nothing relies on it.");
    }

    /** Both arms of a loop of copper carry alone: neither is relied on. */
    @Test
    void aLoopAtFullSizeIsInOrder() {
        Judged loop = Judged.of(SITE, TIE.replace("E 6", "E 1/0") + "H 1/0 AWG L > R1");
        assertThat(loop.violations()).isEmpty();
        assertThat(loop.need("A")).isEqualTo("nothing");
    }

    @Test
    void inALoopTooSmallOnBothSidesTheWiderSideIsNamed() {
        Judged loop = Judged.of(SITE, TIE.replace("A 1/0", "A 1") + "H 6 AWG L > R1");
        assertThat(loop.violations()).containsExactly("250.66 A");
    }

    @Test
    void twoConductorsOnOneRodAreInOrder() {
        Judged judged = Judged.of(SITE, TIE + "H 6 AWG S > R2");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).isEmpty();
    }

    private static String services(String supplyOfSecond) {
        return Sites.linesOnly(100, 40, """
                "services": [
                  {"id": "S1", "supply": "A", $copper(500 kcmil), $at(0, 0)},
                  {"id": "S2", "supply": "%s", $copper(500 kcmil), $at(5, 0)}],
                "electrodes": [{"id": "L", "type": "other-listed", $at(50, 0)}],
                "paths": []""".formatted(supplyOfSecond));
    }

    /** 500 kcmil: 1/0 AWG; twice that: 2/0 AWG (common conductor 250.64(D)(1)); two laterals do not add. */
    @Test
    void whatSeveralServicesOfOneSupplyShareIsSizedByTheirSum() {
        String common = """
                T1 1/0 AWG S1 > J:J1
                T2 1/0 AWG S2 > J:J1
                A %s AWG J:J1 > L
                """;
        assertThat(Judged.of(services("A"), common.formatted("2/0")).violations())
                .isEmpty();
        Judged small = Judged.of(services("A"), common.formatted("1/0"));
        assertThat(small.violations()).containsExactly("250.66 A");
        assertThat(small.need("A")).isEqualTo("2/0 AWG from S1 and S2 to L");
        assertThat(Judged.of(services("B"), common.formatted("1/0")).violations())
                .isEmpty();
    }

    @Test
    void theSumIsSharedBySideBySideConductorsToo() {
        Judged judged = Judged.of(services("A"), """
                T1 1/0 AWG S1 > J:J1
                T2 1/0 AWG S2 > J:J1
                A 1/0 AWG J:J1 > L
                B 1/0 AWG J:J1 > L
                """);
        assertThat(judged.violations()).containsExactly("310.10(G) A");
    }

    @Test
    void servicesWithConductorsOfTheirOwnDoNotAdd() {
        assertThat(Judged.of(services("A"), "A 1/0 AWG S1 > L\nB 1/0 AWG S2 > L")
                        .violations())
                .isEmpty();
    }

    private static String installed(String size) {
        return Sites.linesOnly(100, 40, """
                "services": [{"id": "S", "supply": "A", $copper(600 kcmil), $at(0, 0)}],
                "electrodes": [
                  {"id": "L", "type": "other-listed", $at(50, 0)},
                  {"id": "C", $footing, $at(30, 0)},
                  {"id": "G", $ring2, "connections": [{"id": "w", "at": [0, 30]}, {"id": "e", "at": [90, 30]}]},
                  {"id": "R1", $rod, $at(90, 20)}],
                "paths": [{"id": "K", "medium": "conductor", "size": "%s", "line": [[0, 0], [40, 0]]},
                  {"id": "GP", "medium": "ring", "electrode": "G", "mayInterconnect": true}]""".formatted(size));
    }

    /** The installed conductor lies at the service and at the footing: both are landed already. */
    @Test
    void anInstalledConductorCarriesUpToItsOwnSize() {
        String draft = """
                A 1/0 AWG K@40 > L
                B 2 AWG K@40 > G.w
                D 6 AWG G.e > R1
                """;
        Judged judged = Judged.of(installed("1/0 AWG"), draft);
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.way("S", "C")).isEqualTo("K, thinnest none");
        assertThat(judged.way("S", "L")).isEqualTo("K > A, thinnest A");
        assertThat(Judged.of(installed("1 AWG"), draft).violations()).containsExactly("250.66 K");
    }

    @Test
    void copperThatMeetsOnAnInstalledConductorDoesNotUseIt() {
        assertThat(Judged.of(installed("4 AWG"), """
                A 1/0 AWG S > K@20
                E 1/0 AWG K@20 > L
                B 2 AWG S > G.w
                D 6 AWG G.e > R1
                """).violations()).isEmpty();
    }

    /** A 2 AWG ring with leave carries toward a rod, not toward what needs 1/0 AWG. */
    @Test
    void aRingWithLeaveCarriesUpToItsOwnSize() {
        String draft = "B 1/0 AWG S > G.w\nD 6 AWG G.e > R1\n";
        Judged judged = Judged.of(installed("4 AWG"), draft + "A 1/0 AWG S > L");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).containsExactlyInAnyOrder("250.53(C) GP", "250.12 GP", "250.68(A) GP");
        assertThat(Judged.of(installed("4 AWG"), draft + "A 1/0 AWG G.e > L").violations())
                .containsExactly("250.66 GP");
        assertThat(Judged.of(installed("4 AWG"), draft + "A 1/0 AWG G.w > L").violations())
                .as("copper that meets at one connection of the ring does not run over it")
                .isEmpty();
    }

    @Test
    void aRingWithoutLeaveJoinsNothing() {
        String site = installed("4 AWG").replace("\"mayInterconnect\": true", "\"mayInterconnect\": false");
        Judged judged = Judged.of(site, "B 2 AWG S > G.w\nD 6 AWG G.e > R1\nA 1/0 AWG S > L");
        assertThat(judged.violations()).containsExactly("250.50 R1");
        assertThat(judged.cautions()).containsExactly("250.53(C) G");
        Judged beside = Judged.of(site, "B 2 AWG S > G.w\nD 6 AWG G.e > R1\nA 1/0 AWG S > L\nE 6 AWG S > R1");
        assertThat(beside.violations()).isEmpty();
        assertThat(beside.cautions()).containsExactly("250.53(C) G");
    }
}
