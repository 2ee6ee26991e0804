package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: disconnects on one lateral are sized by their sum, each tap by its own, 250.64(D)(1); services on
 * two laterals do not add.
 */
class A03_SeveralServicesTest {
    private static String site(String firstSupply, String secondSupply, String more) {
        return Sites.openFloor(40, 20, """
                "services": [
                  {"id": "S1", "supply": "%s", $copper(500 kcmil, 2), $at(0, 0)},
                  {"id": "S2", "supply": "%s", $copper(500 kcmil, 2), $at(10, 0)}
                ],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [5, 20], "fromEntrance": 0}]}]%s""".formatted(firstSupply, secondSupply, more));
    }

    /** 2 x 500 = 1000 kcmil: 2/0. Together 2000 kcmil: 3/0. Taps 5 ft each meet at (5, 0), common 20 ft. */
    @Test
    void addUpOnOneLateral() {
        Routed routed = Routed.of(site("A", "A", ""));
        assertThat(routed.conductors())
                .containsExactlyInAnyOrder(
                        "2/0 AWG 5 from S1 to J1", "2/0 AWG 5 from S2 to J1", "3/0 AWG 20 from J1 to W");
        assertThat(routed.weight()).isEqualByComparingTo("14.471"); // 10 x 0.4109 + 20 x 0.5181
    }

    @Test
    void doNotAddUpOnTwoLaterals() {
        Routed routed = Routed.of(site("A", "B", ""));
        assertThat(routed.sizes()).isEqualTo("2/0 AWG 30");
        assertThat(routed.weight()).isEqualByComparingTo("12.327"); // 30 x 0.4109
    }

    @Test
    void joinOnABusbarWhereOneLies() {
        Routed welded = Routed.of(site("A", "A", ""));
        Routed onBusbar = Routed.of(site("A", "A", ", \"busbars\": [{\"id\": \"B\", \"at\": [5, 0]}]"));
        assertThat(welded.layout().joints()).singleElement().satisfies(joint -> {
            assertThat(joint.method()).isEqualTo("exothermic");
            assertThat(joint.conductors()).hasSize(3);
        });
        assertThat(onBusbar.layout().joints())
                .singleElement()
                .satisfies(joint -> assertThat(joint.method()).isEqualTo("busbar"));
        assertThat(onBusbar.weight()).isEqualByComparingTo(welded.weight());
    }

    /** The 4 x 500 kcmil service needs 3/0 everywhere toward W, the 3/0 service 4 AWG toward it on its tap. */
    @Test
    void takeTheLargestNeedOverTwoLaterals() {
        Routed routed = Routed.of(Sites.openFloor(40, 20, """
                "services": [
                  {"id": "S1", "supply": "A", $copper(500 kcmil, 4), $at(0, 0)},
                  {"id": "S2", "supply": "B", $copper(3/0 AWG), $at(10, 0)}
                ],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [5, 20], "fromEntrance": 0}]}]"""));
        assertThat(routed.sizes()).isEqualTo("3/0 AWG 25, 4 AWG 5");
        assertThat(routed.weight()).isEqualByComparingTo("13.597"); // 25 x 0.5181 + 5 x 0.1289
    }

    /** S2's bus has two connections; the drawn lines would reach W only over that bus. */
    @Test
    void areNoWayOverTheBusOfAnother() {
        Routed routed = Routed.of(Sites.linesOnly(40, 20, """
                "services": [
                  {"id": "S1", "supply": "A", $copper(500 kcmil), $at(0, 0)},
                  {"id": "S2", "supply": "A", $copper(500 kcmil), "connections": [{"at": [10, 0]}, {"at": [12, 0]}]}
                ],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}],
                "paths": [
                  {"id": "P1", "medium": "copper", "line": [[0, 0], [10, 0]]},
                  {"id": "P2", "medium": "copper", "line": [[12, 0], [30, 0]]}
                ]"""));
        assertThat(routed.status().label()).isEqualTo("impossible");
    }

    /**
     * S2 lies on the way of S1: the copper runs past unbroken, 500 kcmil on one lateral each, 1/0 and 1000 kcmil 2/0.
     */
    @Test
    void arePassedByTheCopperOfAnother() {
        Routed routed = Routed.of(Sites.openFloor(40, 20, """
                "services": [
                  {"id": "S1", "supply": "A", $copper(500 kcmil), $at(0, 0)},
                  {"id": "S2", "supply": "A", $copper(500 kcmil), $at(10, 0)}
                ],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}]"""));
        assertThat(routed.sizes()).isEqualTo("2/0 AWG 20, 1/0 AWG 10");
        // S2 is named by the larger conductor, for which a way of 1/0 to it would be too little
        assertThat(routed.conductors()).containsExactly("1/0 AWG 10 from S1 to C2@0", "2/0 AWG 20 from S2 to W");
        assertThat(routed.weight()).isEqualByComparingTo("11.476"); // 20 x 0.4109 + 10 x 0.3258
    }
}
