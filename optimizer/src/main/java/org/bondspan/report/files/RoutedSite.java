package org.bondspan.report.files;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.bondspan.io.LayoutWriter;
import org.bondspan.layout.ExclusionCost;
import org.bondspan.layout.Status;
import org.bondspan.report.RouteDocument;
import org.bondspan.report.TakeOffCsv;
import org.bondspan.report.TakeOffWorkbook;
import org.bondspan.report.document.Document;
import org.bondspan.report.document.HtmlDocument;
import org.bondspan.report.document.PdfDocument;
import org.bondspan.sheet.PlanSheets;
import org.bondspan.sheet.SheetContent;
import org.bondspan.sheet.SheetSize;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.out.PdfFile;
import org.bondspan.sheet.out.SvgFile;
import org.bondspan.site.Level;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.TakingOff;

/**
 * A site with its answer, and how its files are to be called and drawn.
 *
 * @param name begins the name of every file
 * @param costs what each path that may not carry costs in copper
 */
public record RoutedSite(String name, SheetContent content, SheetSize sheet, List<ExclusionCost> costs) {
    public RoutedSite {
        costs = List.copyOf(costs);
    }

    /** All files, with names that differ also where case does not count. */
    public List<OutputFile> files() {
        TakeOff takeOff =
                TakingOff.of(content.site(), content.layout(), content.site().prices());
        return Stream.of(result(), takeOffs(takeOff), sheets(), reports(takeOff))
                .flatMap(List::stream)
                .toList();
    }

    private OutputFile file(String ending, Supplier<byte[]> bytes) {
        return new OutputFile(name + "." + ending, bytes);
    }

    private List<OutputFile> result() {
        return List.of(
                file("result.json", () -> LayoutWriter.toJson(content.layout()).getBytes(StandardCharsets.UTF_8)));
    }

    private List<OutputFile> takeOffs(TakeOff takeOff) {
        return content.layout().status() == Status.IMPOSSIBLE
                ? List.of()
                : List.of(
                        file("takeoff.csv", () -> TakeOffCsv.of(takeOff).getBytes(StandardCharsets.UTF_8)),
                        file("takeoff.xlsx", () -> TakeOffWorkbook.of(takeOff)));
    }

    /** Of each level one PDF, and an SVG for each of its pages. */
    private List<OutputFile> sheets() {
        List<OutputFile> files = new ArrayList<>();
        levelWords().forEach((level, word) -> {
            List<Drawing> sheets = PlanSheets.of(content, level, sheet);
            files.add(file("plan-" + word + ".pdf", () -> PdfFile.of(sheets)));
            for (int i = 0; i < sheets.size(); i++) {
                Drawing drawn = sheets.get(i);
                String page = i == 0 ? "" : "." + (i + 1);
                files.add(file("plan-" + word + page + ".svg", () -> SvgFile.of(drawn)));
            }
        });
        return files;
    }

    /** A word for each level that file names may hold. */
    private Map<Level, String> levelWords() {
        Map<Level, String> words = new LinkedHashMap<>();
        Set<String> taken = new TreeSet<>();
        for (Level level : content.site().levels()) {
            String plain = level.id().replaceAll("[^A-Za-z0-9_-]", "-");
            String stem = plain.substring(0, Math.min(40, plain.length()));
            String word = stem;
            for (int i = 2; !taken.add(word.toLowerCase(Locale.ROOT)); i++) {
                word = stem + "~" + i;
            }
            words.put(level, word);
        }
        return words;
    }

    /** To print, and to read on a screen. */
    private List<OutputFile> reports(TakeOff takeOff) {
        Document document = RouteDocument.of(content, costs, takeOff);
        return List.of(
                file("report.pdf", () -> PdfDocument.of(document)),
                file("report.html", () -> HtmlDocument.of(document)));
    }
}
