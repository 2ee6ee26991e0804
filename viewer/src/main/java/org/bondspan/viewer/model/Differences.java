package org.bondspan.viewer.model;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.Layout;
import org.bondspan.layout.SizeTotal;
import org.bondspan.site.CodeEdition;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Plan;

/** What sets two answers for one site apart. */
public final class Differences {
    private static final String NONE = "\u2013";

    private Differences() {}

    /**
     * One thing in both answers.
     *
     * @param difference by how much the second is more; empty text where that is no number
     */
    public record Row(String what, String first, String second, String difference) {}

    /**
     * Weight and length of the answer beside the one before, in one line; empty where there is none or where either is
     * impossible.
     */
    public static Optional<String> findChange(Desk desk) {
        return desk.before()
                .flatMap(before -> desk.answer()
                        .flatMap(after -> before.layout()
                                .copper()
                                .flatMap(old ->
                                        after.layout().copper().map(copper -> change(old, copper, after.plan())))));
    }

    private static String change(Copper old, Copper copper, Plan plan) {
        LengthUnit unit = plan.site().lengthUnit();
        return Wording.signed(copper.weight().in(unit).subtract(old.weight().in(unit)), unit.weightSymbol()) + "  "
                + Wording.signed(copper.length().in(unit).subtract(old.length().in(unit)), unit.symbol());
    }

    /** The rows that differ, and the totals in any case. */
    public static List<Row> rows(Answer first, Answer second) {
        List<Row> rows = new ArrayList<>();
        questions(first, second, rows);
        totals(first, second, rows);
        sizes(first.layout(), second.layout(), rows);
        links(first.layout(), second.layout(), rows);
        states(first.layout(), second.layout(), rows);
        conductors(first, second, rows);
        return List.copyOf(rows);
    }

    private static void questions(Answer first, Answer second, List<Row> rows) {
        differing("edition", edition(first), edition(second), rows);
        differing(
                "least",
                first.question().objective().label(),
                second.question().objective().label(),
                rows);
        differing(
                "frame may carry",
                first.question().frame().label(),
                second.question().frame().label(),
                rows);
        differing(
                "qualified supervision",
                first.question().supervision().label(),
                second.question().supervision().label(),
                rows);
        differing(
                "ring may join",
                first.question().ring().label(),
                second.question().ring().label(),
                rows);
    }

    private static String edition(Answer answer) {
        CodeEdition edition = answer.question().edition();
        return String.valueOf(edition.year());
    }

    private static void totals(Answer first, Answer second, List<Row> rows) {
        LengthUnit unit = second.plan().site().lengthUnit();
        rows.add(new Row(
                "answer",
                Wording.spaced(first.layout().status().label()),
                Wording.spaced(second.layout().status().label()),
                ""));
        amount(
                "weight",
                first.layout().copper().map(copper -> copper.weight().in(unit)),
                second.layout().copper().map(copper -> copper.weight().in(unit)),
                unit.weightSymbol(),
                rows);
        amount(
                "length",
                first.layout().copper().map(copper -> copper.length().in(unit)),
                second.layout().copper().map(copper -> copper.length().in(unit)),
                unit.symbol(),
                rows);
        if (first.plan().cost().isPresent() || second.plan().cost().isPresent()) {
            amount(
                    "installed",
                    first.plan().cost().map(cost -> cost.amount()),
                    second.plan().cost().map(cost -> cost.amount()),
                    second.plan().currency(),
                    rows);
        }
    }

    private static void amount(
            String what, Optional<BigDecimal> first, Optional<BigDecimal> second, String unit, List<Row> rows) {
        String difference = first.isPresent() && second.isPresent()
                ? Wording.signed(second.get().subtract(first.get()), unit)
                : "";
        rows.add(new Row(what, print(first, unit), print(second, unit), difference));
    }

    private static String print(Optional<BigDecimal> amount, String unit) {
        return amount.map(number -> Numbers.print(number) + " " + unit).orElse(NONE);
    }

    private static void sizes(Layout first, Layout second, List<Row> rows) {
        LengthUnit unit = second.lengthUnit();
        Map<WireSize, BigDecimal> a = lengths(first);
        Map<WireSize, BigDecimal> b = lengths(second);
        Map<WireSize, BigDecimal> all = new TreeMap<>(Comparator.reverseOrder());
        all.putAll(a);
        all.putAll(b);
        for (WireSize size : all.keySet()) {
            BigDecimal one = a.getOrDefault(size, BigDecimal.ZERO);
            BigDecimal other = b.getOrDefault(size, BigDecimal.ZERO);
            if (one.compareTo(other) != 0) {
                amount(size.label(), Optional.of(one), Optional.of(other), unit.symbol(), rows);
            }
        }
    }

    private static Map<WireSize, BigDecimal> lengths(Layout layout) {
        Map<WireSize, BigDecimal> lengths = new LinkedHashMap<>();
        for (SizeTotal size : layout.sizes()) {
            lengths.put(size.size(), size.length().in(layout.lengthUnit()));
        }
        return lengths;
    }

    private static void links(Layout first, Layout second, List<Row> rows) {
        List<String> a =
                first.links().stream().map(link -> link.path()).distinct().toList();
        List<String> b =
                second.links().stream().map(link -> link.path()).distinct().toList();
        differing("carries, no copper", listed(a), listed(b), rows);
    }

    private static String listed(List<String> ids) {
        return ids.isEmpty() ? "nothing" : String.join(", ", ids);
    }

    private static void states(Layout first, Layout second, List<Row> rows) {
        for (ElectrodeState electrode : second.electrodes()) {
            first.electrodes().stream()
                    .filter(other -> other.id().equals(electrode.id()))
                    .forEach(other -> differing(
                            electrode.id(),
                            Wording.spaced(other.state().label()),
                            Wording.spaced(electrode.state().label()),
                            rows));
        }
    }

    /** Conductors of one size between the same ends are the same; others stand alone in their column. */
    private static void conductors(Answer first, Answer second, List<Row> rows) {
        List<Conductor> before = new ArrayList<>(first.layout().conductors());
        Map<String, Conductor> earlier = new HashMap<>();
        BiPredicate<Conductor, Conductor> alike = (a, b) -> name(a, first).equals(name(b, second));
        // Where several run between the same ends, each is first of all the one that runs the same way.
        match(before, second, alike.and((a, b) -> a.line().equals(b.line())), earlier);
        match(before, second, alike, earlier);
        LengthUnit unit = second.layout().lengthUnit();
        for (Conductor conductor : second.layout().conductors()) {
            BigDecimal after = conductor.length().total().in(unit);
            Optional.ofNullable(earlier.get(conductor.id()))
                    .map(old -> old.length().total().in(unit))
                    .filter(length -> length.compareTo(after) != 0)
                    .ifPresent(length -> amount(
                            name(conductor, second), Optional.of(length), Optional.of(after), unit.symbol(), rows));
        }
        before.forEach(conductor -> rows.add(new Row(name(conductor, first), length(conductor, first), NONE, "")));
        second.layout().conductors().stream()
                .filter(conductor -> !earlier.containsKey(conductor.id()))
                .forEach(conductor -> rows.add(new Row(name(conductor, second), NONE, length(conductor, second), "")));
    }

    /** Finds for conductors of the second answer, by id, those of the first that are the same, each once. */
    private static void match(
            List<Conductor> before,
            Answer second,
            BiPredicate<Conductor, Conductor> alike,
            Map<String, Conductor> earlier) {
        for (Conductor conductor : second.layout().conductors()) {
            if (!earlier.containsKey(conductor.id())) {
                before.stream()
                        .filter(old -> alike.test(old, conductor))
                        .findFirst()
                        .ifPresent(old -> {
                            before.remove(old);
                            earlier.put(conductor.id(), old);
                        });
            }
        }
    }

    /** Size and ends. */
    private static String name(Conductor conductor, Answer answer) {
        Wording wording = Wording.of(answer.plan().site());
        return conductor.size().label() + ", " + wording.of(conductor.from()) + " to " + wording.of(conductor.to());
    }

    private static String length(Conductor conductor, Answer answer) {
        return Wording.of(answer.plan().site()).of(conductor.length().total());
    }

    private static void differing(String what, String first, String second, List<Row> rows) {
        if (!first.equals(second)) {
            rows.add(new Row(what, first, second, ""));
        }
    }
}
