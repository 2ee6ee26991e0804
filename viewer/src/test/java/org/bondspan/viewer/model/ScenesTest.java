package org.bondspan.viewer.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.state.Showing;
import org.junit.jupiter.api.Test;

class ScenesTest {
    @Test
    void withoutASiteThereIsNoPlan() {
        assertThat(Scenes.of(Desk.empty(Palette.LIGHT))).isEmpty();
    }

    @Test
    void anAnswerIsOnePlanWithWhatIsSelected() {
        Desk desk = Looking.select("C2").on(Sitting.solved("hall-timber.site.json"));
        List<Scenes.Titled> scenes = Scenes.of(desk);

        assertThat(scenes).hasSize(1);
        assertThat(scenes.get(0).title()).isEqualTo("Answer: 538.98 lb, 1,077.50 ft");
        assertThat(scenes.get(0).scene().selected()).contains("C2");
    }

    @Test
    void sideBySideBothPlansAreSeenThroughTheSameCamera() {
        Desk desk = Asking.pin().on(Sitting.solved("hall-steel.site.json"));
        Desk both = Looking.showing(Showing.SIDE_BY_SIDE).on(desk);

        assertThat(Scenes.of(both))
                .extracting(Scenes.Titled::title)
                .hasSize(2)
                .first()
                .asString()
                .startsWith("Pinned");
        Desk near = Looking.zoomed(3).on(both);
        assertThat(Scenes.of(near).get(0).scene().camera())
                .isEqualTo(Scenes.of(near).get(1).scene().camera())
                .isNotEqualTo(Scenes.of(both).get(0).scene().camera());
    }

    @Test
    void withoutAPinnedAnswerTheProposalStandsBesideTheAnswer() {
        Desk reviewed = Sitting.reviewed("hall-timber.site.json", "hall-timber.sound.proposal.json");

        assertThat(Scenes.of(reviewed))
                .extracting(Scenes.Titled::title)
                .containsExactly("Proposal: hall-timber.sound.proposal.json");
        assertThat(Scenes.of(Looking.showing(Showing.SIDE_BY_SIDE).on(reviewed)))
                .extracting(Scenes.Titled::title)
                .containsExactly("Proposal: hall-timber.sound.proposal.json", "Answer: 538.98 lb, 1,077.50 ft");
    }
}
