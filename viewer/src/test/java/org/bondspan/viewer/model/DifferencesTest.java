package org.bondspan.viewer.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.assertj.core.groups.Tuple;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Layout;
import org.bondspan.layout.RunLength;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.Length;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.Differences.Row;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Plan;
import org.junit.jupiter.api.Test;

class DifferencesTest {
    /**
     * The steel hall as drawn, by hand from its file: C1 10, C3 9 and C6 12 ft of 3/0 AWG, 15 ft of 4 AWG, 24.5 ft of 6
     * AWG: 70.5 ft and 31 x 0.5181 + 15 x 0.1289 + 24.5 x 0.0810 = 19.9791 lb. Where the frame may not carry it is the
     * timber hall's route with a 3 ft bonding conductor to the frame and 7 ft more of 4 AWG: 1,080.5 ft and 1,034 x
     * 0.5181 + 22 x 0.1289 + 24.5 x 0.0810 = 540.5357 lb.
     */
    @Test
    void forbiddingTheFrameCostsWhatTheHandSays() {
        try (Sitting sitting = new Sitting()) {
            Desk drawn = sitting.open("hall-steel.site.json");
            assertThat(Differences.findChange(drawn)).isEmpty();

            var opened = drawn.opened().orElseThrow();
            sitting.bench().ask(opened, Switch.turned(opened, Switch.What.FRAME));
            Desk denied = sitting.settle();

            assertThat(Differences.findChange(denied)).contains("+520.56 lb  +1,010.00 ft");
            List<Row> rows = rows(drawn, denied);
            assertThat(rows)
                    .contains(
                            new Row("frame may carry", "as drawn", "no", ""),
                            new Row("answer", "least", "least", ""),
                            new Row("weight", "19.98 lb", "540.54 lb", "+520.56 lb"),
                            new Row("length", "70.50 ft", "1,080.50 ft", "+1,010.00 ft"),
                            new Row("3/0 AWG", "31.00 ft", "1,034.00 ft", "+1,003.00 ft"),
                            new Row("4 AWG", "15.00 ft", "22.00 ft", "+7.00 ft"),
                            new Row("carries, no copper", "hall-frame, water-main", "water-main", ""));
            assertThat(rows).noneMatch(row -> row.what().equals("6 AWG"));
        }
    }

    @Test
    void anAnswerDiffersFromItselfInNothing() {
        Desk desk = Sitting.solved("plant-block.site.json");

        assertThat(rows(desk, desk))
                .extracting(Row::what, Row::difference)
                .containsExactly(
                        Tuple.tuple("answer", ""),
                        Tuple.tuple("weight", "\u00b10.00 lb"),
                        Tuple.tuple("length", "\u00b10.00 ft"));
    }

    /**
     * Two conductors of one size between the same ends, 10 and 30 ft long: in another order they are still the same.
     */
    @Test
    void ofTwoBetweenTheSameEndsEachIsHeldAgainstTheOneOfItsWay() {
        Answer solved = Sitting.solved("kiosk.site.json").answer().orElseThrow();
        Conductor model = solved.layout().conductors().get(0);
        Conductor near = along(model, "C1", 10);
        Conductor far = along(model, "C2", 30);
        Conductor nearer = along(model, "C1", 8);

        assertThat(Differences.rows(with(solved, near, far), with(solved, far, near)))
                .noneMatch(row -> row.what().startsWith(model.size().label() + ", "));
        assertThat(Differences.rows(with(solved, near, far), with(solved, nearer, far)))
                .filteredOn(row -> row.what().startsWith(model.size().label() + ", "))
                .extracting(Row::first, Row::second, Row::difference)
                .containsExactly(Tuple.tuple("10.00 ft", "8.00 ft", "\u22122.00 ft"));
    }

    /** Straight east for so many feet. */
    private static Conductor along(Conductor model, String id, long feet) {
        Length length = Length.ofFeet(feet);
        Position start = model.line().get(0);
        Position end = new Position(
                start.level(),
                new PlanPoint(start.at().x() + length.nanometres(), start.at().y()),
                start.height());
        return new Conductor(
                id,
                model.size(),
                model.role(),
                model.protection(),
                model.from(),
                model.to(),
                List.of(start, end),
                new RunLength(length, Length.ZERO, Length.ZERO, Length.ZERO),
                model.serves(),
                model.basis(),
                model.why(),
                model.pieces(),
                model.crosses());
    }

    private static Answer with(Answer answer, Conductor... conductors) {
        Layout layout = answer.layout();
        Layout other = new Layout(
                layout.site(),
                layout.adoption(),
                layout.codeEdition(),
                layout.lengthUnit(),
                layout.status(),
                layout.copper(),
                layout.sizes(),
                layout.lowerBound(),
                layout.gapPercent(),
                List.of(conductors),
                layout.links(),
                layout.joints(),
                layout.services(),
                layout.electrodes(),
                layout.bonds(),
                layout.excluded(),
                layout.findings(),
                layout.assumed(),
                layout.notChecked(),
                layout.cautions(),
                layout.objective(),
                layout.cost());
        return new Answer(answer.question(), Plan.routed(answer.plan().site(), other, Optional.empty()));
    }

    private static List<Row> rows(Desk first, Desk second) {
        Answer a = first.answer().orElseThrow();
        Answer b = second.answer().orElseThrow();
        return Differences.rows(a, b);
    }
}
