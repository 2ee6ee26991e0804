package org.bondspan.viewer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.site.PlanPoint;
import org.bondspan.usecase.Question;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.plan.Camera;
import org.bondspan.viewer.plan.Tool;
import org.junit.jupiter.api.Test;

class DeskTest {
    private static final long FOOT = 304_800_000L;

    @Test
    void anOpenedSiteShowsItsFirstLevelWithNothingSelected() {
        Desk desk = Sitting.solved("plant-block.site.json");

        assertThat(desk.look().level()).isEqualTo("ground");
        assertThat(desk.look().selected()).isEmpty();
        assertThat(desk.work()).isEmpty();
        assertThat(desk.answer()).isPresent();
        assertThat(desk.before()).isEmpty();
    }

    @Test
    void whatComesFromAnOlderWorkNoLongerCounts() {
        Desk desk = Sitting.solved("hall-timber.site.json");
        Desk working = Asking.begin(8, "Solving").on(desk);

        assertThat(Asking.answered(7, desk.answer().orElseThrow()).on(working)).isSameAs(working);
        assertThat(Asking.failed(7, Message.notice("late")).on(working)).isSameAs(working);
        assertThat(Asking.answered(8, desk.answer().orElseThrow()).on(working).work())
                .isEmpty();
    }

    @Test
    void aFailedQuestionLeavesTheLastAnswerAndItsQuestion() {
        Desk desk = Sitting.solved("hall-steel.site.json");
        Opened opened = desk.opened().orElseThrow();
        var other = new Question(
                Question.Leave.DENIED,
                opened.question().supervision(),
                opened.question().ring(),
                opened.question().edition(),
                opened.question().objective());
        Desk asked = Asking.begin(9, "Solving").on(Asking.ask(other).on(desk));

        Desk failed = Asking.failed(9, Message.notice("no")).on(asked);

        assertThat(asked.opened().orElseThrow().question()).isEqualTo(other);
        assertThat(failed.opened().orElseThrow().question()).isEqualTo(opened.question());
        assertThat(failed.answer()).isEqualTo(desk.answer());
        assertThat(failed.message()).contains(Message.notice("no"));
    }

    /** The risers' shaft ends on the upper level at the disconnects: they are drawn there alone (sample's file). */
    @Test
    void selectingWhatLiesElsewhereTurnsToItsLevel() {
        Desk desk = Sitting.solved("plant-block.site.json");

        assertThat(Looking.select("disconnect-1").on(desk).look().level()).isEqualTo("upper");
        assertThat(Looking.select("tank-room").on(desk).look().level()).isEqualTo("ground");
        assertThat(Looking.select("shaft")
                        .on(Looking.atLevel("upper").on(desk))
                        .look()
                        .level())
                .isEqualTo("upper");
        assertThat(Looking.select("unknown").on(desk).look().level()).isEqualTo("ground");
    }

    @Test
    void revealingMovesTheViewOnlyWhereTheThingIsOutOfIt() {
        Desk desk = Sitting.solved("hall-timber.site.json");
        assertThat(Looking.reveal("water").on(desk).look().camera())
                .as("a fitted plan shows all")
                .isEmpty();

        // 20 ft around the service at (5, 6); the water pipe enters at (600, 394) or so.
        Camera corner = Camera.around(
                Bounds.around(List.of(new PlanPoint(-5 * FOOT, -4 * FOOT), new PlanPoint(15 * FOOT, 16 * FOOT))));
        Desk near = Looking.through(corner).on(desk);
        assertThat(Looking.reveal("service").on(near).look().camera()).contains(corner);

        Camera moved = Looking.reveal("water").on(near).look().camera().orElseThrow();
        assertThat(moved.centreX() / FOOT).isBetween(580.0, 620.0);
        assertThat(moved.centreY() / FOOT).isBetween(374.0, 414.0);
        assertThat(moved.width()).isEqualTo(corner.width());
    }

    @Test
    void levelsGoUpAndDownAndStopAtTheEnds() {
        Desk desk = Sitting.solved("plant-block.site.json");

        Desk up = Looking.levelsUp(1).on(desk);
        assertThat(up.look().level()).isEqualTo("upper");
        assertThat(Looking.levelsUp(1).on(up)).isSameAs(up);
        assertThat(Looking.levelsUp(-1).on(up).look().level()).isEqualTo("ground");
    }

    @Test
    void aLevelThatIsNotThereIsSaid() {
        Desk desk = Sitting.solved("plant-block.site.json");

        Desk after = Looking.atLevel("L9").on(desk);
        assertThat(after.look().level()).isEqualTo("ground");
        assertThat(after.message().orElseThrow().title()).isEqualTo("There is no level L9");
    }

    @Test
    void eachLevelKeepsItsOwnView() {
        Desk desk = Looking.zoomed(2).on(Sitting.solved("plant-block.site.json"));
        Camera below = desk.look().camera().orElseThrow();

        Desk up = Looking.atLevel("upper").on(desk);
        assertThat(up.look().camera()).isEmpty();
        assertThat(Looking.atLevel("ground").on(up).look().camera()).contains(below);
        assertThat(Looking.fitted().on(desk).look().camera()).isEmpty();
    }

    @Test
    void layersAreSwitchedOffAndOnAgain() {
        Desk desk = Desk.empty(Palette.LIGHT);

        Desk without = Looking.toggle(Layer.FRAME).on(desk);
        assertThat(without.look().layers()).doesNotContain(Layer.FRAME).hasSize(Layer.values().length - 1);
        assertThat(Looking.toggle(Layer.FRAME).on(without).look().layers()).containsExactlyInAnyOrder(Layer.values());
    }

    @Test
    void aMeasurementTakesTwoPlacesAndThenBeginsAnew() {
        PlanPoint a = new PlanPoint(0, 0);
        PlanPoint b = new PlanPoint(3 * FOOT, 4 * FOOT);
        Desk first = Looking.measure(a).on(Looking.with(Tool.MEASURE).on(Desk.empty(Palette.LIGHT)));
        Desk second = Looking.measure(b).on(first);

        assertThat(first.look().measure().orElseThrow().to()).isEmpty();
        // 3, 4, 5
        assertThat(second.look().measure().orElseThrow().straight().nanometres())
                .isEqualTo(5 * FOOT);
        assertThat(Looking.measure(a).on(second).look().measure()).contains(Measure.begun("", a));
        assertThat(Looking.with(Tool.LOOK).on(second).look().measure()).isEmpty();
    }

    @Test
    void proposalAndComparisonAreShownOnlyWhereThereIsOne() {
        Desk desk = Sitting.solved("hall-timber.site.json");
        assertThat(Looking.showing(Showing.PROPOSAL).on(desk).look().showing()).isEqualTo(Showing.ANSWER);
        assertThat(Looking.showing(Showing.SIDE_BY_SIDE).on(desk).look().showing())
                .isEqualTo(Showing.ANSWER);

        Desk compared = Looking.showing(Showing.SIDE_BY_SIDE).on(Asking.pin().on(desk));
        assertThat(compared.look().showing()).isEqualTo(Showing.SIDE_BY_SIDE);
        assertThat(Asking.unpin().on(compared).look().showing()).isEqualTo(Showing.ANSWER);

        Desk reviewed = Sitting.reviewed("hall-timber.site.json", "hall-timber.sound.proposal.json");
        assertThat(reviewed.look().showing()).isEqualTo(Showing.PROPOSAL);
        assertThat(Asking.closeReview().on(reviewed).look().showing()).isEqualTo(Showing.ANSWER);
        assertThat(Asking.closeReview().on(Asking.pin().on(reviewed)).look().showing())
                .isEqualTo(Showing.ANSWER);
        Desk beside = Looking.showing(Showing.SIDE_BY_SIDE).on(Asking.pin().on(reviewed));
        assertThat(Asking.closeReview().on(beside).look().showing()).isEqualTo(Showing.SIDE_BY_SIDE);
    }
}
