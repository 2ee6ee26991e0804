package org.bondspan.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A place where stretches meet, with the things that copper without length lands on there. */
final class Meeting {
    private final int place;
    private final List<Stretch> conductors = new ArrayList<>();
    private final List<Stretch> installed = new ArrayList<>();
    private final List<Integer> metals = new ArrayList<>();
    private final List<Integer> hanging = new ArrayList<>();

    Meeting(int place) {
        this.place = place;
    }

    int place() {
        return place;
    }

    /**
     * Puts the largest first: it names what hangs here, and the others tap it. A smaller one would seem to be all that
     * leads to that thing.
     */
    void orderBySize() {
        conductors.sort(
                Comparator.comparing((Stretch stretch) -> stretch.first().size())
                        .reversed());
    }

    /** Conductors with a length that end here, the largest first, then the one toward the first service. */
    List<Stretch> conductors() {
        return conductors;
    }

    /** Installed conductors that end or are tapped here. */
    List<Stretch> installed() {
        return installed;
    }

    /** Metal landed on here without length: at most one. */
    List<Integer> metals() {
        return metals;
    }

    /** Terminals landed on here without length, and a ring that is too small for what goes on here. */
    List<Integer> hanging() {
        return hanging;
    }

    /**
     * Whether an end can still name one more thing landed on: of the metal's link, of an installed or new conductor.
     */
    boolean canName() {
        int namers = installed.isEmpty() ? conductors.size() : installed.size();
        return !metals.isEmpty() || hanging.size() < namers;
    }

    /** Copper joins copper here: three ends or more, or an existing conductor is tapped. */
    boolean isTap() {
        if (!metals.isEmpty()) {
            return false;
        }
        return installed.isEmpty() ? conductors.size() > 1 : !conductors.isEmpty();
    }
}
