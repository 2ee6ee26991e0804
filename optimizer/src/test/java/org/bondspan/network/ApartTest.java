package org.bondspan.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.io.SiteReader;
import org.bondspan.site.Site;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ApartTest {

    static LongStream seeds() {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, 20) : LongStream.of(only);
    }

    /** The rods stand on both sides of a closed area. */
    private static Network network(SplittableRandom random, String more) {
        List<String> rods = new ArrayList<>();
        for (int rod = 0; rod < 6; rod++) {
            rods.add(
                    "{\"id\": \"R%d\", \"type\": \"rod\", \"rodLength\": 8, \"diameter\": 0.625, \"connections\": [{\"at\": [%d, %d], \"height\": %d}]}"
                            .formatted(
                                    rod,
                                    rod % 2 == 0 ? random.nextInt(11) : 25 + random.nextInt(16),
                                    random.nextInt(31),
                                    random.nextInt(6)));
        }
        Site site = SiteReader.parse("""
                {"format": "bondspan-site/1", "levels": [{"id": "L1", "outline": [[0, 0], [40, 0], [40, 30], [0, 30]],
                  "open": {"height": 9}, "closedAreas": [{"id": "A", "outline": [[10, 5], [25, 5], [25, 22], [10, 22]]}]}],
                 "services": [{"id": "S", "ungrounded": {"material": "copper", "size": "500 kcmil", "sets": 1}, "connections": [{"at": [2, 3], "height": 4}]}],
                 "electrodes": [%s], "paths": [%s]}""".formatted(String.join(", ", rods), more), "test.site.json");
        return NetworkBuilder.build(site, GroundingElectrodeSystem.of(site), MediaThatMayCarry.of(site));
    }

    /** Against the shortest copper there is, and for three ends against every place where they could meet. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverSaysMoreThanCopperTakes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Network network = network(random, "");
        CopperRuns runs = new CopperRuns(network);
        assertThat(runs.apart().isKnown()).isTrue();
        int[] ends = random.ints(3, 0, network.placeCount()).toArray();
        long[] rates = {79, 126, 1 + random.nextInt(500)};
        List<long[]> far = new ArrayList<>();
        for (int end : ends) {
            far.add(runs.distances(end, WireSize.AWG_14, (node, spent) -> true));
        }
        long least = Long.MAX_VALUE;
        for (int node = 0; node < network.placeCount(); node++) {
            long weight = 0;
            for (int i = 0; i < ends.length; i++) {
                assertThat(runs.apart().between(ends[i], node)).isLessThanOrEqualTo(far.get(i)[node]);
                weight += rates[i] * far.get(i)[node];
            }
            least = Math.min(least, weight);
        }
        assertThat(runs.apart().leastWeight(ends, rates, 1))
                .isLessThanOrEqualTo(least)
                .isPositive();
    }

    /** A line across the corner is shorter than the two sides. */
    @Test
    void saysNothingWhereALineIsOblique() {
        Network network = network(
                new SplittableRandom(1),
                "{\"id\": \"P\", \"medium\": \"copper\", \"line\": [[2, 3], [8, 11]], \"height\": 9}");
        Apart apart = new CopperRuns(network).apart();
        assertThat(apart.isKnown()).isFalse();
        assertThat(apart.between(0, network.placeCount() - 1)).isZero();
    }
}
