package org.bondspan.report.files;

import java.util.List;
import org.bondspan.report.RouteDocument;
import org.bondspan.report.document.Document;
import org.bondspan.report.document.HtmlDocument;
import org.bondspan.report.document.PdfDocument;

/** The report, to print and to read on a screen. */
final class ReportFiles {
    private ReportFiles() {}

    static List<OutputFile> of(RoutedSite routed) {
        Document document = RouteDocument.of(routed.content(), routed.costs(), routed.takeOff());
        return List.of(
                routed.file("report.pdf", () -> PdfDocument.of(document)),
                routed.file("report.html", () -> HtmlDocument.of(document)));
    }
}
