package org.bondspan.report;

/** How text is coloured: not at all, unless the caller knows a terminal that can. */
public interface Ink {
    /** Text for files, pipes and terminals without colour. */
    Ink PLAIN = (tone, text) -> text;

    /** The text in that tone. The text holds no control characters and keeps its visible width. */
    String paint(Tone tone, String text);
}
