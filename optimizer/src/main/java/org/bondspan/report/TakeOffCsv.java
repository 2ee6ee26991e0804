package org.bondspan.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.bondspan.takeoff.Row;
import org.bondspan.takeoff.TakeOff;

/**
 * The rows of a take-off as comma-separated values, RFC 4180: a header, CRLF, decimal points. Without totals, so that
 * every column can be summed. After the rows that count come those that say what holds of all: the site, the cautions.
 */
public final class TakeOffCsv {
    private TakeOffCsv() {}

    public static String of(TakeOff takeOff) {
        TakeOffDetail detail = new TakeOffDetail(takeOff);
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(detail.headings());
            int line = 0;
            for (Row row : takeOff.rows()) {
                printer.printRecord(plain(detail.cells(++line, row)));
            }
            printer.printRecords(detail.notes(line + 1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<Object> plain(List<Object> cells) {
        return cells.stream()
                .<Object>map(cell -> cell instanceof BigDecimal number ? number.toPlainString() : cell)
                .toList();
    }
}
