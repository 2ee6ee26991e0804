package org.bondspan.usecase;

/** A plan so large, in steps so fine, that 64 bits do not hold its weights exactly. */
public final class TooFineException extends RuntimeException {
    private static final long serialVersionUID = 1;

    TooFineException(ArithmeticException overflow) {
        super(
                "the plan spans too far in steps too fine for weights to be compared exactly."
                        + " Give coordinates and measured lengths to 0.01 ft or to the millimetre.",
                overflow);
    }
}
