package org.bondspan.viewer.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.usecase.Question.Leave;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.Switch.Position;
import org.bondspan.viewer.model.Switch.What;
import org.bondspan.viewer.state.Opened;
import org.junit.jupiter.api.Test;

class SwitchTest {
    /** What the samples draw stands in README, "Samples". */
    @Test
    void aSwitchIsThereForWhatTheSiteDraws() {
        Opened timber = Sitting.solved("hall-timber.site.json").opened().orElseThrow();
        Opened steel = Sitting.solved("hall-steel.site.json").opened().orElseThrow();
        Opened plant = Sitting.solved("plant-block.site.json").opened().orElseThrow();
        Opened metric = Sitting.solved("workshop-metric.site.json").opened().orElseThrow();

        assertThat(Switch.of(timber, What.FRAME).available()).isFalse();
        assertThat(Switch.of(steel, What.FRAME).position()).isEqualTo(Position.ON);
        assertThat(Switch.of(plant, What.RING).position()).isEqualTo(Position.ON);
        assertThat(Switch.of(metric, What.SUPERVISION).position()).isEqualTo(Position.ON);
        assertThat(Switch.of(metric, What.SUPERVISION).available()).isTrue();
    }

    @Test
    void turningTwiceComesBackToWhatIsDrawn() {
        Opened steel = Sitting.solved("hall-steel.site.json").opened().orElseThrow();

        Opened denied = steel.asking(Switch.turned(steel, What.FRAME));
        assertThat(denied.question().frame()).isEqualTo(Leave.DENIED);
        assertThat(Switch.of(denied, What.FRAME).position()).isEqualTo(Position.OFF);
        assertThat(Switch.turned(denied, What.FRAME)).isEqualTo(steel.question());
    }
}
