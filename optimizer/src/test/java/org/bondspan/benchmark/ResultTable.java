package org.bondspan.benchmark;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;

/** Figures in rows under fixed column heads, as Markdown and as CSV. */
final class ResultTable {
    private final String title;
    private final List<String> columns;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    ResultTable(String title, String... columns) {
        this.title = title;
        this.columns = List.of(columns);
    }

    String title() {
        return title;
    }

    /** Adds a row; numbers that are no integers are printed with three significant digits. */
    void add(Object... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + columns.size() + " columns");
        }
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(cell instanceof Double number ? print(number) : cell.toString());
        }
        rows.add(row);
    }

    /** A sentence below the table. */
    void remark(String sentence) {
        remarks.add(sentence);
    }

    static String print(double number) {
        if (number == 0 || Double.isNaN(number)) {
            return number == 0 ? "0" : "-";
        }
        int digits = (int) Math.max(0, 2 - Math.floor(Math.log10(Math.abs(number))));
        return String.format(Locale.ROOT, "%." + digits + "f", number);
    }

    String toMarkdown() {
        StringBuilder text = new StringBuilder("## " + title + "\n\n");
        text.append(line(columns)).append(line(Collections.nCopies(columns.size(), "---")));
        rows.forEach(row -> text.append(line(row)));
        remarks.forEach(remark -> text.append('\n').append(remark).append('\n'));
        return text.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    String toCsv() {
        StringBuilder text = new StringBuilder(String.join(",", columns)).append('\n');
        rows.forEach(row -> text.append(CSVFormat.DEFAULT.format(row.toArray())).append('\n'));
        return text.toString();
    }
}
