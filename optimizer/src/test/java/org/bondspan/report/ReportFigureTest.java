package org.bondspan.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.Layout;
import org.bondspan.report.document.Document;
import org.bondspan.report.document.PdfDocument;
import org.bondspan.sheet.SheetContent;
import org.bondspan.usecase.RouteSite;
import org.bondspan.usecase.TakeOffSite;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Letters of 6 points are the smallest that people read in print without effort: common practice, no source. */
class ReportFigureTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "hall-timber",
                "hall-steel",
                "hall-joint",
                "plant-block",
                "pump-house",
                "workshop-metric",
                "kiosk"
            })
    void wordsOnThePlansOfTheReportAreLargeEnoughInPrint(String sample) throws IOException {
        SiteFile file = SiteFile.read(Path.of("..", "samples", sample + ".site.json"));
        Layout layout = RouteSite.of(file.site());
        SheetContent content = new SheetContent(file.site(), layout, file.digest(), "Bondspan of the test");
        Document report = RouteDocument.of(content, List.of(), TakeOffSite.of(file.site(), layout));
        List<Float> sizes = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(PdfDocument.of(report))) {
            new PDFTextStripper() {
                @Override
                protected void writeString(String words, List<TextPosition> letters) {
                    if (words.matches("[CB]\\d+ +\\S+ AWG")) {
                        letters.forEach(letter -> sizes.add(letter.getYScale()));
                    }
                }
            }.getText(pdf);
        }

        assertThat(sizes).isNotEmpty().allMatch(size -> size >= 6);
    }
}
