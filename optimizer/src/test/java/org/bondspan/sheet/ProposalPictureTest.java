package org.bondspan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bondspan.io.ProposalReader;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.LevelPicture;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.usecase.ReviewProposal;
import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** What a reviewer sees of a proposal on the plan. */
class ProposalPictureTest {
    private static final Site DEPOT = SiteReader.read(Path.of("..", "samples", "hall-timber.site.json"));

    private static Picture picture(Site site, Proposal proposal) {
        ReviewOutcome outcome = ReviewProposal.of(site, proposal);
        return LevelPicture.of(site, proposal, outcome, site.levels().get(0));
    }

    private static Stream<Item.Run> runs(Picture picture, String id) {
        return picture.items().stream()
                .filter(item -> item.id().equals(id))
                .filter(Item.Run.class::isInstance)
                .map(Item.Run.class::cast);
    }

    private static List<String> words(Picture picture, String id, Note.Kind kind) {
        return picture.notes().stream()
                .filter(note -> note.id().equals(id) && note.kind() == kind)
                .flatMap(note -> note.lines().stream())
                .toList();
    }

    @Test
    void drawsEveryConductorOfTheSoundSampleAndNoKeynoteOfAViolation() {
        Proposal sound = ProposalReader.read(Path.of("..", "samples", "hall-timber.sound.proposal.json"), DEPOT);
        Picture picture = picture(DEPOT, sound);
        assertThat(sound.conductors())
                .allSatisfy(conductor -> assertThat(words(picture, conductor.id(), Note.Kind.CONDUCTOR))
                        .first()
                        .asString()
                        .isEqualTo(conductor.id() + "  " + conductor.size().label()));
        assertThat(runs(picture, "water-run")).allMatch(run -> run.kind() == LineKind.GROUNDING_ELECTRODE_CONDUCTOR);
        assertThat(runs(picture, "rod-jumper")).allMatch(run -> run.kind() == LineKind.BONDING_JUMPER);
    }

    @Test
    void numbersTheFindingsOfTheFaultySampleAsItsReviewLists() {
        Proposal faulty = ProposalReader.read(Path.of("..", "samples", "hall-timber.faulty.proposal.json"), DEPOT);
        ReviewOutcome outcome = ReviewProposal.of(DEPOT, faulty);
        Picture picture = picture(DEPOT, faulty);
        List<String> numbers = picture.notes().stream()
                .filter(note -> note.kind() == Note.Kind.KEYNOTE)
                .flatMap(note -> note.lines().stream())
                .toList();
        assertThat(numbers).isNotEmpty().doesNotHaveDuplicates();
        assertThat(numbers).allSatisfy(number -> {
            String subject =
                    outcome.findings().get(Integer.parseInt(number) - 1).subject();
            assertThat(words(picture, subject, Note.Kind.KEYNOTE)).contains(number);
        });
    }

    /** One of the two footings is enough; the sound proposal lands on that in the southwest. */
    @Test
    void tellsWhatBecomesOfEachElectrode() {
        Picture sound =
                picture(DEPOT, ProposalReader.read(Path.of("..", "samples", "hall-timber.sound.proposal.json"), DEPOT));
        assertThat(words(sound, "footing-southwest", Note.Kind.ELECTRODE)).contains("concrete-encased electrode");
        assertThat(words(sound, "footing-northeast", Note.Kind.ELECTRODE)).contains("need not be connected");
        Picture faulty = picture(
                DEPOT, ProposalReader.read(Path.of("..", "samples", "hall-timber.faulty.proposal.json"), DEPOT));
        assertThat(words(faulty, "footing-southwest", Note.Kind.ELECTRODE)).contains("NO SUFFICIENT LAWFUL WAY");
    }

    /** A tap at 30 ft on a run of 100 ft from (0, 0) is at (30, 0). */
    @Test
    void drawsAConductorWithoutALineStraightBetweenItsEnds() {
        Site site = SiteReader.parse(Sites.openFloor(100, 50, """
                "services": [{"id": "S", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R1", $rod, $at(100, 0)}, {"id": "R2", $rod, $at(30, 40)}]"""), "test");
        Proposal proposal = ProposalReader.parse("""
                {"format": "bondspan-proposal/1", "conductors": [
                  {"id": "run", "size": "6 AWG", "from": {"service": "S"}, "to": {"electrode": "R1"}},
                  {"id": "tap", "size": "6 AWG", "from": {"conductor": "run", "at": 30}, "to": {"electrode": "R2"}}]}""", "test", site);
        assertThat(runs(picture(site, proposal), "tap"))
                .singleElement()
                .satisfies(run -> assertThat(run.places()).containsExactly(feet(30, 0), feet(30, 40)));
    }

    /** An end on a frame does not say where. */
    @Test
    void leavesOutConductorsWhoseEndsTellNoPlace() {
        Site site = SiteReader.parse(Sites.openFloor(100, 50, """
                "services": [{"id": "S", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R1", $rod, $at(100, 0)}],
                "paths": [{"id": "F", "medium": "structural-frame", "grid": {"x": [0, 20], "y": [0, 20]},
                           "top": 10, "beamHeight": 10, "continuous": true}]"""), "test");
        Proposal proposal = ProposalReader.parse("""
                {"format": "bondspan-proposal/1", "conductors": [
                  {"id": "a", "size": "6 AWG", "from": {"path": "F"}, "to": {"path": "F"}}]}""", "test", site);
        assertThat(runs(picture(site, proposal), "a")).isEmpty();
    }

    private static PlanPoint feet(long x, long y) {
        return new PlanPoint(Length.ofFeet(x).nanometres(), Length.ofFeet(y).nanometres());
    }
}
