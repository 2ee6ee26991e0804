package org.bondspan.solve;

/** What a search for the least tree ends with. */
public sealed interface Outcome {

    /** A tree that is proven least. */
    record Least(Tree tree) implements Outcome {}

    /**
     * The best tree found when the search ended before its proof.
     *
     * @param lowerBoundWeight proven: no tree weighs less
     * @param why what ended the search
     */
    record BestFound(Tree tree, long lowerBoundWeight, Ending why) implements Outcome {}

    /** Proven: no tree connects every terminal at the ranks needed. */
    record Impossible() implements Outcome {}

    /** No tree was found, though none was proven impossible. */
    record NotFound(Ending why) implements Outcome {}

    /** What ended a search before its proof. */
    enum Ending {
        /** The deadline, or a stop. */
        TIME,
        /** The tables of the exact search would not have fit in memory. */
        MEMORY,
        /** There are too many terminals for the exact search. */
        TERMINALS
    }
}
