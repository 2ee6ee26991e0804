package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Copper of samples worked out by hand from their drawings. Sizes: Table 250.66 and its limits for concrete-encased
 * electrodes and rods. Weights per 1000 ft: ASTM B8, Class B (3/0 518.1 lb, 2/0 410.9, 2 AWG 204.9, 4 AWG 128.9, 6 AWG
 * 81.0, 8 AWG 51.0).
 */
class SamplesByHandTest {
    static Stream<Arguments> samples() {
        return Stream.of(
                // 3/0: up 23 to the open floor, 590 east and 388 north, down 24 to the pipe 5 ft in; 3 ft at both ends.
                // 4 AWG: from the bus down 2, 5 to the wall, 12 along it, 3 at the stub.
                // 6 AWG: tap off that at the rods: down 3.5, out 5, on 10, 3 at each of two rods.
                Arguments.of(
                        "hall-timber",
                        List.of(
                                "3/0 AWG  1,031.00 ft  534.16 lb",
                                "4 AWG       22.00 ft    2.84 lb",
                                "6 AWG       24.50 ft    1.98 lb")),
                // 3/0: bus to the corner column 5 + 2 + 6, entry to the opposite one 6; 3 ft at four ends.
                // 4 AWG: tap where the run to the column leaves the wall, 12 and 3 at the stub. 6 AWG as above.
                Arguments.of(
                        "hall-steel",
                        List.of(
                                "3/0 AWG  31.00 ft  16.06 lb",
                                "4 AWG    15.00 ft   1.93 lb",
                                "6 AWG    24.50 ft   1.98 lb")),
                // Bus to column 12 + 3, over the joint 4, beams down to the two entries 20 and 21, 3 ft at eight ends;
                // jumpers 4 and 6. The footing tied to the east frame takes nothing.
                Arguments.of("hall-joint", List.of("3/0 AWG  94.00 ft  48.70 lb", "all      94.00 ft  48.70 lb")),
                // Taped: 23.5 + 36.25 to the water, 52.75 + 8.5 to the rods; 2 ft at the service and three electrodes.
                Arguments.of("pump-house", List.of("2 AWG    63.75 ft  13.06 lb", "6 AWG    65.25 ft   5.29 lb")),
                // From the lug up 4 and 6 north to the fork; 2 west and 8 down to the footing; 34 east, 14 north, 8
                // down to
                // the pipe 4 ft in; 1 ft at three ends.
                Arguments.of("kiosk", List.of("8 AWG   79.00 ft  4.03 lb")),
                // 2/0: up 4.3, 18 along the wall, down 2.5 to the main; from the main at the corner up 2.5, 2 + 6.5,
                // down 5.2 to the pile; 1 m at four ends. 6 AWG: tap above the service, 2 + 8, down 5.3, 1 m.
                Arguments.of("workshop-metric", List.of("2/0 AWG  45.00 m  27.52 kg", "6 AWG    16.30 m   1.96 kg")));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theCopperIsThatWorkedOutByHand(String sample, List<String> lines) {
        assertThat(Run.of("route", Run.sample(sample)).out()).contains(lines);
    }
}
