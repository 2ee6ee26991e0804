package org.bondspan.io;

/** What an id of a file stands for. */
enum Kind {
    LEVEL("a level"),
    CLOSED_AREA("a closed area"),
    WALL("a wall"),
    RISER("a riser"),
    SERVICE("a service"),
    WATER_PIPE_ELECTRODE("a water-pipe electrode"),
    RING_ELECTRODE("a ring electrode"),
    OTHER_ELECTRODE("an electrode of another type"),
    FRAME("a structural frame"),
    OTHER_PATH("a path of another medium"),
    BUSBAR("a busbar"),
    /** Where its type does not matter. */
    ELECTRODE("an electrode"),
    /** Where its medium does not matter. */
    PATH("a path"),
    CONDUCTOR("a conductor", Space.CONDUCTORS),
    JOINT("a joint", Space.JOINTS),
    /** Its type or medium could not be read. */
    UNCLEAR("unclear");

    /** Within a space ids differ; those of a proposal may equal those of its site. */
    enum Space {
        SITE("this site"),
        CONDUCTORS("this proposal"),
        JOINTS("this proposal");

        private final String words;

        Space(String words) {
            this.words = words;
        }

        /** {@code "this site"}. */
        String words() {
            return words;
        }
    }

    private final String words;
    private final Space space;

    Kind(String words) {
        this(words, Space.SITE);
    }

    Kind(String words, Space space) {
        this.words = words;
        this.space = space;
    }

    Space space() {
        return space;
    }

    /** With its article: {@code "a level"}. */
    String words() {
        return words;
    }

    /** {@code "the level"}. */
    String the() {
        return "the " + words.substring(words.indexOf(' ') + 1);
    }

    boolean fits(Kind wanted) {
        return this == wanted || this == UNCLEAR;
    }
}
