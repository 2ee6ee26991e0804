package org.bondspan.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Cost;
import org.bondspan.layout.End;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Link;
import org.bondspan.layout.Protection;
import org.bondspan.layout.RunLength;
import org.bondspan.layout.State;
import org.bondspan.layout.Status;
import org.bondspan.sheet.Verdict;
import org.bondspan.site.Position;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.Numbers;

/**
 * The answer of {@code route} as an estimator reads it: what to buy, where it runs, what it connects, and why it is
 * least.
 */
public final class RouteText {
    private final Layout layout;
    private final LengthUnit unit;
    private final Places places;
    private final List<Thing> things;
    private final Optional<Finding> unproven;
    private final Page page;
    private final SharedSections shared;

    private RouteText(Layout layout, Ink ink) {
        this.layout = layout;
        this.unit = layout.lengthUnit();
        this.places = new Places(unit);
        this.things = Thing.list(layout.electrodes(), layout.bonds());
        this.unproven = Verdict.findUnproven(layout);
        this.page = new Page(ink);
        this.shared = new SharedSections(page);
    }

    /** Plain text, ending in a line break. */
    public static String of(Layout layout) {
        return of(layout, Ink.PLAIN);
    }

    public static String of(Layout layout, Ink ink) {
        return new RouteText(layout, ink).text();
    }

    private String text() {
        shared.title(layout.site(), layout.codeEdition(), layout.adoption());
        verdict();
        connected("Cannot be reached", State.UNREACHED);
        layout.cost().ifPresent(cost -> costs(cost));
        page.table("Bare copper", "what to buy includes waste", Table.of(AnswerTables.sizes(layout)));
        conductors();
        links();
        page.table("Joints", Table.of(AnswerTables.joints(layout)));
        shared.services(layout.services());
        connected("Connected", State.BONDED);
        leftOut();
        shared.excluded(layout.excluded());
        shared.findings(layout.findings().stream()
                .filter(finding -> unproven.filter(finding::equals).isEmpty())
                .toList());
        shared.closing(layout.assumed(), layout.notChecked(), layout.cautions());
        return page.text();
    }

    private void verdict() {
        page.line(0, "");
        long violations = Finding.countViolations(layout.findings());
        if (violations > 0 && layout.status() != Status.IMPOSSIBLE) {
            page.item(Tone.BAD, "Violates:", Numbers.count(violations, "violation") + " to mend, see FINDINGS.");
        }
        switch (layout.status()) {
            case LEAST -> least();
            case BEST_FOUND -> {
                page.item(
                        Tone.WARNING,
                        "Best found, not proven least:",
                        amounts() + " At most " + Numbers.print(layout.gapPercent()) + " % above the least possible.");
                unproven.ifPresent(finding -> page.wrapped(2, finding.message()));
            }
            case IMPOSSIBLE ->
                page.item(
                        Tone.BAD,
                        "Impossible:",
                        "the site as drawn gives no lawful way to all that must be connected.");
        }
        if (violations > 0 && layout.status() == Status.IMPOSSIBLE) {
            page.item(Tone.BAD, Numbers.count(violations, "violation"), "to mend, see FINDINGS.");
        }
    }

    /** Least of nothing is no achievement. */
    private void least() {
        if (layout.conductors().isEmpty()) {
            page.item(Tone.WARNING, "No copper:", "nothing is drawn that a conductor would have to connect.");
        } else {
            page.item(
                    Tone.GOOD, layout.cost().isPresent() ? "Least cost, proven:" : "Least copper, proven:", amounts());
        }
    }

    private String amounts() {
        Copper copper = layout.copper().orElseThrow();
        if (layout.cost().isPresent()) {
            Cost cost = layout.cost().get();
            return money(cost, cost.total()) + " (bound " + money(cost, cost.lowerBound()) + "), "
                    + Numbers.print(copper.length(), unit) + ", " + Numbers.print(copper.weight(), unit) + ".";
        }
        String bound = layout.lowerBound()
                .map(weight -> " (bound " + Numbers.print(weight, unit) + ")")
                .orElse("");
        return Numbers.print(copper.length(), unit) + ", " + Numbers.print(copper.weight(), unit) + bound + ".";
    }

    private static String money(Cost cost, Money amount) {
        return Numbers.print(amount, cost.currency());
    }

    private void costs(Cost cost) {
        BothOptima both = new BothOptima(layout, cost);
        Table table = new Table("route", ">copper", ">cost");
        both.rows().forEach(row -> table.add(row, List.of()));
        page.table(both.heading(), table);
        Table parts = new Table("part", ">cost");
        parts.add("material", money(cost, cost.material()));
        parts.add("labor", money(cost, cost.labor()));
        if (!cost.crossings().isZero()) {
            parts.add("wall crossings", money(cost, cost.crossings()));
        }
        if (!cost.rounding().isZero()) {
            parts.add("rounding of rows", money(cost, cost.rounding()));
        }
        parts.add("all", money(cost, cost.total()));
        page.table("Installed cost", "row by row in takeoff", parts);
    }

    private void conductors() {
        Table table = new Table("id", "size", "role", ">plan", ">vertical", ">make-up", ">jumper", ">total");
        for (Conductor conductor : layout.conductors()) {
            table.add(
                    List.of(
                            conductor.id(),
                            conductor.size().label(),
                            SharedSections.words(conductor.role().label()),
                            number(conductor.length().plan()),
                            number(conductor.length().vertical()),
                            number(conductor.length().makeUp()),
                            number(conductor.length().jumper()),
                            number(conductor.length().total())),
                    remarks(conductor));
        }
        page.table("Conductors", "lengths in " + unit.symbol() + "; places are level (east, north, height)", table);
    }

    private List<String> remarks(Conductor conductor) {
        List<String> remarks = new ArrayList<>();
        remarks.add(places.of(conductor.from()) + " -> " + places.of(conductor.to()));
        if (conductor.line().size() > 1) {
            remarks.add("run: " + places.of(conductor.line()));
        } else if (isMakeUpOnly(conductor.length())) {
            remarks.add("run: make-up only");
        }
        if (!conductor.serves().isEmpty()) {
            remarks.add("serves: " + String.join(", ", conductor.serves()));
        }
        if (conductor.protection() == Protection.RACEWAY) {
            remarks.add("in raceway or cable armor, being smaller than 6 AWG");
        }
        remarks.add("why: " + conductor.why() + " [" + String.join(", ", conductor.basis()) + "]");
        return remarks;
    }

    private static boolean isMakeUpOnly(RunLength length) {
        return length.total().equals(length.makeUp()) && !length.makeUp().isZero();
    }

    private void links() {
        Table table = new Table("path", "medium", ">along it", "rule");
        for (Link link : layout.links()) {
            table.add(
                    List.of(
                            link.path(),
                            SharedSections.words(link.medium()),
                            number(link.length()),
                            String.join(", ", link.basis())),
                    List.of(place(link.from(), link.fromPlace()) + " -> " + place(link.to(), link.toPlace())));
        }
        page.table("Carries without new copper", "lengths in " + unit.symbol(), table);
    }

    private String place(End end, Optional<Position> position) {
        String at = position.map(place -> ", " + places.of(place)).orElse("");
        return places.of(end) + at;
    }

    private void connected(String heading, State state) {
        Table table = new Table("id", "what", "copper needed", "rule");
        for (Thing thing : things) {
            if (thing.state() == state) {
                table.add(
                        List.of(thing.id(), thing.what(), thing.need(), thing.rules()),
                        List.of(thing.reason(), thing.way().isEmpty() ? "" : "by way of " + thing.way()));
            }
        }
        page.table(heading, table);
    }

    private void leftOut() {
        Table table = new Table("id", "what", "rule");
        for (Thing thing : things) {
            if (thing.state() == State.NOT_NEEDED || thing.state() == State.NOT_AN_ELECTRODE) {
                table.add(List.of(thing.id(), thing.what(), thing.rules()), List.of(thing.reason()));
            }
        }
        page.table("Left out, and why", table);
    }

    private String number(Length length) {
        return Numbers.print(length.in(unit));
    }
}
