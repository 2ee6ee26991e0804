package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;
import org.bondspan.finding.Finding;
import org.bondspan.io.LayoutWriter;
import org.bondspan.io.ProposalReader;
import org.bondspan.io.ReviewWriter;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.report.ReviewText;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.usecase.ReviewProposal;
import org.bondspan.usecase.RouteSite;
import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contract 2.1 and 4: lengths as stated, drawn or measured with a tape; worked by hand. */
class LengthTest {
    /** A line drawn over 50 ft and measured as 20 ft; from its end at (50, 0) the floor is open. */
    private static final String SHORT = Sites.openFloor(60, 40, """
            "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
            "electrodes": [{"id": "R1", $rod, $at(60, 0)}, {"id": "R2", $rod, $at(60, 8)}],
            "paths": [{"id": "P", "medium": "copper", "line": [[0, 0], [50, 0]], "length": 20}]""");

    private static final String PLAIN = Sites.openFloor(60, 40, """
            "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
            "electrodes": [{"id": "R1", $rod, $at(60, 0)}, {"id": "R2", $rod, $at(60, 8)}]""");

    private static Judged straightOver(String from, String to, String length) {
        return Judged.of(
                SHORT, "A 6 AWG S > R1\nB 6 AWG R1 > R2\nD 6 AWG %s > %s line length %s".formatted(from, to, length));
    }

    /** 20 ft by the tape and 10 ft of floor. */
    @Test
    void aRunOverAMeasuredLineAndFurtherIsMeasuredPieceByPiece() {
        assertThat(straightOver("(0,0)", "(60,0)", "30").cautions()).isEmpty();
        Judged judged = straightOver("(0,0)", "(60,0)", "29.9");
        assertThat(judged.cautions()).containsExactly("length D");
        assertThat(judged.message("length")).contains("measures 30.00 ft");
    }

    /** Half of the line counts 10 ft. */
    @Test
    void aRunOverAPartOfAMeasuredLineTakesItsShare() {
        assertThat(straightOver("(25,0)", "(60,0)", "20").cautions()).isEmpty();
        assertThat(straightOver("(25,0)", "(60,0)", "19.9").cautions()).containsExactly("length D");
        assertThat(straightOver("(0,10)", "(60,10)", "59.9").cautions())
                .as("drawn beside the line, it is measured as drawn")
                .containsExactly("length D");
    }

    /** 60 ft apart, of which the measured line saves 30 ft at most. */
    @Test
    void endsFarApartNeedTheirDistanceLessWhatMeasuredLinesSave() {
        assertThat(Judged.of(SHORT, "A 6 AWG S > R1 length 30\nB 6 AWG R1 > R2").cautions())
                .isEmpty();
        Judged judged = Judged.of(SHORT, "A 6 AWG S > R1 length 29.9\nB 6 AWG R1 > R2");
        assertThat(judged.cautions()).containsExactly("length A");
        assertThat(judged.message("length")).contains("its ends need at least 30.00 ft");
    }

    /** A tap at 90 ft lies on a conductor of 90 ft, not on one of 89 ft. */
    @Test
    void aTapBeyondTheStatedLengthIsACaution() {
        String tapped = "A 6 AWG (0,30) > R1 length %s\nB 6 AWG R1 > R2\nD 6 AWG S > A~90 length 99";
        assertThat(Judged.of(SHORT, tapped.formatted("90")).cautions()).isEmpty();
        Judged judged = Judged.of(SHORT, tapped.formatted("89"));
        assertThat(judged.cautions()).containsExactly("length A");
        assertThat(judged.message("length")).contains("it is tapped at 90.00 ft");
    }

    /** 0 to 50 by the tape (20 ft), 10 ft of floor, 8 ft between the rods. */
    @Test
    void theAnswerOfRouteOverSuchALineHasNoCaution() {
        Site site = SiteReader.parse(SHORT, "test.site.json");
        String answer = LayoutWriter.toJson(RouteSite.of(site));
        assertThat(answer).contains("\"copper\": {\"length\": 38,");
        ReviewOutcome outcome = ReviewProposal.of(site, ProposalReader.parse(answer, "test.result.json", site));
        assertThat(outcome.findings()).isEmpty();
        assertThat(outcome.complies()).isTrue();
    }

    /** 60 ft and 8 ft of 6 AWG at 81.0 lb per 1000 ft (ASTM B8): 5.51 lb; B states what it has. */
    @Test
    void straightDistancesAreToldWhereverTheyAreReckonedWith() {
        Site site = SiteReader.parse(SHORT, "test.site.json");
        ReviewOutcome outcome = ReviewProposal.of(site, Draft.of(site, "A 6 AWG S > R1\nB 6 AWG R1 > R2 length 8"));
        assertThat(outcome.reckonedStraight()).containsExactly("A");
        assertThat(outcome.notChecked())
                .contains(
                        "Runs of conductors that state neither length nor line, reckoned straight from end to end: A.");
        assertThat(ReviewText.of(outcome).replaceAll("\\s+", " "))
                .contains(
                        "It takes 5.51 lb of copper, 1 conductor reckoned straight from end to end for want of a length or"
                                + " line (run otherwise it takes more); the least is 3.08 lb.",
                        "straight 60.00",
                        "proposed, partly reckoned straight");
        assertThat(ReviewWriter.toJson(outcome)).contains("\"lengthFrom\": \"ends\"", "\"lengthFrom\": \"stated\"");
        ReviewOutcome stated =
                ReviewProposal.of(site, Draft.of(site, "A 6 AWG S > R1 length 60\nB 6 AWG R1 > R2 length 8"));
        assertThat(ReviewText.of(stated).replaceAll("\\s+", " "))
                .doesNotContain("straight")
                .contains("It takes 5.51 lb of copper; the least is 3.08 lb.");
    }

    private static ReviewOutcome review(String siteFile, String draft) {
        Site site = SiteReader.parse(siteFile, "test.site.json");
        return ReviewProposal.of(site, Draft.of(site, draft));
    }

    /** Open floor without measured lines: 60 ft and 8 ft of 6 AWG at 81.0 lb per 1000 ft (ASTM B8): 5.51 lb. */
    @Test
    void aLengthStatedTooShortCountsWithWhatItNeeds() {
        ReviewOutcome outcome = review(PLAIN, "A 6 AWG S > R1 length 1\nB 6 AWG R1 > R2 length 8");
        assertThat(outcome.complies()).isTrue();
        assertThat(outcome.reckonedAsNeeded()).containsExactly("A");
        assertThat(outcome.notChecked())
                .contains("Lengths stated below what line, ends or taps need, reckoned with what these need: A.");
        assertThat(ReviewText.of(outcome).replaceAll("\\s+", " "))
                .contains(
                        "It takes 5.51 lb of copper, 1 conductor reckoned as long as its line or ends need, which is"
                                + " more than stated; the least is 5.51 lb.",
                        "needed 60.00",
                        "proposed, not all as stated");
        assertThat(ReviewWriter.toJson(outcome)).contains("\"lengthFrom\": \"needed\"");
    }

    /** What is stated above the need counts as stated: 70 ft and 8 ft of 6 AWG, 6.32 lb. */
    @Test
    void aLengthStatedAboveTheNeedCountsAsStated() {
        ReviewOutcome outcome = review(PLAIN, "A 6 AWG S > R1 length 70\nB 6 AWG R1 > R2 length 8");
        assertThat(outcome.reckonedAsNeeded()).isEmpty();
        assertThat(ReviewText.of(outcome)).contains("It takes 6.32 lb of copper; the least is 5.51 lb.");
    }

    /** A tap at 90 ft needs 90 ft of a conductor whose ends lie 60 ft apart. */
    @Test
    void aTapBeyondBothEndsIsTheNeed() {
        ReviewOutcome outcome =
                review(PLAIN, "A 6 AWG S > R1 length 1\nB 6 AWG R1 > R2 length 8\nD 6 AWG S > A~90 length 99");
        assertThat(outcome.conductors().get(0).length().orElseThrow())
                .isEqualTo(Length.of(new BigDecimal(90), LengthUnit.FOOT));
    }

    /**
     * S lies at (0, 0), R1 at (60, 0), R2 at (60, 8). A tap at 30 ft on a straight run is at (30, 0): 30 ft and 8 ft.
     */
    private static String lengths(String draft) {
        return review(PLAIN, draft).conductors().stream()
                .map(conductor -> conductor.id() + " "
                        + conductor
                                .length()
                                .map(length -> length.in(LengthUnit.FOOT)
                                        .setScale(2, RoundingMode.HALF_UP)
                                        .toPlainString())
                                .orElse("-")
                        + " " + conductor.lengthFrom())
                .collect(Collectors.joining("; "));
    }

    /** 31.05 ft is the hypotenuse over 30 ft and 8 ft. */
    @Test
    void aConductorThatBeginsAtATapIsMeasuredFromThere() {
        assertThat(lengths("A 6 AWG (0,0) > (60,0) line\nB 6 AWG A~30 > R2")).isEqualTo("A 60.00 LINE; B 31.05 ENDS");
        assertThat(lengths("A 6 AWG S > R1\nB 6 AWG A~30 > R2")).isEqualTo("A 60.00 ENDS; B 31.05 ENDS");
        // A tap on the tap, halfway up it: at (45, 4); to (60, 8) it is as far again.
        assertThat(lengths("A 6 AWG S > R1\nB 6 AWG A~30 > R2\nC 6 AWG B~15.524 > R2"))
                .isEqualTo("A 60.00 ENDS; B 31.05 ENDS; C 15.52 ENDS");
    }

    /** It may run anywhere: 70 ft between ends 60 ft apart, or a tap further on than those. */
    @Test
    void aTapOnWhatIsNeitherDrawnNorStraightTellsNoPlace() {
        assertThat(lengths("A 6 AWG S > R1 length 70\nB 6 AWG A~30 > R2")).isEqualTo("A 70.00 STATED; B - NOTHING");
        assertThat(lengths("A 6 AWG S > R1\nB 6 AWG A~61 > R2")).isEqualTo("A 60.00 ENDS; B - NOTHING");
        ReviewOutcome outcome = review(PLAIN, "A 6 AWG S > R1 length 70\nB 6 AWG A~30 > R2\nC 6 AWG B~3 > R2");
        assertThat(outcome.unknownLengths()).containsExactly("B", "C");
        assertThat(outcome.notChecked())
                .contains(
                        "Lengths that nothing tells, for want of a length, a line, or ends whose places are known: B, C.");
        assertThat(ReviewText.of(outcome).replaceAll("\\s+", " "))
                .contains("Its copper is not known: no length, no line and no ends tell how long B, C are.");
    }

    /** Drawn over 50 ft that the tape measured as 20 ft: nobody knows where 10 ft by the tape are. */
    @Test
    void aTapOnARunThatIsMeasuredOtherwiseThanDrawnTellsNoPlace() {
        ReviewOutcome outcome =
                review(SHORT, "A 6 AWG (0,0) > (50,0) line\nB 6 AWG A~10 > R2\nC 6 AWG A~10 > R1 length 9");
        assertThat(outcome.unknownLengths()).containsExactly("B");
        assertThat(outcome.findings())
                .extracting(Finding::rule, Finding::subject)
                .doesNotContain(tuple("length", "C"));
    }

    /** Nobody drew A: a stated length of B is no contradiction to where A might run. */
    @Test
    void aSupposedPlaceContradictsNoStatedLength() {
        assertThat(Judged.of(PLAIN, "A 6 AWG S > R1\nB 6 AWG A~30 > R2 length 20")
                        .cautions())
                .isEmpty();
        assertThat(Judged.of(PLAIN, "A 6 AWG (0,0) > (60,0) line\nB 6 AWG A~30 > R2 length 20")
                        .cautions())
                .containsExactly("length B");
    }

    /** The longest conductor of the answer of route, edited, its line kept: the copper is that of the answer. */
    @ParameterizedTest
    @ValueSource(strings = {"10", "0.0001", "0"})
    void aResultWithAnEditedTotalStillTakesTheLeast(String total) {
        Site site = SiteReader.parse(PLAIN, "test.site.json");
        String answer = LayoutWriter.toJson(RouteSite.of(site));
        String edited = answer.replaceFirst("\"total\": 60", "\"total\": " + total);
        assertThat(edited).isNotEqualTo(answer);
        ReviewOutcome outcome = ReviewProposal.of(site, ProposalReader.parse(edited, "test.result.json", site));
        assertThat(outcome.copper().orElseThrow().weight())
                .isEqualTo(outcome.least().weight().orElseThrow());
    }
}
