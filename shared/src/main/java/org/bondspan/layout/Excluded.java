package org.bondspan.layout;

import java.util.List;

/** A path, or a part of one, that may not carry, and why. */
public record Excluded(String path, String medium, String reason, List<String> basis) {
    public Excluded {
        basis = List.copyOf(basis);
    }
}
