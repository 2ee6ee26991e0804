package org.bondspan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bondspan.sheet.out.PdfFile;
import org.bondspan.sheet.plan.PlacedNote;
import org.bondspan.sheet.plan.PlacedPlan;
import org.bondspan.site.Level;
import org.junit.jupiter.api.Test;

/** Far more conductors on one small sheet than have room for their words. */
class CrowdedPlanTest {
    private final SheetContent content = LargeAnswer.of(1, 120);
    private final Level level = content.site().levels().get(0);

    @Test
    void wordsWithoutRoomBecomeNumbersAndStillNothingOverlaps() {
        PlanViews views = PlanSheets.views(content, level, SheetSize.LETTER);

        assertThat(views.numbered()).isNotEmpty();
        for (PlacedPlan plan : views.plans()) {
            List<Rectangle2D> boxes = plan.notes().stream().map(PlacedNote::box).toList();
            IntStream.range(0, boxes.size())
                    .forEach(i -> assertThat(boxes.subList(0, i)).noneMatch(boxes.get(i)::intersects));
        }
    }

    @Test
    void aSheetListsWhatLiesOnItsLevel() throws IOException {
        SheetContent two = LargeAnswer.of(2, 5);
        for (int level = 0; level < 2; level++) {
            byte[] sheets = PdfFile.of(PlanSheets.of(two, two.site().levels().get(level), SheetSize.ARCH_D));
            try (PDDocument pdf = Loader.loadPDF(sheets)) {
                assertThat(new PDFTextStripper().getText(pdf))
                        .contains("rod-" + level + "-0", "rod-" + level + "-4")
                        .doesNotContain("rod-" + (1 - level) + "-");
            }
        }
    }

    @Test
    void schedulesGoOnUntilEveryConductorIsListed() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfFile.of(PlanSheets.of(content, level, SheetSize.LETTER)))) {
            String text = new PDFTextStripper().getText(pdf);

            assertThat(pdf.getNumberOfPages()).isGreaterThan(2);
            IntStream.range(0, 120).forEach(i -> assertThat(text).contains("C" + (i + 1) + " ", "rod-0-" + i));
        }
    }
}
