package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.bondspan.sheet.plan.Layer;
import org.junit.jupiter.api.Test;

class StepsTest {
    private final List<String> ids = Steps.of(Drawn.hall(), Drawn.ALL);

    @Test
    void everyThingComesOnceTheServiceFirst() {
        assertThat(ids).containsExactly("service", "rod", "C1", "shaft", "L1", "wall-tray");
    }

    @Test
    void whatIsSwitchedOffIsPassedOver() {
        assertThat(Steps.of(Drawn.hall(), EnumSet.of(Layer.ELECTRODES))).containsExactly("rod");
    }

    @Test
    void stepsGoRoundInBothDirections() {
        assertThat(Steps.next(ids, Optional.empty(), 1)).contains("service");
        assertThat(Steps.next(ids, Optional.empty(), -1)).contains("wall-tray");
        assertThat(Steps.next(ids, Optional.of("service"), 1)).contains("rod");
        assertThat(Steps.next(ids, Optional.of("service"), -1)).contains("wall-tray");
        assertThat(Steps.next(ids, Optional.of("wall-tray"), 1)).contains("service");
        assertThat(Steps.next(List.of(), Optional.of("service"), 1)).isEmpty();
    }
}
