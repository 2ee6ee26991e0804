package org.bondspan.report.files;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.sheet.PlanSheets;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.out.PdfFile;
import org.bondspan.sheet.out.SvgFile;

/** The plan sheets of each level: one PDF, and an SVG for each of its pages. */
final class SheetFiles {
    private SheetFiles() {}

    static List<OutputFile> of(RoutedSite routed) {
        List<OutputFile> files = new ArrayList<>();
        routed.levelWords().forEach((level, word) -> {
            List<Drawing> sheets = PlanSheets.of(routed.content(), level, routed.sheet());
            files.add(routed.file("plan-" + word + ".pdf", () -> PdfFile.of(sheets)));
            for (int i = 0; i < sheets.size(); i++) {
                Drawing sheet = sheets.get(i);
                String page = i == 0 ? "" : "." + (i + 1);
                files.add(routed.file("plan-" + word + page + ".svg", () -> SvgFile.of(sheet)));
            }
        });
        return files;
    }
}
