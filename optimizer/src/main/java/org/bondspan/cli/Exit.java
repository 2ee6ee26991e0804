package org.bondspan.cli;

import java.util.List;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;

/** Exit codes. */
final class Exit {
    /** Done, nothing to mend. */
    static final int CLEAN = 0;

    /** Done, but impossible, or a violation remains. */
    static final int FOUND = 1;

    /** Bad input or usage; nothing was answered. */
    static final int BAD_INPUT = 2;

    /** Bondspan itself failed. */
    static final int FAILED = 70;

    private Exit() {}

    /** Of an answer. */
    static int of(Layout layout) {
        return layout.status() == Status.IMPOSSIBLE ? FOUND : of(layout.findings());
    }

    static int of(List<Finding> findings) {
        return Finding.anyViolation(findings) ? FOUND : CLEAN;
    }
}
