package org.bondspan.solve;

/** Refuses a problem whose numbers do not fit: ranks that do not exist, or sums that could overflow. */
final class SizeCheck {

    /** No single stretch and no chain of stretches, in weight or in extent, is larger. */
    static final long MOST_OF_A_STRETCH = 1L << 60;

    private final RoutingProblem problem;

    SizeCheck(RoutingProblem problem) {
        this.problem = problem;
    }

    void run() {
        checkNeeds();
        try {
            if (!isTotalSmall()) {
                checkWays();
            }
        } catch (ArithmeticException overflow) {
            throw (ArithmeticException) tooLarge().initCause(overflow);
        }
    }

    private static ArithmeticException tooLarge() {
        return new ArithmeticException(
                "the weights or lengths of the problem are too large to be added in 64 bits; use coarser units");
    }

    private void checkNeeds() {
        int terminals = problem.terminalCount();
        if (problem.need() instanceof PairNeed pairs && pairs.terminals() != terminals) {
            throw new IllegalArgumentException(
                    "needs of " + pairs.terminals() + " terminals for a problem of " + terminals);
        }
        if (problem.need() instanceof WideSideNeed sides && sides.terminals() != terminals) {
            throw new IllegalArgumentException(
                    "needs of " + sides.terminals() + " terminals for a problem of " + terminals);
        }
        if (problem.need() instanceof SideNeed && terminals > RoutingProblem.MOST_IN_A_LONG) {
            throw new IllegalArgumentException(
                    "sides given as numbers hold " + RoutingProblem.MOST_IN_A_LONG + " terminals, not " + terminals);
        }
        for (int t = 0; t < terminals && terminals > 1; t++) {
            int rank = problem.need().rankAround(t);
            if (rank < 0 || rank >= problem.ranks()) {
                throw new IllegalArgumentException(
                        "need " + rank + " of terminal " + t + " is no rank below " + problem.ranks());
            }
        }
    }

    /** The quick way: everything together, bought at the largest rank as often as there are terminals, is small. */
    private boolean isTotalSmall() {
        double weight = 0;
        double length = 0;
        for (int e = 0; e < problem.edgeCount(); e++) {
            weight += weight(problem.edges(), e);
            length += problem.edges().length(e);
        }
        for (int t = 0; t < problem.terminalCount(); t++) {
            Links ways = problem.attachments(t);
            for (int i = 0; i < ways.size(); i++) {
                weight += weight(ways, i);
                length += ways.length(i);
            }
        }
        weight += (double) problem.tapWeight() * problem.terminalCount();
        double times = 8.0 * (problem.terminalCount() + 1);
        return weight * times < MOST_OF_A_STRETCH && (length + 1) * times * Cost.TAPS < MOST_OF_A_STRETCH;
    }

    /**
     * What the search adds up really.
     *
     * <p>Let L be the most that any landing and a tap cost and D the longest of all shortest ways between two nodes at
     * any rank. A state f(I, v) of {@link SubsetProgramme} costs at most (2|I| - 1) (L + D): a single leaf lands and is
     * sent along one shortest way; and a larger side is joined from two smaller ones at some node, (2|J| - 1) + (2|I -
     * J| - 1), and sent along one more way. A least tree costs no more, and a lower bound no more than that. Of all
     * sums that are compared none has more than three such terms. Ways of least weight are no longer than their weight
     * divided by the least weight of a unit that is not free.
     */
    private void checkWays() {
        double weight = 0;
        double length = 0;
        for (int e = 0; e < problem.edgeCount(); e++) {
            checkStretch(problem.edges(), e);
        }
        for (int t = 0; t < problem.terminalCount(); t++) {
            Links ways = problem.attachments(t);
            for (int i = 0; i < ways.size(); i++) {
                checkStretch(ways, i);
                weight = Math.max(weight, weight(ways, i));
                length = Math.max(length, (double) ways.length(i));
            }
        }
        double longest = new LongestWay(problem).weight();
        weight += problem.tapWeight();
        double states = 2.0 * problem.terminalCount();
        double extent = (longest / problem.tariffs().leastUnit() + length + 1) * Cost.TAPS;
        if (states * (longest + weight) > Long.MAX_VALUE / 3.0 || states * extent > Long.MAX_VALUE / 3.0) {
            throw tooLarge();
        }
    }

    private void checkStretch(Links links, int i) {
        if (weight(links, i) > MOST_OF_A_STRETCH || links.length(i) > MOST_OF_A_STRETCH / Cost.TAPS) {
            throw tooLarge();
        }
    }

    private double weight(Links links, int i) {
        return (double) problem.tariffs().most(links.tariff(i)) * links.length(i);
    }
}
