package org.bondspan.solve;

/** Refuses a problem whose numbers do not fit: ranks that do not exist, or sums that could overflow. */
final class SizeCheck {

    private final RoutingProblem problem;

    SizeCheck(RoutingProblem problem) {
        this.problem = problem;
    }

    void run() {
        checkNeeds();
        checkSums();
    }

    private void checkNeeds() {
        int terminals = problem.terminalCount();
        if (problem.need() instanceof PairNeed pairs && pairs.terminals() != terminals) {
            throw new IllegalArgumentException(
                    "needs of " + pairs.terminals() + " terminals for a problem of " + terminals);
        }
        for (int t = 0; t < terminals && terminals > 1; t++) {
            int rank = problem.need().rank(1L << t);
            if (rank < 0 || rank >= problem.ranks()) {
                throw new IllegalArgumentException(
                        "need " + rank + " of terminal " + t + " is no rank below " + problem.ranks());
            }
        }
    }

    /**
     * No partial solution of the search costs more than one path through the whole graph and one attachment for each
     * terminal; bounds are compared twofold.
     */
    private void checkSums() {
        try {
            long weight = 0;
            long length = 0;
            for (int e = 0; e < problem.edgeCount(); e++) {
                weight = Math.addExact(weight, weight(problem.edges(), e));
                length = Math.addExact(length, problem.edges().length(e));
            }
            for (int t = 0; t < problem.terminalCount(); t++) {
                Links ways = problem.attachments(t);
                for (int i = 0; i < ways.size(); i++) {
                    weight = Math.addExact(weight, weight(ways, i));
                    length = Math.addExact(length, ways.length(i));
                }
            }
            int times = 8 * (problem.terminalCount() + 1);
            Math.multiplyExact(weight, times);
            Math.multiplyExact(Math.addExact(length, 1), (long) times * Cost.TAPS);
        } catch (ArithmeticException overflow) {
            throw (ArithmeticException)
                    new ArithmeticException("the weights or lengths of the problem are too large to be added"
                                    + " in 64 bits; use coarser units")
                            .initCause(overflow);
        }
    }

    private long weight(Links links, int i) {
        return Math.multiplyExact(problem.tariffs().most(links.tariff(i)), links.length(i));
    }
}
