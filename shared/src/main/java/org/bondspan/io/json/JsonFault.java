package org.bondspan.io.json;

/** A text is not JSON: where, why, and a way out. */
public final class JsonFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final String reason;
    private final String advice;

    JsonFault(Spot spot, String reason, String advice) {
        super(reason);
        this.line = spot.line();
        this.reason = reason;
        this.advice = advice;
    }

    public String reason() {
        return reason;
    }

    public int line() {
        return line;
    }

    public String advice() {
        return advice;
    }
}
