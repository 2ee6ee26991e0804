package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.io.ProposalReader;
import org.bondspan.io.SiteReader;
import org.bondspan.site.Site;
import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** Contract 3 and 4, 250.53(C), 250.64(C): a joint states how copper is joined where ends meet, and joins no more. */
class JointTest {
    /** 500 kcmil copper: 1/0 AWG by Table 250.66; 4 AWG toward the footing, 6 AWG toward the rods. */
    private static final String SITE = Sites.linesOnly(60, 40, """
            "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
            "electrodes": [
              {"id": "C", $footing, $at(20, 0)},
              {"id": "R1", $rod, $at(40, 0)},
              {"id": "R2", $rod, $at(40, 8)}],
            "paths": [{"id": "K", "medium": "conductor", "size": "4 AWG", "line": [[20, 10], [40, 10]]}]""");

    private static final String RODS = "Z 6 AWG R1 > R2\n";
    private static final Site READ = SiteReader.parse(SITE, "test.site.json");

    private static Judged judged(String... parts) {
        String text = "{\"format\": \"bondspan-proposal/1\", \"conductors\": [%s], \"joints\": [%s]}";
        return Judged.of(READ, ProposalReader.parse(text.formatted((Object[]) parts), "test.proposal.json", READ));
    }

    private static String conductor(String id, String size, String from, String to, String line) {
        return "{\"id\": \"%s\", \"size\": \"%s AWG\", \"from\": {%s}, \"to\": {%s}, \"line\": [%s]}"
                .formatted(
                        id,
                        size,
                        from,
                        to,
                        line.isEmpty() ? "" : "{\"at\": " + line.replace(" ", "}, {\"at\": ") + "}");
    }

    private static final String S = "\"service\": \"S\"";
    private static final String C = "\"electrode\": \"C\"";
    private static final String R1 = "\"electrode\": \"R1\"";
    private static final String J = "\"joint\": \"J\"";
    private static final String BETWEEN_RODS = conductor("Z", "6", R1, "\"electrode\": \"R2\"", "");

    private static String joint(String place, String conductors) {
        return "{\"id\": \"J\", \"place\": {\"at\": %s}, \"conductors\": [%s], \"method\": \"exothermic\"}"
                .formatted(place, conductors);
    }

    private static final String ALL = "\"A\", \"B\", \"D\"";
    private static final String TO_JOINT = conductor("A", "4", S, J, "[0,0] [20,10]");
    private static final String TO_FOOTING = conductor("B", "4", J, C, "[20,10] [20,0]");

    @Test
    void endsThatNameAJointMeetThere() {
        String on = conductor("D", "6", J, R1, "[20,10] [40,0]");
        Judged judged = judged(String.join(",", TO_JOINT, TO_FOOTING, on, BETWEEN_RODS), joint("[20, 10]", ALL));
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).isEmpty();
    }

    /** An end moved from the joint to the footing, and nothing else changed. */
    @Test
    void aPassThroughAFootingDoesNotHideBehindAJoint() {
        for (String line : List.of("[20,10] [40,0]", "[20,0] [40,0]", "")) {
            String through = conductor("D", "6", C, R1, line);
            Judged judged =
                    judged(String.join(",", TO_JOINT, TO_FOOTING, through, BETWEEN_RODS), joint("[20, 10]", ALL));
            assertThat(judged.violations()).as(line).containsExactly("250.53(C) C");
            assertThat(judged.cautions()).as(line).contains("250.64(C) D");
            assertThat(judged.message("250.64(C)")).contains("Joint J lists D", "it is not joined");
        }
    }

    @Test
    void aJointAtTheFootingItselfDoesNotHideItEither() {
        String to = conductor("A", "4", S, C, "[0,0] [20,0]");
        String on = conductor("D", "6", C, R1, "[20,0] [40,0]");
        Judged judged = judged(String.join(",", to, on, BETWEEN_RODS), joint("[20, 0]", "\"A\", \"D\""));
        assertThat(judged.violations()).containsExactly("250.53(C) C");
        assertThat(judged.cautions()).as("they do meet, on the footing").isEmpty();
    }

    @Test
    void aJointThatNoEndBearsOutJoinsNothingAndIsTold() {
        String apart = conductor("D", "6", "\"place\": {\"at\": [30, 0]}", R1, "");
        Judged judged = judged(
                String.join(",", conductor("A", "4", S, C, ""), apart, BETWEEN_RODS),
                "{\"conductors\": [\"A\", \"D\"], \"method\": \"irreversible\", \"place\": {\"at\": [5, 5]}}");
        assertThat(judged.violations()).containsExactlyInAnyOrder("250.50 R1", "250.50 R2");
        assertThat(judged.cautions()).containsExactly("250.64(C) D");
    }

    /** One conductor runs on unbroken; the other ends at the joint. */
    @Test
    void anEndThatNamesAJointTapsWhatRunsByThere() {
        String tap = conductor("D", "6", J, R1, "");
        for (String line : List.of("[0,0] [20,10] [20,0]", "")) {
            String unbroken = conductor("A", "4", S, C, line);
            Judged judged = judged(String.join(",", unbroken, tap, BETWEEN_RODS), joint("[20, 10]", "\"A\", \"D\""));
            assertThat(judged.violations()).as(line).isEmpty();
            assertThat(judged.cautions()).as(line).isEmpty();
        }
    }

    /** Two conductors end at the joint, lead nowhere else, and a third one is listed that nobody drew: they tap it. */
    @Test
    void twoTapsAtOneJointTapTheConductorThatEndsElsewhere() {
        String taps = "D 6 AWG J:J1 > R1\nE 6 AWG J:J1 > R2\njoint J1 exothermic A D E";
        Judged judged = Judged.of(SITE, "A 4 AWG S > C\n" + taps);
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).isEmpty();
        assertThat(judged.way("S", "R2")).isEqualTo("A > E, thinnest E");
    }

    @Test
    void tapsAtTwoJointsOfOneConductorAreBothTapped() {
        Judged judged = Judged.of(SITE, """
                A 4 AWG S > C
                D 6 AWG J:J1 > R1
                E 6 AWG J:J2 > R2
                joint J1 exothermic A D
                joint J2 exothermic A E""");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).isEmpty();
    }

    /** The footing joins them too: the joint may be a splice of B and D alone, and hides no way through the footing. */
    @Test
    void aJointThatIsReachedThroughAFootingTapsNothing() {
        Judged judged = Judged.of(SITE, RODS + """
                A 4 AWG S > C
                B 4 AWG J:J1 > C
                D 6 AWG J:J1 > R1
                joint J1 exothermic A B D""");
        assertThat(judged.violations()).containsExactly("250.53(C) C");
        assertThat(judged.cautions()).containsExactly("250.64(C) A");
        assertThat(judged.message("250.64(C)")).contains("{\"conductor\": \"A\", \"at\": 20}", "a place", "a line");
    }

    @Test
    void whatIsDrawnElsewhereIsNotTapped() {
        String unbroken = conductor("A", "4", S, C, "[0,0] [20,0]");
        String tap = conductor("D", "6", J, R1, "");
        Judged judged = judged(String.join(",", unbroken, tap, BETWEEN_RODS), joint("[20, 10]", "\"A\", \"D\""));
        assertThat(judged.violations()).containsExactlyInAnyOrder("250.50 R1", "250.50 R2");
        assertThat(judged.cautions()).containsExactly("250.64(C) A");
    }

    @Test
    void aTapStatedByAnEndNeedsNoJoint() {
        Judged judged = Judged.of(SITE, RODS + "A 4 AWG S > C\nD 6 AWG A~5 > R1\njoint irreversible A D");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).isEmpty();
    }

    /** Two things at one place, each landed on by a conductor of its own that goes on there, as route writes them. */
    @Test
    void conductorsThatLandOnTwoThingsAtOnePlaceMayBeJoinedBeforeThem() {
        Site site =
                SiteReader.parse(SITE.replace("[40, 0]", "[20, 0]").replace("[40, 8]", "[20, 8]"), "test.site.json");
        String text = "{\"format\": \"bondspan-proposal/1\", \"conductors\": [%s, %s, %s], \"joints\": [%s]}"
                .formatted(
                        conductor("A", "4", S, C, "[0,0] [20,0]"),
                        conductor("D", "6", R1, "\"electrode\": \"R2\"", "[20,0] [20,8]"),
                        conductor("E", "6", "\"electrode\": \"R2\"", R1, ""),
                        joint("[20, 0]", "\"A\", \"D\""));
        Judged judged = Judged.of(site, ProposalReader.parse(text, "test.proposal.json", site));
        assertThat(judged.violations()).isEmpty();
    }

    @Test
    void anInstalledConductorIsTappedWhereItLiesAtTheJoint() {
        String to = conductor("A", "4", S, C, "");
        String on = conductor("B", "4", C, J, "");
        String near = conductor("D", "6", "\"path\": \"K\", \"distance\": 20", R1, "");
        String end = conductor("A", "4", S, J, "");
        Judged tapped = judged(
                String.join(",", end, conductor("B", "4", J, C, ""), near, BETWEEN_RODS),
                joint("[30, 10]", "\"A\", \"B\", \"K\""));
        assertThat(tapped.violations()).isEmpty();
        Judged elsewhere = judged(
                String.join(",", end, conductor("B", "4", J, C, ""), near, BETWEEN_RODS),
                joint("[30, 20]", "\"A\", \"B\", \"K\""));
        assertThat(elsewhere.violations()).containsExactlyInAnyOrder("250.50 R1", "250.50 R2");
        assertThat(elsewhere.cautions()).containsExactly("250.64(C) K");
        Judged through = judged(String.join(",", to, on, near, BETWEEN_RODS), joint("[30, 10]", "\"B\", \"K\""));
        assertThat(through.violations()).containsExactly("250.53(C) C");
    }

    @Test
    void conductorsThatMeetAtAnotherJointAreNotToldApart() {
        Judged judged = Judged.of(SITE, RODS + """
                A 4 AWG S > J:J1
                B 4 AWG J:J1 > C
                D 6 AWG J:J1 > R1
                joint J2 irreversible A B D""");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).isEmpty();
    }
}
