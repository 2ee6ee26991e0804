package org.bondspan.network;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;
import org.bondspan.code.Rule;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Status;
import org.bondspan.site.Site;
import org.bondspan.solve.Outcome;
import org.bondspan.units.Weight;

/**
 * How good an answer is known to be.
 *
 * @param excess grains that it weighs at most beyond the least; 0 where it is proven least
 * @param why what ended the search before its proof
 */
record Proof(Status status, BigInteger excess, Optional<Outcome.Ending> why) {
    static final Proof LEAST = new Proof(Status.LEAST, BigInteger.ZERO, Optional.empty());
    static final Proof IMPOSSIBLE = new Proof(Status.IMPOSSIBLE, BigInteger.ZERO, Optional.empty());

    /** Of an answer without a full proof; where its weight is the bound it is least all the same. */
    static Proof of(Outcome.BestFound best, RouteProblem problem) {
        BigInteger excess = BigInteger.valueOf(best.tree().weight() - best.lowerBoundWeight())
                .multiply(BigInteger.valueOf(problem.lengthUnit()));
        return excess.signum() <= 0
                ? new Proof(Status.LEAST, BigInteger.ZERO, Optional.of(best.why()))
                : new Proof(Status.BEST_FOUND, excess, Optional.of(best.why()));
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
    Optional<Finding> findNote(Site site) {
        return why.map(ending -> new Finding(
                Rule.GEOMETRY.section(),
                Severity.NOTE,
                site.services().get(0).id(),
                reason(ending)
                        + (status == Status.LEAST
                                ? " No tie weighs less; among equally heavy ones there may be a shorter one."
                                : " The answer is the best found.")));
    }

    private static String reason(Outcome.Ending ending) {
        return switch (ending) {
            case TIME -> "The search was ended before its proof.";
            case MEMORY -> "A full proof would have taken more memory than there is.";
            case TERMINALS -> "There is too much to connect for a full proof.";
        };
    }
}
