package org.bondspan.viewer.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.groups.Tuple;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.Differences.Row;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Desk;
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

    private static List<Row> rows(Desk first, Desk second) {
        Answer a = first.answer().orElseThrow();
        Answer b = second.answer().orElseThrow();
        return Differences.rows(a, b);
    }
}
