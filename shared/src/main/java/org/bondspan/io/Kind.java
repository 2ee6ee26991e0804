package org.bondspan.io;

/** What an id of a site file stands for. */
enum Kind {
    LEVEL("a level"),
    CLOSED_AREA("a closed area"),
    RISER("a riser"),
    SERVICE("a service"),
    WATER_PIPE_ELECTRODE("a water-pipe electrode"),
    RING_ELECTRODE("a ring electrode"),
    OTHER_ELECTRODE("an electrode of another type"),
    FRAME("a structural frame"),
    OTHER_PATH("a path of another medium"),
    BUSBAR("a busbar"),
    /** Its type or medium could not be read. */
    UNCLEAR("unclear");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    /** With its article: {@code "a level"}. */
    String words() {
        return words;
    }

    boolean fits(Kind wanted) {
        return this == wanted || this == UNCLEAR;
    }
}
