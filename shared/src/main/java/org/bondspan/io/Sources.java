package org.bondspan.io;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bondspan.io.json.Spot;
import org.bondspan.site.Evidence;

/** Collects where the facts of a file come from. */
final class Sources {
    private record Note(Spot spot, Evidence evidence) {}

    private final List<Note> notes = new ArrayList<>();

    void add(Spot spot, String of, String text) {
        notes.add(new Note(spot, new Evidence(of, text)));
    }

    List<Evidence> inFileOrder() {
        return notes.stream()
                .sorted(Comparator.comparing(Note::spot))
                .map(Note::evidence)
                .toList();
    }
}
