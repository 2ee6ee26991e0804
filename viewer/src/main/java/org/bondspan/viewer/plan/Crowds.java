package org.bondspan.viewer.plan;

import java.util.List;
import java.util.Set;
import org.bondspan.sheet.plan.Note;

/**
 * The conductors of a view that are too short to be told from the symbols at their ends.
 *
 * @param all where so many lie together that one note has to stand for them
 * @param apart ids of those that lie so far from others that there is room for their own words
 */
record Crowds(List<Crowd> all, Set<String> apart) {
    /** A conductor shorter than this, in points, cannot be told from the symbols at its ends. */
    static final double SHORTEST = 20;

    static final Crowds NONE = new Crowds(List.of(), Set.of());

    Crowds {
        all = List.copyOf(all);
        apart = Set.copyOf(apart);
    }

    /** Whether the note of a crowd stands for that one. */
    boolean standFor(Note note) {
        return all.stream().anyMatch(crowd -> crowd.standsFor(note));
    }

    /**
     * A note as it is to be placed: a conductor that cannot be told from the symbols at its ends is no line that words
     * could stand beside, but a place.
     */
    Note asPlaced(Note note) {
        return note.kind() == Note.Kind.CONDUCTOR && apart.contains(note.id())
                ? new Note(
                        note.id(),
                        note.layer(),
                        note.kind(),
                        note.lines(),
                        note.anchors().subList(0, 1))
                : note;
    }
}
