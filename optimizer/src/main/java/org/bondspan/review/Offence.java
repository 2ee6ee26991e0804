package org.bondspan.review;

import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.site.CodeEdition;

/**
 * Something wrong in a proposal. Whether it is a violation depends on whether a pair of a service and something to be
 * connected relies on it.
 *
 * @param subject id of the conductor, path or electrode
 * @param message what was found and what would be needed
 * @param remedy how to mend it, in one sentence
 */
record Offence(CheckedRule check, String subject, String message, String remedy) {
    /** As grave as the check can be. */
    Finding asRelied(CodeEdition edition) {
        return finding(check.gravest(), message, edition);
    }

    /** A note, unless the check always calls for a look. */
    Finding asUnrelied(CodeEdition edition) {
        return check.gravest() == Severity.VIOLATION
                ? finding(Severity.NOTE, message + " Nothing relies on it.", edition)
                : asRelied(edition);
    }

    private Finding finding(Severity severity, String text, CodeEdition edition) {
        String note = check.gravest() == Severity.VIOLATION
                ? check.rule()
                        .findEditionNote(edition)
                        .filter(words -> !text.contains(words))
                        .map(words -> " " + words)
                        .orElse("")
                : "";
        return new Finding(check.rule().section(), severity, subject, text + " " + remedy + note);
    }

    /** Whether both say the same of the same thing. */
    boolean isAlike(Offence other) {
        return check == other.check && subject.equals(other.subject);
    }
}
