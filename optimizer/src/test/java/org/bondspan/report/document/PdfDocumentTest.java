package org.bondspan.report.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Read back by PDFBox. */
class PdfDocumentTest {
    @Test
    void aTitleOfThreeThousandLettersLeavesRoomForTheRestOfTheFirstPage() throws IOException {
        String title = "Qx ".repeat(1000).strip();
        Document document = new Document(title, "edition", List.of(new Part.Verdict("Least copper, proven.")));

        try (PDDocument pdf = Loader.loadPDF(PdfDocument.of(document))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(pdf))
                    .containsPattern("Q(x ?)?\\.\\.\\.")
                    .contains("edition", "Least copper, proven.");
        }
    }
}
