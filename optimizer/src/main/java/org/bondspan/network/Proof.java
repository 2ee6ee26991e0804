package org.bondspan.network;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;
import org.bondspan.code.Rule;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Status;
import org.bondspan.solve.Outcome;
import org.bondspan.units.Weight;

/**
 * How good an answer is known to be.
 *
 * @param excess grains that it weighs at most beyond the least; 0 where it is proven least
 * @param why what ended the search before its proof, and what would help
 */
record Proof(Status status, BigInteger excess, Optional<String> why) {
    static final Proof LEAST = new Proof(Status.LEAST, BigInteger.ZERO, Optional.empty());
    static final Proof IMPOSSIBLE = new Proof(Status.IMPOSSIBLE, BigInteger.ZERO, Optional.empty());

    /** Of an answer without a full proof; where its weight is the bound it is least all the same. */
    static Proof of(Outcome.BestFound best, RouteProblem problem, SearchLimits limits) {
        BigInteger excess = BigInteger.valueOf(best.tree().weight() - best.lowerBoundWeight())
                .multiply(BigInteger.valueOf(problem.lengthUnit()));
        return excess.signum() <= 0
                ? new Proof(Status.LEAST, BigInteger.ZERO, Optional.of(reason(best.why(), limits)))
                : new Proof(Status.BEST_FOUND, excess, Optional.of(reason(best.why(), limits)));
    }

    /** Nothing lawful weighs less. Jumpers around breaks are part of every answer, so they are in the bound too. */
    Weight bound(Weight found) {
        return new Weight(found.grains().subtract(excess).max(BigInteger.ZERO));
    }

    /** What an answer weighs at most beyond the least, in percent of the bound, rounded up to 0.01. */
    BigDecimal gapPercent(Weight found) {
        Weight bound = bound(found);
        if (excess.signum() == 0 || bound.isZero()) {
            return excess.signum() == 0 ? BigDecimal.ZERO : BigDecimal.valueOf(100);
        }
        return new BigDecimal(excess).movePointRight(2).divide(new BigDecimal(bound.grains()), 2, RoundingMode.CEILING);
    }

    /** Why there is no full proof. */
    Optional<Finding> findNote() {
        return why.map(reason -> note(
                status == Status.LEAST
                        ? reason + " No tie weighs less; among equally heavy ones there may be a shorter one."
                        : reason));
    }

    static Finding note(String reason) {
        return new Finding(Rule.PROOF.section(), Severity.NOTE, "route", reason);
    }

    private static String reason(Outcome.Ending ending, SearchLimits limits) {
        return switch (ending) {
            case TIME ->
                limits.stop().getAsBoolean()
                        ? "The search was stopped before its proof; with more time it may prove more or find better."
                        : "The time limit ended the search before its proof; a longer one may prove more or find better.";
            case MEMORY -> "The proof takes more memory than Java may use; more of it (-Xmx) may help.";
            case TERMINALS ->
                limits.deadline().isPresent()
                        ? "Too many things to connect for a full proof, whatever the memory; more time may find better."
                        : "Too many things to connect for a full proof; in a time limit the search may find better.";
        };
    }
}
