package org.bondspan.units;

import java.util.Arrays;
import java.util.Optional;

/** The unit in which a site states its lengths. Both are exact in nanometres (international foot, 1959: 0.3048 m). */
public enum LengthUnit {
    FOOT("ft", 304_800_000L, "lb"),
    METRE("m", 1_000_000_000L, "kg");

    private final String symbol;
    private final long nanometres;
    private final String weightSymbol;

    LengthUnit(String symbol, long nanometres, String weightSymbol) {
        this.symbol = symbol;
        this.nanometres = nanometres;
        this.weightSymbol = weightSymbol;
    }

    /** {@code "ft"} or {@code "m"}, as site files write it. */
    public String symbol() {
        return symbol;
    }

    /** Nanometres in one unit. */
    public long nanometres() {
        return nanometres;
    }

    /** The weight unit that goes with it: {@code "lb"} with feet, {@code "kg"} with metres. */
    public String weightSymbol() {
        return weightSymbol;
    }

    public static Optional<LengthUnit> find(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }
}
