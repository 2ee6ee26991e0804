package org.bondspan.solve;

/**
 * Which speed-ups the search uses. None of them changes what it finds.
 *
 * @param reduction shrink the graph first
 * @param division search parts by themselves that meet at single nodes
 * @param separators discard states behind a separator
 * @param bounds discard states that cost more than a known tree
 */
record Shortcuts(boolean reduction, boolean division, boolean separators, boolean bounds) {

    static final Shortcuts ALL = new Shortcuts(true, true, true, true);
    static final Shortcuts NONE = new Shortcuts(false, false, false, false);
}
