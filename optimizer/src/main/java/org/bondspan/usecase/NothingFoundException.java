package org.bondspan.usecase;

/** The search ended without a lawful tie, and without a proof that there is none. */
public final class NothingFoundException extends RuntimeException {
    private static final long serialVersionUID = 1;

    NothingFoundException() {
        super("no lawful tie was found, though none was proven impossible. Allow more time, or more ways for copper.");
    }
}
