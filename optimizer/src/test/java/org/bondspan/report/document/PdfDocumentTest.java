package org.bondspan.report.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bondspan.sheet.table.Schedule;
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

    private static String text(Document document) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfDocument.of(document))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    /** U+6DF1 is no letter of a Latin face. */
    @Test
    void charactersThatTheFaceLacksAreToldUnderTheTitle() throws IOException {
        Schedule table = new Schedule("", List.of("id"), List.of(List.of("rod \u6df1")));
        assertThat(text(new Document("Depot", "edition", List.of(new Part.Table(table)))))
                .contains("edition Characters that the typeface lacks stand as question marks.", "rod ?");
        assertThat(text(new Document("Depot?", "edition", List.of(new Part.Paragraph("plain")))))
                .doesNotContain("Characters that the typeface");
    }

    @Test
    void aHeadingTooLongForItsLineIsCutRatherThanSetTooSmallToRead() throws IOException {
        Document document = new Document(
                "Depot",
                "edition",
                List.of(new Part.Heading("Plan, level " + "Q".repeat(200)), new Part.Paragraph("plain")));
        assertThat(text(document)).containsPattern("PLAN, LEVEL Q+\\.\\.\\. ").doesNotContain("Q".repeat(100));
    }
}
