package org.bondspan.report;

/** What a piece of text is, for whoever colours it. */
public enum Tone {
    TITLE,
    GOOD,
    BAD,
    WARNING,
    QUIET
}
