package org.bondspan.io;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.io.json.Node;
import org.bondspan.layout.BondState;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Cost;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.Excluded;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Link;
import org.bondspan.layout.Objective;
import org.bondspan.layout.Piece;
import org.bondspan.layout.Protection;
import org.bondspan.layout.Role;
import org.bondspan.layout.RunLength;
import org.bondspan.layout.ServiceState;
import org.bondspan.layout.SizeTotal;
import org.bondspan.layout.State;
import org.bondspan.layout.Status;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Evidence;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;

/**
 * Reads results of a site. Numbers are those of the file, rounded to 0.01. Either the whole file is in order, agrees
 * with itself, is of that site and names what it has, or an {@link InputException} names each mistake. Numbers are
 * compared only once all of them could be read.
 */
public final class LayoutReader {
    private static final String RESULT = "Write the result as the program gives it";

    private final LengthUnit unit;
    private final EndReader ends;
    private final ResultSums sums;
    private final List<Runnable> comparisons = new ArrayList<>();
    private boolean isCost;

    private LayoutReader(Site site, LengthUnit unit) {
        this.unit = unit;
        this.ends = new EndReader(site);
        this.sums = new ResultSums(site, unit);
    }

    /** Throws {@link InputException}. */
    public static Layout read(Path file, Site site) {
        return parse(InputFile.text(file), file.toString(), site);
    }

    /** The text of a result for that site; its name is for messages. Throws {@link InputException}. */
    public static Layout parse(String text, String fileName, Site site) {
        Problems problems = new Problems(fileName);
        Node.Struct root = FileRoot.parse(text, fileName, problems, List.of(LayoutWriter.FORMAT), "result");
        ResultSite.refuseOther(root, fileName, site);
        Scope scope = Scope.about(site, "result", root, problems);
        LayoutReader reader = new LayoutReader(site, scope.values().unit());
        Layout layout = reader.layout(Fields.ofFile(root, scope));
        scope.ids().check(problems);
        problems.throwIfAny();
        reader.comparisons.forEach(Runnable::run);
        problems.throwIfAny();
        return layout;
    }

    private Layout layout(Fields fields) {
        FileRoot.read(fields, LayoutWriter.FORMAT);
        Objective objective =
                fields.requireWord("objective", Objective.class, RESULT).orElse(Objective.COPPER);
        isCost = objective == Objective.COST;
        fields.require("site", RESULT);
        fields.require("conductors", RESULT);
        Layout layout = new Layout(
                fields.findText("site").orElse(""),
                fields.findText("adoption").orElse(""),
                edition(fields),
                unit,
                fields.requireWord("status", Status.class, RESULT).orElse(Status.IMPOSSIBLE),
                present(fields, "copper").flatMap(name -> fields.findObject(name, "copper", this::copper)),
                fields.each("sizes", "size", this::size),
                present(fields, "lowerBound").filter(name -> !isCost).map(name -> weight(fields, name)),
                fields.findMeasure("gapPercent").orElse(BigDecimal.ZERO),
                fields.each("conductors", "conductor", this::conductor),
                fields.each("links", "link", this::link),
                fields.each("joints", "joint", LayoutReader::joint),
                fields.each("services", "service", LayoutReader::service),
                fields.each("electrodes", "electrode", LayoutReader::electrode),
                fields.each("bonds", "bond", LayoutReader::bond),
                fields.each("excluded", "excluded path", LayoutReader::excluded),
                fields.each("findings", "finding", LayoutReader::finding),
                fields.each("assumed", "assumed fact", LayoutReader::assumed),
                texts(fields, "notChecked"),
                texts(fields, "cautions"),
                objective,
                fields.findObject("cost", "cost", cost -> cost(cost, fields)));
        fields.accept(List.of("lowerBound", "copper"));
        whenRead(
                fields,
                () -> sums.checkSums(
                        fields,
                        layout.status(),
                        layout.conductors(),
                        layout.sizes(),
                        layout.copper().orElse(new Copper(Length.ZERO, Weight.ZERO, Length.ZERO))));
        fields.done();
        return layout;
    }

    /** Once all is read, and could be: what stands in for a number contradicts the others. */
    private void whenRead(Fields fields, Runnable comparison) {
        comparisons.add(() -> {
            try {
                comparison.run();
            } catch (ArithmeticException overflow) {
                fields.reportWhole("has lengths too large to be added", RESULT);
            }
        });
    }

    private static Optional<String> present(Fields fields, String name) {
        return fields.find(name).filter(node -> !(node instanceof Node.Nothing)).map(node -> name);
    }

    private static CodeEdition edition(Fields fields) {
        return fields.require("codeEdition", RESULT)
                .flatMap(node -> fields.scope().values().whole(node, "codeEdition"))
                .flatMap(CodeEdition::find)
                .orElse(CodeEdition.NEC_2020);
    }

    private Copper copper(Fields fields) {
        return new Copper(fields.sum("length", RESULT), weight(fields, "weight"), fields.sum("purchaseLength", RESULT));
    }

    private SizeTotal size(Fields fields) {
        return new SizeTotal(fields.size("size", RESULT), fields.sum("length", RESULT), weight(fields, "weight"));
    }

    private Weight weight(Fields fields, String name) {
        return Weight.of(fields.measure(name, RESULT), unit);
    }

    private Conductor conductor(Fields fields) {
        Conductor conductor = new Conductor(
                fields.id(Kind.CONDUCTOR),
                fields.size("size", RESULT),
                fields.requireWord("role", Role.class, RESULT).orElse(Role.BONDING_JUMPER),
                fields.requireWord("protection", Protection.class, RESULT).orElse(Protection.NONE),
                ends.end(fields, "from"),
                ends.end(fields, "to"),
                fields.each("line", "place", place -> Drawn.in(place).position()),
                fields.findObject("length", "length", this::runLength).orElse(RunLength.ZERO),
                texts(fields, "serves"),
                texts(fields, "basis"),
                fields.findText("why").orElse(""),
                fields.each("pieces", "piece", LayoutReader::piece),
                texts(fields, "crosses"));
        whenRead(fields, () -> sums.checkConductor(fields, conductor));
        return conductor;
    }

    private RunLength runLength(Fields fields) {
        RunLength parts = new RunLength(
                fields.sum("plan", RESULT),
                fields.sum("vertical", RESULT),
                fields.sum("makeUp", RESULT),
                fields.sum("jumper", RESULT));
        Length total = fields.sum("total", RESULT);
        whenRead(fields, () -> sums.checkTotal(fields, total, parts));
        return parts;
    }

    private static Piece piece(Fields fields) {
        fields.require("lowest", RESULT);
        fields.require("highest", RESULT);
        return new Piece(
                fields.sum("length", RESULT),
                fields.findLength("lowest").orElse(Length.ZERO),
                fields.findLength("highest").orElse(Length.ZERO));
    }

    private Link link(Fields fields) {
        return new Link(
                fields.reference("path", Kind.PATH, RESULT),
                fields.findText("medium").orElse(""),
                ends.end(fields, "from"),
                ends.end(fields, "to"),
                fields.findObject("fromPlace", "place", place -> Drawn.in(place).position()),
                fields.findObject("toPlace", "place", place -> Drawn.in(place).position()),
                fields.sum("length", RESULT),
                texts(fields, "basis"));
    }

    private static Joint joint(Fields fields) {
        return new Joint(
                fields.id(Kind.JOINT),
                fields.findObject("place", "place", place -> Drawn.in(place).position())
                        .orElseGet(() -> Drawn.in(fields).position()),
                texts(fields, "conductors"),
                fields.name("method", RESULT),
                texts(fields, "basis"));
    }

    private static ServiceState service(Fields fields) {
        return new ServiceState(
                fields.name("id", RESULT),
                fields.name("supply", RESULT),
                fields.measure("area", RESULT).longValue(),
                fields.size("need", RESULT));
    }

    private static ElectrodeState electrode(Fields fields) {
        return new ElectrodeState(
                fields.name("id", RESULT),
                fields.findText("type").orElse(""),
                state(fields),
                need(fields),
                texts(fields, "basis"),
                fields.findText("reason").orElse(""),
                texts(fields, "way"));
    }

    private static BondState bond(Fields fields) {
        return new BondState(
                fields.name("path", RESULT),
                state(fields),
                need(fields),
                texts(fields, "basis"),
                fields.findText("reason").orElse(""),
                texts(fields, "way"));
    }

    private static State state(Fields fields) {
        return fields.requireWord("state", State.class, RESULT).orElse(State.UNREACHED);
    }

    private static Optional<WireSize> need(Fields fields) {
        return present(fields, "need").flatMap(fields::findSize);
    }

    private static Excluded excluded(Fields fields) {
        return new Excluded(
                fields.name("path", RESULT),
                fields.findText("medium").orElse(""),
                fields.findText("reason").orElse(""),
                texts(fields, "basis"));
    }

    private static Finding finding(Fields fields) {
        return new Finding(
                fields.name("rule", RESULT),
                fields.requireWord("severity", Severity.class, RESULT).orElse(Severity.NOTE),
                fields.findText("subject").orElse(""),
                fields.findText("message").orElse(""));
    }

    private static Evidence assumed(Fields fields) {
        return new Evidence(
                fields.findText("of").orElse(""), fields.findText("text").orElse(""));
    }

    private Cost cost(Fields fields, Fields result) {
        return new Cost(
                fields.findText("currency").orElse(""),
                money(fields, "total"),
                money(fields, "material"),
                money(fields, "labor"),
                money(fields, "crossings"),
                fields.require("rounding", RESULT)
                        .flatMap(node -> fields.scope().values().number(node, fields.path("rounding")))
                        .map(Money::of)
                        .orElse(Money.ZERO),
                isCost ? money(result, "lowerBound") : money(fields, "total"),
                weight(fields, "leastCopperWeight"),
                money(fields, "leastCopperCost"),
                fields.findWord("leastCopperStatus", Status.class).orElse(Status.BEST_FOUND));
    }

    private static Money money(Fields fields, String name) {
        return Money.of(fields.measure(name, RESULT));
    }

    private static List<String> texts(Fields fields, String name) {
        List<String> texts = new ArrayList<>();
        List<Node> items = fields.findList(name).map(Node.Array::items).orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            fields.scope()
                    .values()
                    .text(items.get(i), fields.path(name) + "[" + i + "]")
                    .ifPresent(texts::add);
        }
        return texts;
    }
}
