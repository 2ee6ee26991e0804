package org.bondspan.network;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.solve.RoutingProblem;
import org.bondspan.units.WireSize;

/** Weight per unit of length by size, for every combination of free and forbidden sizes that occurs. */
final class Tariffs {
    private final RoutingProblem.Builder problem;
    private final List<WireSize> sizes;
    private final Map<Key, Integer> known = new HashMap<>();

    private record Key(Optional<WireSize> freeUpTo, Optional<WireSize> largest) {}

    Tariffs(RoutingProblem.Builder problem, List<WireSize> sizes) {
        this.problem = problem;
        this.sizes = sizes;
    }

    /**
     * The tariff of a stretch.
     *
     * @param freeUpTo sizes up to this need no new copper
     * @param largest sizes above this may not pass
     */
    int of(Optional<WireSize> freeUpTo, Optional<WireSize> largest) {
        return known.computeIfAbsent(new Key(freeUpTo, largest), key -> problem.addTariff(weights(key)));
    }

    private long[] weights(Key key) {
        return sizes.stream().mapToLong(size -> weight(size, key)).toArray();
    }

    private static long weight(WireSize size, Key key) {
        if (key.largest().map(most -> !most.isAtLeast(size)).orElse(false)) {
            return RoutingProblem.FORBIDDEN;
        }
        boolean free = key.freeUpTo().map(most -> most.isAtLeast(size)).orElse(false);
        return free ? 0 : size.tenthPoundsPerThousandFeet();
    }
}
