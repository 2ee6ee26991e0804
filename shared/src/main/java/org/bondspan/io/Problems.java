package org.bondspan.io;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bondspan.io.json.Spot;

/** The problems of one file as they are found, and in file order at the end. */
final class Problems {
    private record Found(Spot spot, Problem problem) {}

    private final String file;
    private final List<Found> found = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    void report(Spot spot, String field, String message, String advice) {
        found.add(new Found(spot, new Problem(file, spot.line(), field, message, advice)));
    }

    boolean isAny() {
        return !found.isEmpty();
    }

    /** Ends reading when anything was found. */
    void throwIfAny() {
        if (!found.isEmpty()) {
            throw exception();
        }
    }

    InputException exception() {
        return new InputException(found.stream()
                .sorted(Comparator.comparing(Found::spot))
                .map(Found::problem)
                .distinct()
                .toList());
    }
}
