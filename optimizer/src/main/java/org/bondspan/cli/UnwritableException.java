package org.bondspan.cli;

import java.io.IOException;

/** Standard output takes no more, for another reason than a reader that has gone away. */
final class UnwritableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnwritableException(IOException cause) {
        super(String.valueOf(cause.getMessage()), cause);
    }
}
