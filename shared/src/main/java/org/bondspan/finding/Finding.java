package org.bondspan.finding;

import java.util.Collection;

/**
 * Something the user is told about a site or a route.
 *
 * @param rule the section as the rule table writes it, in every edition, e.g. {@code "250.53(D)(2)"}
 * @param subject the id of what it is about; the site's name where it is about the whole
 * @param message what was found, what is needed, in one or two sentences
 */
public record Finding(String rule, Severity severity, String subject, String message) {
    public static boolean anyViolation(Collection<Finding> findings) {
        return countViolations(findings) > 0;
    }

    public static long countViolations(Collection<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.VIOLATION)
                .count();
    }
}
