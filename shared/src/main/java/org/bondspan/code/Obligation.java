package org.bondspan.code;

import java.util.List;

/**
 * Something that must be connected: one electrode, one of several that are each enough, a frame or piping.
 *
 * @param members ids of which one is enough; a single id in most cases
 * @param rule the section that demands it
 * @param need the size that it calls for
 * @param landings the ways to connect it; empty when there is none
 */
public record Obligation(Kind kind, List<String> members, Rule rule, Need need, List<Landing> landings) {
    public Obligation {
        members = List.copyOf(members);
        landings = List.copyOf(landings);
    }

    /** What is connected. */
    public enum Kind {
        ELECTRODE,
        FRAME,
        PIPING
    }

    /** Its id, or for one of several the ids joined for reading. */
    public String name() {
        return members.size() == 1 ? members.get(0) : "one of " + String.join(", ", members);
    }
}
