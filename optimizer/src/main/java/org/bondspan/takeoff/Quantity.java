package org.bondspan.takeoff;

import org.bondspan.units.Length;

/**
 * How much of something: a length, or a number of pieces.
 *
 * @param net as it runs
 * @param makeUp added at its ends
 * @param waste added to what is bought
 * @param pieces 0 for a length
 */
public record Quantity(Length net, Length makeUp, Length waste, int pieces) {
    static Quantity ofPieces(int pieces) {
        return new Quantity(Length.ZERO, Length.ZERO, Length.ZERO, pieces);
    }

    /** What is installed. */
    public Length measured() {
        return net.plus(makeUp);
    }

    /** What is bought. */
    public Length purchase() {
        return measured().plus(waste);
    }

    public boolean isLength() {
        return pieces == 0;
    }
}
