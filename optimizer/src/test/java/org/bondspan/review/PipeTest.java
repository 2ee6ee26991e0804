package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** 250.68(C)(1) and 250.53(D)(1): how far in water pipe carries, and the jumpers around what breaks it. */
class PipeTest {
    private static final String RODS = """
            {"id": "R1", $rod, $at(90, 0)}, {"id": "R2", $rod, $at(90, 6)}""";

    private static String site(String head, String pipe) {
        return Sites.linesOnly(100, 40, head + """
                "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "W", $water, "connections": []}, RODS],
                "paths": [{"id": "P", "medium": "water-pipe", "electrode": "W", "line": [[50, 0], [50, 30]] PIPE}]""".replace("RODS", RODS).replace("PIPE", pipe));
    }

    private static final String SITE = site("", "");

    @Test
    void exactlyFiveFeetInIsInOrderAndNoFurther() {
        assertThat(Judged.of(SITE, "A 1/0 AWG S > P@5\nB 6 AWG P@0 > R1\nC 6 AWG R1 > R2")
                        .violations())
                .isEmpty();
        Judged judged = Judged.of(SITE, "A 1/0 AWG S > P@5.01\nB 6 AWG P@0 > R1\nC 6 AWG R1 > R2");
        assertThat(judged.violations()).containsExactly("250.68(C)(1) P");
        assertThat(judged.message("250.68(C)(1)"))
                .contains("further than 5.00 ft", "Measuring the 5 ft along the pipe came with the 2023 text");
    }

    @Test
    void pipeBeyondFiveFeetJoinsNothing() {
        Judged judged = Judged.of(SITE, "A 1/0 AWG S > P@5\nB 6 AWG S > P@20\nC 6 AWG P@20 > R1\nD 6 AWG R1 > R2");
        assertThat(judged.violations()).containsExactly("250.68(C)(1) P");
    }

    @Test
    void oneMoreBondFurtherInIsANote() {
        Judged judged = Judged.of(SITE, "A 1/0 AWG S > P@5\nB 6 AWG P@0 > R1\nC 6 AWG R1 > R2\nD 1/0 AWG S > P@20");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).containsExactly("250.68(C)(1) P");
    }

    @Test
    void theElectrodeIsThePointOfEntrance() {
        assertThat(Judged.of(SITE, "A 1/0 AWG S > W\nB 6 AWG P@5 > R1\nC 6 AWG R1 > R2")
                        .violations())
                .isEmpty();
    }

    @Test
    void anUnstatedDistanceIsACaution() {
        Judged judged = Judged.of(SITE, "A 1/0 AWG S > P\nB 6 AWG P@5 > R1\nC 6 AWG R1 > R2");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).containsExactly("250.68(C)(1) A");
    }

    @Test
    void underQualifiedSupervisionExposedPipeCarriesThroughout() {
        String draft = "A 1/0 AWG S > P@29\nB 6 AWG P@10 > R1\nC 6 AWG R1 > R2";
        String qualified = "\"qualifiedPersonsOnly\": true, ";
        assertThat(Judged.of(site(qualified, ", \"exposed\": true"), draft).violations())
                .isEmpty();
        assertThat(Judged.of(site(qualified, ""), draft).violations()).containsExactly("250.68(C)(1) P");
    }

    @Test
    void pipingThatContinuesNoElectrodeIsBondedAnywhereAndCarriesNothing() {
        String site = SITE.replace("\"earthContact\": 10", "\"earthContact\": 9.9");
        assertThat(Judged.of(site, "A 1/0 AWG S > P@25\nB 6 AWG S > R1\nC 6 AWG R1 > R2")
                        .violations())
                .isEmpty();
        assertThat(Judged.of(site, "A 1/0 AWG S > P@3\nB 6 AWG P@3 > R1\nC 6 AWG R1 > R2")
                        .violations())
                .containsExactly("250.68(C)(1) P");
    }

    @Test
    void aFireMainThatIsBondedOnlyCarriesNothing() {
        String site = site("\"fireLine\": \"bond-only\", ", "")
                .replace("\"type\": \"water-pipe\"", "\"type\": \"water-pipe\", \"use\": \"fire\"");
        assertThat(Judged.of(site, "A 1/0 AWG S > P@25\nB 6 AWG S > R1\nC 6 AWG R1 > R2")
                        .violations())
                .isEmpty();
        assertThat(Judged.of(site, "A 1/0 AWG S > P@3\nB 6 AWG P@3 > R1\nC 6 AWG R1 > R2")
                        .violations())
                .containsExactly("250.68(C)(1) P");
    }

    /** Without a path, each connection says how far in it is. */
    @Test
    void connectionsOfAPipeWithoutAPathCountWithinFiveFeet() {
        String site = Sites.linesOnly(100, 40, """
                "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "W", $water, "connections": [
                    {"id": "near", "at": [50, 0], "fromEntrance": 5}, {"id": "far", "at": [60, 0], "fromEntrance": 5.1}]}, RODS],
                "paths": []""".replace("RODS", RODS));
        String rods = "B 6 AWG S > R1\nC 6 AWG R1 > R2\n";
        assertThat(Judged.of(site, rods + "A 1/0 AWG S > W.near").violations()).isEmpty();
        assertThat(Judged.of(site, rods + "A 1/0 AWG S > W.far").violations()).containsExactly("250.68(C)(1) W");
    }

    private static final String METER =
            site("", ", \"breaks\": [{\"distance\": 3, \"kind\": \"meter\", \"jumper\": 2}]");
    private static final String TIE = "A 1/0 AWG S > P@5\nB 6 AWG S > R1\nC 6 AWG R1 > R2\n";

    @Test
    void aMeterNeedsAJumperFromBeforeItToAfterIt() {
        Judged judged = Judged.of(METER, TIE);
        assertThat(judged.violations()).containsExactly("250.53(D)(1) P");
        assertThat(judged.message("250.53(D)(1)")).contains("The meter at 3.00 ft in P", "1/0 AWG");
        assertThat(Judged.of(METER, TIE + "J 1/0 AWG P@3 > P@3").violations()).isEmpty();
        assertThat(Judged.of(METER, TIE + "J 1/0 AWG W > P@3").violations()).isEmpty();
        assertThat(Judged.of(METER, TIE + "J 1/0 AWG P@2.9 > P@3.1").notes()).isEmpty();
        assertThat(Judged.of(METER, TIE + "J 1/0 AWG P@3.1 > P@4").violations()).containsExactly("250.53(D)(1) P");
    }

    @Test
    void aJumperOfThePipesBondSizeIsEnoughAndASmallerOneIsNot() {
        Judged judged = Judged.of(METER, TIE + "J 1 AWG P@2 > P@4");
        assertThat(judged.violations()).containsExactly("250.66 J");
        assertThat(judged.need("J")).isEqualTo("1/0 AWG from P around its meter");
        assertThat(Judged.of(METER, TIE + "J 1 AWG P@2 > P@4\nK 1/0 AWG P@2 > P@4")
                        .violations())
                .isEmpty();
        assertThat(Judged.of(METER, TIE + "J 3/0 AWG P@2 > P@4 aluminum").violations())
                .isEmpty();
    }

    @Test
    void anUnlawfulJumperDoesNotCount() {
        assertThat(Judged.of(METER, TIE + "J 1/0 AWG P@2 > P@4 ferrous").violations())
                .containsExactly("250.64(E) J");
    }

    @Test
    void anInstalledJumperNeedsNoNewOne() {
        String site = METER.replace("\"jumper\": 2", "\"jumper\": 2, \"installed\": true");
        assertThat(Judged.of(site, TIE).violations()).isEmpty();
    }

    /** Its jumper lands beyond 5 ft, and is no bond there. */
    @Test
    void aBreakBeyondFiveFeetNeedsItsJumperToo() {
        String site = METER.replace("\"distance\": 3", "\"distance\": 10");
        assertThat(Judged.of(site, TIE).violations()).containsExactly("250.53(D)(1) P");
        Judged judged = Judged.of(site, TIE + "J 1/0 AWG P@9 > P@11");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).isEmpty();
    }

    @Test
    void aJumperFromUsablePipeMakesPipeFurtherInNoCarrier() {
        String site = METER.replace("\"distance\": 3", "\"distance\": 5");
        assertThat(Judged.of(site, "A 1/0 AWG S > P@20\nB 6 AWG S > R1\nC 6 AWG R1 > R2\nJ 1/0 AWG P@4 > P@6")
                        .violations())
                .containsExactly("250.68(C)(1) P");
    }
}
