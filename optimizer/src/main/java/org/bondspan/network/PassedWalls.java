package org.bondspan.network;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Walls that conductors pass, those included that are passed between two joints at one place, by copper without length.
 */
final class PassedWalls {
    private final Map<Stretch, List<String>> more = new HashMap<>();

    private PassedWalls() {}

    static PassedWalls of(List<Stretch> stretches) {
        PassedWalls walls = new PassedWalls();
        for (Stretch stretch : stretches) {
            if (stretch.isNothing() && !stretch.crosses().isEmpty()) {
                findNext(stretch, stretches)
                        .ifPresent(next -> walls.more.merge(next, stretch.crosses(), PassedWalls::joined));
            }
        }
        return walls;
    }

    /** The conductor that goes on from there, else the one that leads there. */
    private static Optional<Stretch> findNext(Stretch stretch, List<Stretch> stretches) {
        Optional<Stretch> onward = stretches.stream()
                .filter(other -> isConductor(other) && other.from() == stretch.to())
                .findFirst();
        return onward.isPresent()
                ? onward
                : stretches.stream()
                        .filter(other -> isConductor(other) && other.to() == stretch.from())
                        .findFirst();
    }

    private static boolean isConductor(Stretch stretch) {
        return !stretch.isCarried() && !stretch.isNothing();
    }

    private static List<String> joined(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    List<String> of(Stretch stretch) {
        return joined(more.getOrDefault(stretch, List.of()), stretch.crosses());
    }
}
