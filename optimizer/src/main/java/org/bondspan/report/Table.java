package org.bondspan.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bondspan.sheet.table.Schedule;

/** Aligned columns. A heading that starts with {@code >} aligns its column to the right. */
final class Table {
    private static final String GAP = "  ";

    /** One line of cells, with remarks that stand below it. */
    private record Row(List<String> cells, List<String> remarks) {}

    private final List<String> headings;
    private final List<Row> rows = new ArrayList<>();

    Table(String... headings) {
        this.headings = List.of(headings);
    }

    /** The same table as a report sets. */
    static Table of(Schedule schedule) {
        Table table = new Table(schedule.headings().stream()
                .map(heading -> Schedule.isRight(heading) ? heading : Schedule.words(heading))
                .toArray(String[]::new));
        schedule.rows().forEach(cells -> table.add(cells, List.of()));
        return table;
    }

    void add(List<String> cells, List<String> remarks) {
        if (cells.size() != headings.size()) {
            throw new IllegalArgumentException(cells + " does not fit the columns " + headings);
        }
        rows.add(new Row(cells.stream().map(Page::printable).toList(), remarks));
    }

    void add(String... cells) {
        add(List.of(cells), List.of());
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Writes the table at that indent; remarks begin below the second column. */
    void writeTo(Page page, int indent) {
        List<Integer> widths =
                IntStream.range(0, headings.size()).mapToObj(this::width).toList();
        page.line(indent, Tone.QUIET, line(headings.stream().map(Table::title).toList(), widths));
        for (Row row : rows) {
            page.line(indent, line(row.cells(), widths));
            row.remarks().forEach(remark -> page.wrapped(indent + widths.get(0) + GAP.length(), remark));
        }
    }

    private int width(int column) {
        return rows.stream()
                .mapToInt(row -> row.cells().get(column).length())
                .reduce(title(headings.get(column)).length(), Math::max);
    }

    private String line(List<String> cells, List<Integer> widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            String padding = " ".repeat(widths.get(i) - cell.length());
            line.append(i == 0 ? "" : GAP).append(isRight(i) ? padding + cell : cell + padding);
        }
        return line.toString().stripTrailing();
    }

    private boolean isRight(int column) {
        return headings.get(column).startsWith(">");
    }

    private static String title(String heading) {
        return heading.startsWith(">") ? heading.substring(1) : heading;
    }
}
