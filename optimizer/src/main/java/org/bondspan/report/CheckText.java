package org.bondspan.report;

import java.util.List;
import org.bondspan.finding.Finding;
import org.bondspan.layout.SiteCheck;
import org.bondspan.layout.State;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Level;
import org.bondspan.site.Site;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** The answer of {@code check}: what the site file says and what NFPA 70 makes of it, before anything is routed. */
public final class CheckText {
    private final SiteCheck check;
    private final Site site;
    private final Page page;
    private final SharedSections shared;

    private CheckText(SiteCheck check, Ink ink) {
        this.check = check;
        this.site = check.site();
        this.page = new Page(ink);
        this.shared = new SharedSections(page);
    }

    /** Plain text, ending in a line break. */
    public static String of(SiteCheck check) {
        return of(check, Ink.PLAIN);
    }

    public static String of(SiteCheck check, Ink ink) {
        return new CheckText(check, ink).text();
    }

    private String text() {
        shared.title(site.name(), site.codeEdition(), site.adoption());
        page.wrapped(2, site.note());
        verdict();
        levels();
        shared.services(check.services());
        electrodes();
        bonds();
        page.list("May carry", check.carrying());
        shared.excluded(check.excluded());
        shared.findings(check.findings());
        shared.closing(check.assumed(), check.notChecked(), check.cautions());
        return page.text();
    }

    private void verdict() {
        page.line(0, "");
        long violations = Finding.countViolations(check.findings());
        String connect = check.wanted().isEmpty()
                ? "Nothing is to be connected."
                : "To be connected: " + String.join("; ", check.wanted()) + ".";
        if (violations > 0) {
            page.item(Tone.BAD, Numbers.count(violations, "violation"), "to mend, see FINDINGS. " + connect);
        } else {
            page.item(Tone.GOOD, "No violation.", connect);
        }
    }

    private void levels() {
        LengthUnit unit = site.lengthUnit();
        Table table = new Table("id", ">floor", ">copper over the floor at", "closed areas");
        for (Level level : site.levels()) {
            List<String> closed =
                    level.closedAreas().stream().map(ClosedArea::id).toList();
            table.add(
                    level.id(),
                    Numbers.print(level.floor(), unit),
                    level.openHeight()
                            .map(height -> Numbers.print(height, unit))
                            .orElse("not open"),
                    closed.isEmpty() ? "-" : String.join(", ", closed));
        }
        page.table("Levels", table);
    }

    private void electrodes() {
        Table table = new Table("id", "type", "verdict", "copper needed", "rule");
        for (Thing electrode : Thing.list(check.electrodes(), List.of())) {
            table.add(
                    List.of(
                            electrode.id(),
                            electrode.what(),
                            qualification(electrode.state()),
                            electrode.need(),
                            electrode.rules()),
                    List.of(electrode.reason()));
        }
        page.table("Electrodes", table);
    }

    private void bonds() {
        Table table = new Table("id", "verdict", "copper needed", "rule");
        for (Thing bond : Thing.list(List.of(), check.bonds())) {
            String verdict = bond.state() == State.BONDED ? "to be connected" : "left out";
            table.add(List.of(bond.id(), verdict, bond.need(), bond.rules()), List.of(bond.reason()));
        }
        page.table("Frames and piping", table);
    }

    private static String qualification(State state) {
        return switch (state) {
            case BONDED -> "qualifies";
            case NOT_NEEDED -> "left out";
            case NOT_AN_ELECTRODE -> "no electrode";
            case UNREACHED -> "cannot be reached";
        };
    }
}
