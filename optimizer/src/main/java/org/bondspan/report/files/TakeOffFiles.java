package org.bondspan.report.files;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bondspan.layout.Status;
import org.bondspan.report.TakeOffCsv;
import org.bondspan.report.TakeOffWorkbook;

/** The take-off of an answer at the prices of its site: rows and workbook. */
final class TakeOffFiles {
    private TakeOffFiles() {}

    static List<OutputFile> of(RoutedSite routed) {
        if (routed.content().layout().status() == Status.IMPOSSIBLE) {
            return List.of();
        }
        return List.of(
                routed.file("takeoff.csv", () -> TakeOffCsv.of(routed.takeOff()).getBytes(StandardCharsets.UTF_8)),
                routed.file("takeoff.xlsx", () -> TakeOffWorkbook.of(routed.takeOff())));
    }
}
