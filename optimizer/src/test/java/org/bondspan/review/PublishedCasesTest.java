package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** Questions that were asked and answered in public: the case as described, the verdict as published. */
class PublishedCasesTest {
    private static String building(String service, String electrodes, String paths) {
        return Sites.linesOnly(300, 200, """
                "services": [{"id": "S", "supply": "A", SERVICE, $at(0, 0)}],
                "electrodes": [ELECTRODES],
                "paths": [PATHS]""".replace("SERVICE", service)
                .replace("ELECTRODES", electrodes)
                .replace("PATHS", paths));
    }

    private static final String ROD = "{\"id\": \"R\", \"resistance\": 20, $rod, $at(10, 0)}";
    private static final String FOOTING = "{\"id\": \"C\", $footing, $at(20, 0)}";
    private static final String WATER = "{\"id\": \"W\", $water, \"connections\": []}";
    private static final String FAR_PIPE =
            "{\"id\": \"P\", \"medium\": \"water-pipe\", \"electrode\": \"W\", \"line\": [[300, 200], [0, 200]]}";

    /**
     * A 6 AWG conductor from a 600 A service to a rod and on to a concrete-encased electrode is a violation; it has to
     * be 4 AWG the whole way. Source: Electrical License Renewal, course page on 250.66(A), 2020 text, sectionID=1000.
     */
    @Test
    void sixAwgThroughARodToAFootingIsTooSmall() {
        String site = building("$copper(350 kcmil, 2)", ROD + ", " + FOOTING, "");
        assertThat(Judged.of(site, "A 6 AWG S > R\nB 4 AWG R > C").violations()).containsExactly("250.66 A");
        Judged judged = Judged.of(site, "A 4 AWG S > R\nB 4 AWG R > C");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.way("S", "C")).isEqualTo("A > R > B, thinnest A");
    }

    /**
     * The last leg from a water pipe to a rod may stay 6 AWG. Source: public code forum, thread 134077 on 250.66 as
     * revised in 2017.
     */
    @Test
    void theLastLegFromAWaterPipeToARodStaysSixAwg() {
        String site = building("$copper(350 kcmil, 2)", WATER + ", " + ROD, FAR_PIPE);
        assertThat(Judged.of(site, "A 2/0 AWG S > P@5\nB 6 AWG P@5 > R").violations())
                .isEmpty();
    }

    /**
     * Water piping that continues an underground electrode is connected within 5 ft of where it enters, not
     * mid-building. Source: Electrical License Renewal, course page on 250.68(C)(1), 2017 text, sectionID=263.
     */
    @Test
    void waterPipeLandedMidBuildingIsTooFarIn() {
        String site = building("$copper(500 kcmil)", WATER + ", " + FOOTING, FAR_PIPE);
        assertThat(Judged.of(site, "A 1/0 AWG S > P@200\nB 4 AWG S > C").violations())
                .containsExactly("250.68(C)(1) P");
        assertThat(Judged.of(site, "A 1/0 AWG S > P@5\nB 4 AWG S > C").violations())
                .isEmpty();
    }

    /** Where the piping continues no electrode, the 5 ft do not apply to its bond. Source: the same page. */
    @Test
    void waterPipingFedByPlasticIsBondedAnywhere() {
        String site = building("$copper(500 kcmil)", FOOTING, FAR_PIPE.replace("\"electrode\": \"W\", ", ""));
        assertThat(Judged.of(site, "A 1/0 AWG S > P@200\nB 4 AWG S > C").violations())
                .isEmpty();
    }

    /**
     * A hangar with the service opposite the water entry: the exception for pipe in industrial and commercial buildings
     * holds only where the pipe is exposed throughout; above hard ceilings it is not. Source: public code forum, thread
     * 31807.
     */
    @Test
    void pipeConcealedAboveHardCeilingsDoesNotCarryAcrossTheHangar() {
        String site = building("$copper(500 kcmil)", WATER + ", " + FOOTING, FAR_PIPE)
                .replace("{\"format\"", "{\"qualifiedPersonsOnly\": true, \"format\"");
        String draft = "A 1/0 AWG S > P@290\nB 4 AWG S > C";
        assertThat(Judged.of(site, draft).violations()).containsExactly("250.68(C)(1) P");
        assertThat(Judged.of(site.replace("\"line\": [[300", "\"exposed\": true, \"line\": [[300"), draft)
                        .violations())
                .isEmpty();
    }

    private static final String FOOTING_AT_BOTH_ENDS = building(
            "$copper(500 kcmil, 3)",
            WATER
                    + ", {\"id\": \"C\", $footing, \"connections\": [{\"id\": \"here\", \"at\": [20, 0]}, {\"id\": \"there\", \"at\": [290, 200]}]}",
            FAR_PIPE
                    + ", {\"id\": \"bars\", \"medium\": \"footing-rebar\", \"line\": [[20, 0], [300, 0], [300, 200]]}");

    /**
     * Water pipe at one end, service at the other, joined through the footing bars: drawn as a violation. Source:
     * Electrical License Renewal, course page on 250.53(C), 2020 text, sectionID=994. In a field case the inspectors
     * wanted 3/0 copper all the way: public code forum, thread 61516.
     */
    @Test
    void footingSteelBetweenServiceAndWaterPipeIsAViolation() {
        assertThat(Judged.of(FOOTING_AT_BOTH_ENDS, "A 3/0 AWG S > bars\nB 3/0 AWG bars > P@5\nC1 4 AWG S > C.here")
                        .violations())
                .containsExactly("250.53(C) bars");
        assertThat(Judged.of(FOOTING_AT_BOTH_ENDS, "A 3/0 AWG S > C.here\nB 3/0 AWG C.there > P@5")
                        .violations())
                .containsExactly("250.53(C) C");
        assertThat(Judged.of(FOOTING_AT_BOTH_ENDS, "A 3/0 AWG S > P@5\nB 4 AWG S > C.here")
                        .violations())
                .isEmpty();
    }

    /**
     * Service at one side and water at the other: the steel frame carries in place of copper round the building.
     * Source: Electrical Code Connection, 2014 Code Change 250.68(C)(2).
     */
    @Test
    void aSteelFrameCarriesFromServiceToWaterPipe() {
        String site = building("$copper(500 kcmil, 3)", WATER + ", " + FOOTING, FAR_PIPE + """
                , {"id": "F", "medium": "structural-frame", "grid": {"x": [10, 150, 290], "y": [10, 190]},
                   "levels": ["L1"], "top": 20, "continuous": true}""");
        Judged judged = Judged.of(site, "A 3/0 AWG S > F\nB 3/0 AWG F > P@5\nD 4 AWG S > C");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.way("S", "W")).isEqualTo("A > F > B, thinnest A");
    }

    /**
     * Wet-set anchor bolts are no link between frame and concrete-encased electrode; bolts tied to the bars are.
     * Source: Electrical License Renewal, course page on 250.68(C)(2), 2023 text, sectionID=1605.
     */
    @Test
    void wetSetAnchorBoltsDoNotTieTheFooting() {
        String frame = """
                {"id": "F", "medium": "structural-frame", "grid": {"x": [10, 290], "y": [10, 190]},
                   "levels": ["L1"], "top": 20, "continuous": true}""";
        String footing =
                "{\"id\": \"C\", $footing, \"tiedToFrame\": {\"frame\": \"F\", \"means\": \"MEANS\"}, $at(20, 0)}";
        String site = building("$copper(500 kcmil)", footing, frame);
        assertThat(Judged.of(site.replace("MEANS", "wet-set"), "A 1/0 AWG S > F")
                        .violations())
                .containsExactly("250.50 C");
        assertThat(Judged.of(site.replace("MEANS", "tie-wire"), "A 1/0 AWG S > F")
                        .violations())
                .isEmpty();
    }

    /**
     * A 600 A service with a ring alone: 2 AWG to a 2 AWG ring is in order as long as nothing of another type hangs off
     * it (one of two opinions). Source: public code forum, thread 2575808.
     */
    @Test
    void twoAwgToATwoAwgRingIsInOrderWhereNothingLargerHangsOffIt() {
        String ring =
                "{\"id\": \"G\", $ring2, \"connections\": [{\"id\": \"a\", \"at\": [5, 5]}, {\"id\": \"b\", \"at\": [290, 190]}]}";
        String path = "{\"id\": \"GP\", \"medium\": \"ring\", \"electrode\": \"G\", \"mayInterconnect\": true}";
        assertThat(Judged.of(building("$copper(350 kcmil, 2)", ring, path), "A 2 AWG S > G.a")
                        .violations())
                .isEmpty();
        String withWater = building("$copper(350 kcmil, 2)", ring + ", " + WATER, path + ", " + FAR_PIPE);
        assertThat(Judged.of(withWater, "A 2/0 AWG S > G.a\nB 2/0 AWG G.b > P@5")
                        .violations())
                .containsExactly("250.66 GP");
    }

    /**
     * Two services of one building may each land on a different member of the bonded set, and must share one set.
     * Source: public code forum, thread 92504 on 250.58.
     */
    @Test
    void eachServiceMayLandOnADifferentMemberOfOneSystem() {
        String site = Sites.linesOnly(300, 200, """
                "services": [{"id": "S1", "supply": "A", $copper(500 kcmil), $at(0, 0)},
                  {"id": "S2", "supply": "B", $copper(500 kcmil), $at(300, 0)}],
                "electrodes": [{"id": "R1", $rod, $at(10, 0)}, {"id": "R2", $rod, $at(290, 0)}],
                "paths": []""");
        assertThat(Judged.of(site, "A 6 AWG S1 > R1\nB 6 AWG S2 > R2\nD 6 AWG R1 > R2")
                        .violations())
                .isEmpty();
        assertThat(Judged.of(site, "A 6 AWG S1 > R1\nB 6 AWG S2 > R2").violations())
                .containsExactlyInAnyOrder("250.58 S1", "250.58 S2");
    }

    /**
     * Grounding electrode conductors are not among the conductors that may run in parallel. Source: EC&M, code quiz of
     * 2026-02-05 (2023 text).
     */
    @Test
    void twoSmallerConductorsInParallelAreRefused() {
        String site = building("$copper(500 kcmil, 3)", WATER + ", " + FOOTING, FAR_PIPE);
        assertThat(Judged.of(site, "A 1/0 AWG S > P@5\nB 1/0 AWG S > P@5\nD 4 AWG S > C")
                        .violations())
                .containsExactly("310.10(G) A");
    }

    /**
     * 4/0 aluminum service: 4 AWG copper or 2 AWG aluminum; to rods alone 6 AWG copper. Source: public code forum,
     * thread 106695.
     */
    @Test
    void aluminumOfATwoHundredAmpereServiceIsTwoAwg() {
        String site = building("$aluminum(4/0 AWG)", WATER + ", " + ROD, FAR_PIPE);
        assertThat(Judged.of(site, "A 2 AWG S > P@5 aluminum\nB 6 AWG S > R").violations())
                .isEmpty();
        assertThat(Judged.of(site, "A 4 AWG S > P@5\nB 6 AWG S > R").violations())
                .isEmpty();
        assertThat(Judged.of(site, "A 4 AWG S > P@5 aluminum\nB 6 AWG S > R").violations())
                .containsExactly("250.66 A");
    }
}
