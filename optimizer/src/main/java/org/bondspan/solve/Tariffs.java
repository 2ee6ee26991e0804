package org.bondspan.solve;

import java.util.Arrays;
import java.util.List;

/**
 * Weights per unit by rank, and for each rank needed the rank that is best bought: of the allowed ranks at least as
 * large the one of least weight, the smallest of several. So what is paid never falls when the need rises.
 */
final class Tariffs {

    private final int ranks;
    private final long[][] weight;
    private final int[][] bought;

    Tariffs(int ranks, List<long[]> tariffs) {
        this.ranks = ranks;
        weight = tariffs.toArray(long[][]::new);
        bought = new int[weight.length][];
        for (int i = 0; i < weight.length; i++) {
            bought[i] = bestRanks(weight[i]);
        }
    }

    private static int[] bestRanks(long[] weight) {
        int[] best = new int[weight.length];
        int cheapest = -1;
        for (int rank = weight.length - 1; rank >= 0; rank--) {
            if (weight[rank] >= 0 && (cheapest < 0 || weight[rank] <= weight[cheapest])) {
                cheapest = rank;
            }
            best[rank] = cheapest;
        }
        return best;
    }

    /** Rank bought for a need; -1 when no rank that large is allowed. */
    int bought(int tariff, int need) {
        return bought[tariff][need];
    }

    /** Weight of a unit at the rank bought for a need; the need can be met. */
    long perUnit(int tariff, int need) {
        return weight[tariff][bought[tariff][need]];
    }

    /** What a stretch costs for a need that can be met. */
    Cost cost(long length, int tariff, int need) {
        long perUnit = perUnit(tariff, need);
        return perUnit == 0 ? Cost.NOTHING : Cost.of(Math.multiplyExact(perUnit, length), length, 0);
    }

    /** Whether a stretch costs nothing at every need. */
    boolean isFree(long length, int tariff) {
        return bought(tariff, ranks - 1) >= 0 && (length == 0 || perUnit(tariff, ranks - 1) == 0);
    }

    /** Largest weight of a unit at any rank. */
    long most(int tariff) {
        long most = 0;
        for (long perUnit : weight[tariff]) {
            most = Math.max(most, perUnit);
        }
        return most;
    }

    /** Least weight of a unit that is not free, of any tariff at any rank; 1 where all is free. */
    long leastUnit() {
        return Arrays.stream(weight)
                .flatMapToLong(Arrays::stream)
                .filter(perUnit -> perUnit > 0)
                .min()
                .orElse(1);
    }
}
