package org.bondspan.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class PageTest {
    private final Page page = new Page(Ink.PLAIN);

    @Test
    void wrapsAtHundredColumnsWithItsIndent() {
        page.wrapped(4, "word ".repeat(40));

        // 19 words and 18 spaces make 94 of the 96 columns that are left.
        assertThat(page.text().lines())
                .containsExactly(
                        "    " + "word ".repeat(19).strip(),
                        "    " + "word ".repeat(19).strip(),
                        "    word word");
    }

    @Test
    void aWordLongerThanALineStaysWhole() {
        page.wrapped(2, "a " + "x".repeat(120) + " b");

        assertThat(page.text().lines()).containsExactly("  a", "  " + "x".repeat(120), "  b");
    }

    @Test
    void controlCharactersOfASiteCannotSteerATerminal() {
        page.wrapped(0, "red\u001b[31m \u009b2J \u202eleft\nnext");

        assertThat(page.text()).isEqualTo("red?[31m ?2J ?left next\n");
    }

    @Test
    void onlyTheLeadIsPainted() {
        Page painted = new Page((tone, text) -> "<" + text + ">");
        painted.item(Tone.BAD, "VIOLATION 250.50", "rod-1: " + "word ".repeat(30));

        assertThat(painted.text().lines().toList().get(0)).startsWith("  <VIOLATION 250.50> rod-1: word");
        assertThat(painted.text().lines().skip(1)).noneMatch(line -> line.contains("<"));
    }

    @Test
    void columnsAreAlignedAndRemarksStandBelowTheSecond() {
        Table table = new Table("id", ">length", "rule");
        table.add(List.of("C1", "1,031.00", "250.66"), List.of("to the main"));
        table.add("conductor", "9.00", "250.53(C)");
        page.table("Conductors", "in ft", table);

        assertThat(page.text()).isEqualTo("""

                        CONDUCTORS (in ft)
                          id           length  rule
                          C1         1,031.00  250.66
                                     to the main
                          conductor      9.00  250.53(C)
                        """);
    }

    @Test
    void aTableWithoutRowsLeavesNothing() {
        page.table("Joints", new Table("id"));

        assertThat(page.text()).isEmpty();
    }

    @Test
    void aRowFitsTheColumns() {
        assertThatThrownBy(() -> new Table("id", "rule").add("C1")).isInstanceOf(IllegalArgumentException.class);
    }
}
