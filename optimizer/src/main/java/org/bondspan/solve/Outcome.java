package org.bondspan.solve;

/** What a search for the least tree ends with. */
public sealed interface Outcome {

    /** A tree that is proven least. */
    record Least(Tree tree) implements Outcome {}

    /** Proven: no tree connects every terminal at the ranks needed. */
    record Impossible() implements Outcome {}
}
