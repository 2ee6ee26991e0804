package org.bondspan.review;

import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;

/**
 * Something unlawful in a proposal. Whether it is a violation depends on whether a pair of a service and something to
 * be connected relies on it.
 *
 * @param subject id of the conductor, path or electrode
 * @param message what was found and what would be needed
 * @param remedy how to mend it, in one sentence
 */
record Offence(CheckedRule check, String subject, String message, String remedy) {
    Finding asViolation() {
        return finding(Severity.VIOLATION, message);
    }

    Finding asNote() {
        return finding(Severity.NOTE, message + " Nothing relies on it.");
    }

    Finding asCaution() {
        return finding(Severity.CAUTION, message);
    }

    private Finding finding(Severity severity, String text) {
        return new Finding(check.rule().section(), severity, subject, text + " " + remedy);
    }
}
