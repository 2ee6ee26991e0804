package org.bondspan.viewer.state;

import java.util.List;

/**
 * Something the window says until it is closed or outdated.
 *
 * @param title one line
 * @param lines one for each mistake or fact: place, what, a way out
 */
public record Message(Tone tone, String title, List<String> lines) {
    public Message {
        lines = List.copyOf(lines);
    }

    /** Whether something went wrong. */
    public enum Tone {
        NOTICE,
        TROUBLE
    }

    public static Message notice(String title, String... lines) {
        return new Message(Tone.NOTICE, title, List.of(lines));
    }

    public static Message trouble(String title, List<String> lines) {
        return new Message(Tone.TROUBLE, title, lines);
    }
}
