package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.layout.Copper;
import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: what is measured, what is bought, and in which unit. */
class E01_QuantitiesTest {
    /** 30 ft of 6 AWG and 2 ft make-up at each end; 5 % waste on 34 ft. */
    @Test
    void addWasteToWhatIsBoughtOnly() {
        Routed routed = Routed.of(Sites.openFloor(40, 20, """
                "makeUpPerEnd": 2, "wastePercent": 5,
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(30, 0)}]"""));
        Copper copper = routed.layout().copper().orElseThrow();
        assertThat(routed.length(copper.length())).isEqualTo("34");
        assertThat(routed.length(copper.purchaseLength())).isEqualTo("35.7");
        assertThat(routed.weight()).isEqualByComparingTo("2.754"); // 34 x 0.081
        assertThat(routed.layout().conductors())
                .singleElement()
                .satisfies(conductor ->
                        assertThat(routed.length(conductor.length().makeUp())).isEqualTo("4"));
    }

    /** 3.048 m are 10 ft: 0.81 lb, 0.3674098197 kg. */
    @Test
    void answerInMetresAndKilograms() {
        Routed routed = Routed.of(Sites.openFloor(40, 20, """
                "lengthUnit": "m",
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(3.048, 0)}]""").replace("\"rodLength\": 8", "\"rodLength\": 2.4384"));
        assertThat(routed.sizes()).isEqualTo("6 AWG 3.048");
        assertThat(routed.weight()).isEqualByComparingTo("0.3674098197");
    }
}
