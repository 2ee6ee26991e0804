package org.bondspan.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bondspan.code.Rule;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Excluded;
import org.bondspan.layout.ExclusionCost;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Link;
import org.bondspan.layout.Objective;
import org.bondspan.layout.Protection;
import org.bondspan.report.document.Document;
import org.bondspan.report.document.Part;
import org.bondspan.sheet.PlanFigure;
import org.bondspan.sheet.SheetContent;
import org.bondspan.sheet.Verdict;
import org.bondspan.sheet.table.Schedule;
import org.bondspan.site.Evidence;
import org.bondspan.site.Level;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** The report of a routed site, for the one who reviews it: what, where, how each size was found, what was left out. */
public final class RouteDocument {
    private final SheetContent content;
    private final Layout layout;
    private final LengthUnit unit;
    private final Places places;
    private final List<ExclusionCost> costs;
    private final TakeOff takeOff;
    private final List<Part> parts = new ArrayList<>();

    private RouteDocument(SheetContent content, List<ExclusionCost> costs, TakeOff takeOff) {
        this.content = content;
        this.layout = content.layout();
        this.unit = layout.lengthUnit();
        this.places = new Places(unit);
        this.costs = costs;
        this.takeOff = takeOff;
    }

    /** The report; {@code costs} says what each path that may not carry costs in copper. */
    public static Document of(SheetContent content, List<ExclusionCost> costs, TakeOff takeOff) {
        RouteDocument report = new RouteDocument(content, costs, takeOff);
        report.write();
        return new Document(
                content.site().name() + ": grounding electrode interconnection",
                report.layout.codeEdition().describe(content.site().adoption()),
                report.parts);
    }

    private void write() {
        parts.add(new Part.Verdict(Verdict.of(layout, "Findings")));
        if (!content.site().note().isEmpty()) {
            parts.add(new Part.Paragraph(content.site().note()));
        }
        table(AnswerTables.sizes(layout));
        conductors();
        for (Level level : content.site().levels()) {
            heading("Plan, level " + level.id());
            parts.add(new Part.Figure(PlanFigure.of(content, level)));
        }
        sizes();
        links();
        table(AnswerTables.joints(layout));
        things();
        excluded();
        new TakeOffTables(takeOff).list().forEach(this::table);
        findings();
        closing();
    }

    private void conductors() {
        List<List<String>> rows = new ArrayList<>();
        for (Conductor conductor : layout.conductors()) {
            String role = SharedSections.words(conductor.role().label());
            rows.add(List.of(
                    conductor.id(),
                    conductor.size().label(),
                    conductor.protection() == Protection.RACEWAY ? role + ", in raceway" : role,
                    places.of(conductor.from()) + " to " + places.of(conductor.to()) + ". Run: "
                            + places.of(conductor.line()),
                    number(conductor.length().plan()),
                    number(conductor.length().vertical()),
                    number(conductor.length().makeUp().plus(conductor.length().jumper())),
                    number(conductor.length().total())));
        }
        table(
                "Conductors, lengths in " + unit.symbol(),
                List.of(
                        "id",
                        "size",
                        "~role",
                        "~from and to; level (east, north, height)",
                        ">plan",
                        ">vertical",
                        ">make-up, jumper",
                        ">total"),
                rows);
    }

    private void sizes() {
        List<List<String>> rows = layout.conductors().stream()
                .map(conductor -> List.of(
                        conductor.id(),
                        conductor.size().label(),
                        conductor.why(),
                        String.join(", ", conductor.serves()),
                        String.join(", ", conductor.basis())))
                .toList();
        table("How each size was found", List.of("id", "size", "~why", "~serves", "~sections"), rows);
        table(AnswerTables.services(layout.services()));
        TreeSet<String> cited = new TreeSet<>();
        layout.conductors().forEach(conductor -> cited.addAll(conductor.basis()));
        layout.electrodes().forEach(state -> cited.addAll(state.basis()));
        layout.bonds().forEach(state -> cited.addAll(state.basis()));
        layout.excluded().forEach(path -> cited.addAll(path.basis()));
        layout.findings().forEach(finding -> cited.add(finding.rule()));
        table(
                "Sections applied, in our own words",
                List.of("section", "~says"),
                Stream.of(Rule.values())
                        .filter(rule -> cited.contains(rule.section()))
                        .map(rule -> List.of(
                                rule.section(),
                                rule.says()
                                        + rule.findEditionNote(layout.codeEdition())
                                                .map(note -> ". " + note)
                                                .orElse("")))
                        .toList());
    }

    private void links() {
        List<List<String>> rows = new ArrayList<>();
        for (Link link : layout.links()) {
            rows.add(List.of(
                    link.path(),
                    SharedSections.words(link.medium()),
                    places.of(link.from()) + " to " + places.of(link.to()),
                    number(link.length()),
                    String.join(", ", link.basis())));
        }
        table(
                "Carries without new copper, lengths in " + unit.symbol(),
                List.of("path", "~medium", "~from and to", ">along it", "~sections"),
                rows);
    }

    private void things() {
        table(
                "Electrodes, frames and piping",
                List.of("id", "~type", "~state", "size", "~why, and by which way", "~sections"),
                Thing.list(layout.electrodes(), layout.bonds()).stream()
                        .map(thing -> List.of(
                                thing.id(),
                                thing.what(),
                                SharedSections.words(thing.state().label()),
                                thing.need(),
                                thing.reason() + (thing.way().isEmpty() ? "" : " By way of " + thing.way() + "."),
                                thing.rules()))
                        .toList());
    }

    private void excluded() {
        List<List<String>> rows = new ArrayList<>();
        for (Excluded path : layout.excluded()) {
            rows.add(List.of(
                    path.path(),
                    SharedSections.words(path.medium()),
                    path.reason(),
                    costs.stream()
                            .filter(cost -> cost.path().equals(path.path()))
                            .findFirst()
                            .map(this::cost)
                            .orElse("-"),
                    String.join(", ", path.basis())));
        }
        table(
                "What may not carry, and what that costs in copper",
                List.of("path", "~medium", "~why not", "~would save, if it were lawful", "~sections"),
                rows);
        if (!rows.isEmpty()) {
            boolean outOfTime = costs.stream().anyMatch(cost -> cost.outcome() == ExclusionCost.Outcome.NOT_COMPUTED);
            parts.add(new Part.Paragraph(
                    "What an exclusion costs was found by routing the site again as if that path alone"
                            + " carried. It is shown to explain the answer; to use such a path is a violation."
                            + (outOfTime ? " Not computed: the limits of the search left no time for a proof." : "")));
        }
    }

    private String cost(ExclusionCost cost) {
        Optional<Copper> now = layout.copper();
        if (cost.copper().isEmpty()) {
            return cost.outcome() == ExclusionCost.Outcome.NOT_COMPUTED ? "not computed" : "impossible even so";
        }
        Copper supposed = cost.copper().get();
        if (now.isEmpty()) {
            return "would be possible with " + Numbers.print(supposed.weight(), unit);
        }
        if (supposed.weight().compareTo(now.get().weight()) >= 0) {
            return "nothing";
        }
        return Numbers.print(
                        now.get().weight().in(unit).subtract(supposed.weight().in(unit))) + " "
                + unit.weightSymbol() + ": " + Numbers.print(supposed.weight(), unit) + " in place of "
                + Numbers.print(now.get().weight(), unit);
    }

    private void findings() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < layout.findings().size(); i++) {
            Finding finding = layout.findings().get(i);
            rows.add(List.of(
                    String.valueOf(i + 1),
                    finding.severity().label(),
                    finding.rule(),
                    finding.subject(),
                    finding.message()));
        }
        table("Findings, numbered as on the plan", List.of("no.", "severity", "rule", "~subject", "~message"), rows);
    }

    private void closing() {
        table(
                "Assumed, not verified",
                List.of("~what the site file marks as assumed"),
                layout.assumed().stream().map(Evidence::of).map(List::of).toList());
        table(
                "Not checked",
                List.of("~what one site file cannot tell"),
                layout.notChecked().stream().map(List::of).toList());
        table(
                "Cautions",
                List.of("~of every answer"),
                layout.cautions().stream().map(List::of).toList());
        table(
                "Input and program",
                List.of("~what", "~value"),
                List.of(
                        List.of("SHA-256 of the site file", content.digest()),
                        List.of("program", content.program()),
                        List.of(
                                "objective",
                                layout.objective() == Objective.COST
                                        ? "least installed cost at the prices given"
                                        : "least weight of new copper"),
                        List.of("copper weights", "ASTM B8, Class B, bare")));
    }

    private void table(String heading, List<String> headings, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            heading(heading);
            parts.add(new Part.Table(new Schedule("", headings, rows)));
        }
    }

    private void table(Schedule schedule) {
        table(schedule.title(), schedule.headings(), schedule.rows());
    }

    private void heading(String words) {
        parts.add(new Part.Heading(words));
    }

    private String number(Length length) {
        return Numbers.print(length.in(unit));
    }
}
