package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.usecase.ReviewProposal;
import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** 250.64(A), (B), (C), (E), and what is drawn and stated: how conductors are run. */
class WorkmanshipTest {
    /** 2 AWG copper service: 8 AWG copper or 6 AWG aluminum for everything. The rod stands outdoors, low. */
    private static final String SITE =
            Sites.site("""
            {"id": "L1", "outline": [[0, 0], [60, 0], [60, 40], [0, 40]], "open": {"height": 0},
              "closedAreas": [{"id": "vault", "outline": [[20, 10], [40, 10], [40, 30], [20, 30]]}]}""", """
            "services": [{"id": "S", "supply": "A", $copper(2 AWG), $at(0, 0, 5)}],
            "electrodes": [{"id": "L", $rod, "connections": [{"at": [0, 30], "height": 1.5}]},
              {"id": "M", $rod, "connections": [{"at": [30, 40], "height": 0}]}],
            "paths": [{"id": "out", "medium": "copper", "line": [[0, 5], [-10, 5]]}]""".replace("$at(0, 0, 5)", "\"connections\": [{\"at\": [0, 0], \"height\": 5}]"));

    private static final String TIE = """
            A 8 AWG S > L raceway
            B 8 AWG L > M raceway
            """;

    private static String with(String line) {
        return TIE.replaceAll("(?m)^" + line.charAt(0) + " .*$", line);
    }

    @Test
    void smallerThan6AwgRunsInRacewayAnd6AwgNeedsNone() {
        assertThat(Judged.of(SITE, TIE).violations()).isEmpty();
        assertThat(Judged.of(SITE, with("A 8 AWG S > L")).violations()).containsExactly("250.64(B) A");
        assertThat(Judged.of(SITE, with("A 8 AWG S > L buried")).violations()).containsExactly("250.64(B) A");
        assertThat(Judged.of(SITE, with("A 6 AWG S > L")).violations()).isEmpty();
    }

    @Test
    void sixAwgExposedToDamageRunsInRaceway() {
        assertThat(Judged.of(SITE, with("A 6 AWG S > L exposed")).violations()).containsExactly("250.64(B) A");
        assertThat(Judged.of(SITE, with("A 6 AWG S > L exposed raceway")).violations())
                .isEmpty();
    }

    @Test
    void ferrousRacewayIsBondedAtBothEnds() {
        assertThat(Judged.of(SITE, with("A 8 AWG S > L ferrous")).violations()).containsExactly("250.64(E) A");
        assertThat(Judged.of(SITE, with("A 8 AWG S > L ferrous bonded")).violations())
                .isEmpty();
        assertThat(Judged.of(SITE, with("A 6 AWG S > L raceway")).violations()).isEmpty();
    }

    @Test
    void aluminumIsNotBuried() {
        assertThat(Judged.of(SITE, with("A 6 AWG S > L aluminum buried")).violations())
                .containsExactly("250.64(A) A");
        assertThat(Judged.of(SITE, with("A 6 AWG S > L aluminum")).violations()).isEmpty();
        assertThat(Judged.of(SITE, with("A 6 AWG S > L buried")).violations()).isEmpty();
    }

    /** L lies exactly 18 in above the floor, M on it. */
    @Test
    void aluminumEndsOutdoorsNoLowerThan18Inches() {
        assertThat(Judged.of(SITE, with("A 6 AWG S > L aluminum outdoors")).violations())
                .isEmpty();
        assertThat(Judged.of(SITE, with("B 6 AWG L > M aluminum outdoors")).violations())
                .containsExactly("250.64(A) B");
        assertThat(Judged.of(SITE, with("B 6 AWG L > M aluminum")).violations()).isEmpty();
        assertThat(Judged.of(SITE, with("B 6 AWG L > M outdoors")).violations()).isEmpty();
    }

    /** Below the only floor there is earth or masonry; in raceway it lies against neither. */
    @Test
    void aluminumBelowTheLowestFloorIsAskedAbout() {
        String site = SITE.replace("\"height\": 1.5", "\"height\": -1");
        assertThat(Judged.of(site, with("A 6 AWG S > L aluminum")).cautions()).containsExactly("250.64(A) A");
        assertThat(Judged.of(site, with("A 6 AWG S > L aluminum raceway")).cautions())
                .isEmpty();
        assertThat(Judged.of(site, with("A 6 AWG S > L")).cautions()).isEmpty();
        assertThat(Judged.of(SITE, with("A 6 AWG S > L aluminum")).cautions()).isEmpty();
        assertThat(Judged.of(SITE, TIE + "D 6 AWG (0,5,-1) > (9,5,-1) aluminum line")
                        .cautions())
                .containsExactly("250.64(A) D");
    }

    /** Nobody says at which; at either it is too low. */
    @Test
    void aluminumEndsTooLowAtAnyOfSeveralConnections() {
        String two = SITE.replace("{\"at\": [30, 40], \"height\": 0}", """
                {"at": [30, 40], "height": 0}, {"at": [30, 38], "height": %s}""");
        String aluminum = with("B 6 AWG L > M aluminum outdoors");
        assertThat(Judged.of(two.formatted("1"), aluminum).violations()).containsExactly("250.64(A) B");
        assertThat(Judged.of(two.formatted("2"), aluminum).violations()).isEmpty();
    }

    /** No field of a proposal tells it. */
    @Test
    void whetherAluminumIsBareAgainstMasonryIsNotChecked() {
        Site site = SiteReader.parse(SITE, "test.site.json");
        String aluminum = with("A 6 AWG S > L aluminum");
        assertThat(ReviewProposal.of(site, Draft.of(site, aluminum)).notChecked())
                .contains("Whether aluminum lies bare against earth or masonry, 250.64(A): A.");
        assertThat(ReviewProposal.of(site, Draft.of(site, TIE)).notChecked())
                .noneMatch(line -> line.contains("250.64(A)"));
    }

    private static final String JOINED = """
            A 6 AWG S > J:J1
            B 6 AWG J:J1 > L
            D 6 AWG L > J:J2
            E 6 AWG J:J2 > M
            """;

    @Test
    void aGroundingElectrodeConductorHasNoMechanicalJoint() {
        assertThat(Judged.of(SITE, JOINED + "joint J1 exothermic A B\njoint J2 irreversible D E")
                        .violations())
                .isEmpty();
        assertThat(Judged.of(SITE, JOINED + "joint J1 busbar A B").violations()).isEmpty();
        assertThat(Judged.of(SITE, JOINED + "joint J1 mechanical A B").violations())
                .containsExactlyInAnyOrder("250.64(C) A", "250.64(C) B");
    }

    @Test
    void aBondingJumperBetweenElectrodesMayHaveOne() {
        assertThat(Judged.of(SITE, JOINED + "joint J2 mechanical D E").violations())
                .isEmpty();
    }

    @Test
    void aMechanicalTapNamesTheConductorThatRunsToTheElectrode() {
        assertThat(Judged.of(SITE, "A 6 AWG S > L\nB 6 AWG A~5 > M\njoint mechanical A B")
                        .violations())
                .containsExactly("250.64(C) A");
    }

    @Test
    void aJointOfAConductorThatIsMissingIsACaution() {
        Judged judged = Judged.of(SITE, TIE + "joint exothermic A Z");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.cautions()).containsExactly("250.64(C) Z");
    }

    @Test
    void whatNothingReliesOnIsANote() {
        Judged judged = Judged.of(SITE, TIE + "D 8 AWG S > M");
        assertThat(judged.violations()).isEmpty();
        assertThat(judged.notes()).containsExactly("250.64(B) D");
    }

    /** S lies at height 5, L 30 ft away at 1.5: 30.20 ft in a straight line. */
    @Test
    void statedLengthBelowTheDistanceOfTheEndsIsACaution() {
        assertThat(Judged.of(SITE, with("A 8 AWG S > L raceway length 30.1")).cautions())
                .containsExactly("length A");
        assertThat(Judged.of(SITE, with("A 8 AWG S > L raceway length 30.2")).cautions())
                .isEmpty();
    }

    /** A line left as it was, 12 ft, while the end moved to L, 30.20 ft away. */
    @Test
    void aDrawnLineDoesNotHideHowFarTheEndsLieApart() {
        Site site = SiteReader.parse(SITE, "test.site.json");
        Proposal whole = Draft.of(site, with("A 8 AWG S > L raceway length 12"));
        List<ProposedConductor> moved = whole.conductors().stream()
                .map(conductor -> conductor.id().equals("A") ? drawnTwelveFeet(conductor) : conductor)
                .toList();
        Judged judged = Judged.of(site, new Proposal(moved, whole.links(), whole.joints()));
        assertThat(judged.cautions()).containsExactly("length A");
        assertThat(judged.message("length")).contains("its ends lie apart by 30.20 ft");
    }

    private static ProposedConductor drawnTwelveFeet(ProposedConductor conductor) {
        Length height = Length.ofFeet(5);
        Position start = new Position("L1", new PlanPoint(0, 0), height);
        Position end = new Position("L1", new PlanPoint(0, Length.ofFeet(12).nanometres()), height);
        return new ProposedConductor(
                conductor.id(),
                conductor.size(),
                conductor.material(),
                conductor.from(),
                conductor.to(),
                List.of(start, end),
                conductor.length(),
                conductor.enclosure(),
                false,
                false,
                false);
    }

    @Test
    void statedLengthBelowItsDrawnLineIsACaution() {
        String drawn = TIE + "D 6 AWG (0,0) > (0,8) line length ";
        assertThat(Judged.of(SITE, drawn + "7.9").cautions()).containsExactly("length D");
        assertThat(Judged.of(SITE, drawn + "8").cautions()).isEmpty();
    }

    @Test
    void aLineThroughAClosedAreaOrOutsideTheOutlineIsACautionWithThePlace() {
        Judged through = Judged.of(SITE, TIE + "D 6 AWG (10,20) > (50,20) line");
        assertThat(through.cautions()).containsExactly("geometry D");
        assertThat(through.message("geometry"))
                .startsWith("The run of D from (10, 20) to (50, 20) passes closed area vault on level L1.");
        assertThat(Judged.of(SITE, TIE + "D 6 AWG (10,10) > (50,10) line").cautions())
                .as("along its edge")
                .isEmpty();
        Judged outside = Judged.of(SITE, TIE + "D 6 AWG (0,20) > (-3,20) line");
        assertThat(outside.message("geometry")).contains("leaves the outline of level L1");
        assertThat(Judged.of(SITE, TIE + "D 6 AWG (0,5) > (-9,5) line").cautions())
                .as("along a line drawn for copper")
                .isEmpty();
    }
}
