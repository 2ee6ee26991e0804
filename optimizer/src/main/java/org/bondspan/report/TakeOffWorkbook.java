package org.bondspan.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Layout;
import org.bondspan.takeoff.Group;
import org.bondspan.takeoff.Row;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.Total;
import org.bondspan.units.Money;
import org.bondspan.units.Numbers;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** A take-off as a workbook (XLSX): summary, detail, by size, joints, assumptions, findings. */
public final class TakeOffWorkbook {
    private final TakeOff takeOff;
    private final Layout layout;

    private TakeOffWorkbook(TakeOff takeOff) {
        this.takeOff = takeOff;
        this.layout = takeOff.layout();
    }

    /** The bytes of the file; the same take-off gives the same bytes. */
    public static byte[] of(TakeOff takeOff) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Bondspan", null)) {
            new TakeOffWorkbook(takeOff).write(workbook);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return SteadyZip.of(bytes.toByteArray());
    }

    private void write(Workbook workbook) {
        summary(workbook.newWorksheet("Summary"));
        detail(workbook.newWorksheet("Detail"));
        bySize(workbook.newWorksheet("By size"));
        joints(workbook.newWorksheet("Joints"));
        list(workbook.newWorksheet("Assumptions"), "assumption", assumptions());
        findings(workbook.newWorksheet("Findings"));
    }

    private void summary(Worksheet sheet) {
        List<List<Object>> rows = new ArrayList<>();
        rows.add(List.of("site", layout.site()));
        rows.add(List.of("adoption", layout.adoption().isBlank() ? "not stated" : layout.adoption()));
        rows.add(List.of("edition of NFPA 70", layout.codeEdition().year()));
        rows.add(List.of("made least", layout.objective().label()));
        rows.add(List.of("status", new TakeOffDetail(takeOff).status()));
        rows.add(List.of("length unit", layout.lengthUnit().symbol()));
        layout.copper().ifPresent(copper -> {
            rows.add(List.of("copper, length", Numbers.rounded(copper.length().in(layout.lengthUnit()))));
            rows.add(List.of("copper, weight", Numbers.rounded(copper.weight().in(layout.lengthUnit()))));
            rows.add(List.of(
                    "copper, to buy", Numbers.rounded(copper.purchaseLength().in(layout.lengthUnit()))));
        });
        takeOff.prices().ifPresent(book -> rows.add(List.of("prices", book.name())));
        takeOff.total().ifPresent(total -> rows.addAll(totals(total)));
        takeOff.missing().forEach(missing -> rows.add(List.of("not priced", missing)));
        table(sheet, List.of("what", "value"), rows);
    }

    private List<List<Object>> totals(Total total) {
        return List.of(
                List.of("currency", takeOff.currency()),
                List.of("material", total.material().amount()),
                List.of("labor hours", TakeOffDetail.hours(total.hours())),
                List.of("labor", total.labor().amount()),
                List.of("wall crossings", total.crossings().amount()),
                List.of("rounding of rows", total.rounding().amount()),
                List.of("installed cost", total.total().amount()));
    }

    private void detail(Worksheet sheet) {
        TakeOffDetail detail = new TakeOffDetail(takeOff);
        List<List<Object>> rows = new ArrayList<>();
        for (Row row : takeOff.rows()) {
            rows.add(detail.cells(rows.size() + 1, row));
        }
        table(sheet, detail.headings(), rows);
    }

    private void bySize(Worksheet sheet) {
        TakeOffDetail detail = new TakeOffDetail(takeOff);
        List<List<Object>> rows = new ArrayList<>();
        for (Group group : takeOff.groups()) {
            boolean isLength = group.pieces() == 0;
            List<Object> cells = new ArrayList<>();
            cells.add(group.name());
            cells.add(isLength ? detail.length(group.measured()) : "");
            cells.add(isLength ? detail.length(group.purchase()) : "");
            cells.add(isLength ? TakeOffDetail.thousandFeet(group.purchase()) : "");
            cells.add(isLength ? "" : group.pieces());
            cells.add(
                    group.weight().isZero()
                            ? ""
                            : Numbers.rounded(group.weight().in(layout.lengthUnit())));
            boolean hasMoney = takeOff.total().isPresent();
            cells.add(hasMoney ? group.material().amount() : "");
            cells.add(hasMoney ? TakeOffDetail.hours(group.hours()) : "");
            cells.add(hasMoney ? group.labor().amount() : "");
            cells.add(hasMoney ? group.other().amount() : "");
            cells.add(hasMoney ? group.cost().amount() : "");
            rows.add(cells);
        }
        takeOff.total()
                .map(Total::rounding)
                .filter(rounding -> !rounding.isZero())
                .ifPresent(rounding -> rows.add(rounding(rounding)));
        table(
                sheet,
                List.of(
                        "size or kind",
                        "length",
                        "to buy",
                        "to buy, 1000 ft",
                        "count",
                        "weight",
                        "material",
                        "labor hours",
                        "labor",
                        "other",
                        "cost"),
                rows);
    }

    private static List<Object> rounding(Money rounding) {
        return List.of("rounding of rows", "", "", "", "", "", "", "", "", "", rounding.amount());
    }

    private void joints(Worksheet sheet) {
        List<List<Object>> rows = AnswerTables.joints(layout).rows().stream()
                .<List<Object>>map(ArrayList::new)
                .toList();
        table(sheet, List.of("joint", "method", "conductors", "place", "rule"), rows);
    }

    private List<String> assumptions() {
        List<String> lines = new ArrayList<>(takeOff.assumptions());
        lines.addAll(layout.notChecked());
        lines.addAll(layout.cautions());
        return lines;
    }

    private static void list(Worksheet sheet, String heading, List<String> lines) {
        table(
                sheet,
                List.of(heading),
                lines.stream().map(line -> List.<Object>of(line)).toList());
    }

    private void findings(Worksheet sheet) {
        List<List<Object>> rows = new ArrayList<>();
        for (Finding finding : layout.findings()) {
            rows.add(List.of(finding.severity().label(), finding.rule(), finding.subject(), finding.message()));
        }
        table(sheet, List.of("severity", "rule", "subject", "message"), rows);
    }

    /** A header that stays in view and filters, texts as texts, numbers as numbers. */
    private static void table(Worksheet sheet, List<String> headings, List<List<Object>> rows) {
        for (int column = 0; column < headings.size(); column++) {
            sheet.value(0, column, headings.get(column));
            sheet.style(0, column).bold().set();
        }
        sheet.freezePane(0, 1);
        sheet.setAutoFilter(0, 0, rows.size(), headings.size() - 1);
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                value(sheet, row + 1, column, rows.get(row).get(column));
            }
        }
    }

    private static void value(Worksheet sheet, int row, int column, Object cell) {
        if (cell instanceof BigDecimal number) {
            sheet.value(row, column, number);
        } else if (cell instanceof Integer number) {
            sheet.value(row, column, number);
        } else if (!cell.equals("")) {
            String words = cell.toString();
            sheet.value(row, column, words.startsWith("'") ? words : TakeOffDetail.text(words));
        }
    }
}
