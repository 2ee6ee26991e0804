package org.bondspan.network;

/** What an edge of the network stands for. */
enum EdgeKind {
    /** New copper on an open floor. */
    FLOOR,
    /** New copper along a copper line. */
    LINE,
    /** New copper up or down at one place. */
    VERTICAL,
    /** New copper landed on a frame, pipe or ring: its make-up. */
    LANDING,
    /** From one face of a wall to the other, at one place. */
    CROSSING,
    /** An installed conductor: no new copper. */
    INSTALLED
}
