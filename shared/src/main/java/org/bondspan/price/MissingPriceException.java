package org.bondspan.price;

import java.util.List;

/** A sum was asked for and prices that it takes are not stated. Its message holds one line for each. */
public final class MissingPriceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** @param missing each a field with what is missing of it, as {@link Rates#missing} names them */
    public MissingPriceException(List<String> missing) {
        super(String.join("\n", missing));
    }
}
