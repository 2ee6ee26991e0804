package org.bondspan.review;

import java.util.List;
import java.util.Objects;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.Proposal;
import org.bondspan.site.Site;

/** A review, as texts short enough to write down what is expected: {@code 250.66 C1}. */
record Judged(Review review) {
    static Judged of(Site site, Proposal proposal) {
        return new Judged(new Reviewer(site).review(proposal));
    }

    static Judged of(String siteFile, String draft) {
        Site site = SiteReader.parse(siteFile, "test.site.json");
        return of(site, Draft.of(site, draft));
    }

    List<String> violations() {
        return print(Severity.VIOLATION);
    }

    List<String> cautions() {
        return print(Severity.CAUTION);
    }

    List<String> notes() {
        return print(Severity.NOTE);
    }

    private List<String> print(Severity severity) {
        return review.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .map(finding -> finding.rule() + " " + finding.subject())
                .toList();
    }

    String message(String rule) {
        return review.findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::message)
                .findFirst()
                .orElseThrow();
    }

    /** {@code 3/0 AWG from S to W}, or {@code nothing}. */
    String need(String conductor) {
        JudgedConductor judged = review.conductors().stream()
                .filter(candidate -> Objects.equals(candidate.id(), conductor))
                .findFirst()
                .orElseThrow();
        return judged.needed()
                .map(size -> size.label() + " from " + judged.neededFor())
                .orElse("nothing");
    }

    /** {@code C1 > R1 > C2, thinnest C2}. */
    String way(String service, String thing) {
        JudgedWay way = review.ways().stream()
                .filter(candidate ->
                        candidate.service().equals(service) && candidate.thing().equals(thing))
                .findFirst()
                .orElseThrow();
        return String.join(" > ", way.passes()) + ", thinnest " + way.thinnest().orElse("none");
    }
}
