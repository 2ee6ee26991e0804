package org.bondspan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.bondspan.io.SiteFile;
import org.bondspan.io.SiteReader;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.out.PdfFile;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.LevelPicture;
import org.bondspan.sheet.plan.PlacedNote;
import org.bondspan.sheet.plan.Symbol;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.usecase.RouteSite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What sheets say in words, read back by PDFBox. */
class SheetWordsTest {
    private static SheetContent sample(String name) {
        return content(
                SiteFile.read(Path.of("..", "samples", name + ".site.json")).site());
    }

    private static SheetContent content(Site site) {
        return new SheetContent(site, RouteSite.of(site), "0", "Bondspan of the test");
    }

    private static SheetContent named(String name) {
        return content(SiteReader.parse(file(name), "named"));
    }

    private static String file(String name) {
        return """
                {"format": "bondspan-site/1", "name": "%s",
                 "levels": [{"id": "L1", "outline": [[0,0],[40,0],[40,24],[0,24]], "open": {"height": 10}}],
                 "services": [{"id": "s", "ungrounded": {"material": "copper", "size": "3/0 AWG", "sets": 1},
                   "connections": [{"at": [2, 0], "height": 5}]}],
                 "electrodes": [{"id": "rod", "type": "rod", "rodLength": 8, "diameter": 0.75,
                   "connections": [{"at": [0, 6], "height": 1}]}]}
                """.formatted(name);
    }

    private static String text(SheetContent content, SheetSize size) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(
                PdfFile.of(PlanSheets.of(content, content.site().levels().get(0), size)))) {
            return new PDFTextStripper().getText(pdf);
        }
    }

    /** The facts are those that samples/pump-house.site.json marks as assumed; the sections those of its review. */
    @Test
    void assumedFactsAndWhatWasNotCheckedStandOnTheSheet() throws IOException {
        assertThat(text(sample("pump-house"), SheetSize.ARCH_D))
                .contains("ASSUMED FACTS, NOT VERIFIED", "electrode rod-1", "electrode rod-2", "electrode old-footing")
                .contains("NOT CHECKED", "Lightning protection systems, 250.106.");
        assertThat(text(named("Gatehouse"), SheetSize.ARCH_D))
                .contains("NOT CHECKED")
                .doesNotContain("ASSUMED FACTS");
    }

    /** NFPA 70, 250.66(A): 6 AWG is enough for conductors that lead to rods alone; others by Table 250.66. */
    @Test
    void theSheetSaysBySectionHowEachSizeWasFound() throws IOException {
        assertThat(text(sample("pump-house"), SheetSize.ARCH_D).lines().map(String::strip))
                .contains("2 AWG C1 250.24(A), 250.66", "6 AWG C2, C4 250.24(A), 250.66(A)");
    }

    /** Lengths in samples/pump-house.site.json that differ from the drawn ones. */
    @Test
    void thePlanNamesTheLinesWhoseMeasuredLengthGoverns() {
        SheetContent content = sample("pump-house");

        assertThat(PlanSheets.views(content, content.site().levels().get(0), SheetSize.ARCH_D).plans().stream()
                        .flatMap(plan -> plan.notes().stream())
                        .filter(note -> note.shape() == PlacedNote.Shape.WORDS)
                        .flatMap(note -> note.lines().stream()))
                .contains("run-south", "run-east", "run-north", "run-west", "rod-link");
    }

    /** The meter stands at (3, 20) in samples/plant-block.site.json. */
    @Test
    void theLandingsOfAJumperStandOnBothSidesOfTheMeter() {
        SheetContent content = sample("plant-block");
        PlanPoint meter =
                new PlanPoint(Length.ofFeet(3).nanometres(), Length.ofFeet(20).nanometres());
        Stream<Symbol> there =
                LevelPicture.of(
                                content.site(),
                                content.layout(),
                                content.site().levels().get(0))
                        .items()
                        .stream()
                        .filter(item ->
                                item instanceof Item.Mark mark && mark.at().equals(meter))
                        .map(item -> ((Item.Mark) item).symbol());

        assertThat(there).contains(Symbol.BREAK_WITH_JUMPER).doesNotContain(Symbol.LANDING);
    }

    @ParameterizedTest
    @EnumSource(SheetSize.class)
    void aNameOfThreeThousandLettersLeavesTheRestOfTheTitleBlockFree(SheetSize size) throws IOException {
        SheetContent content = named("Qx ".repeat(1000).strip());

        assertThat(letters(content, size).filter(letter -> letter.getUnicode().equals("Q")))
                .isNotEmpty()
                .allMatch(letter -> letter.getYDirAdj() < size.height() / 3);
        assertThat(text(content, size)).containsPattern("Q(x ?)?\\.\\.\\.");
    }

    private static Stream<TextPosition> letters(SheetContent content, SheetSize size) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(
                PdfFile.of(PlanSheets.of(content, content.site().levels().get(0), size)))) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    letters.add(text);
                }
            }.getText(pdf);
        }
        return letters.stream();
    }

    /** Also the title under the plan, which is drawn in one piece and ends short of the title block. */
    @ParameterizedTest
    @EnumSource(SheetSize.class)
    void aLevelOfEightHundredLettersIsCutUnderThePlan(SheetSize size) throws IOException {
        SheetContent content = content(SiteReader.parse(file("Shed").replace("L1", "Qx".repeat(400)), "shed"));
        List<TextPosition> letters = letters(content, size).toList();
        String drawn = letters.stream().map(TextPosition::getUnicode).collect(Collectors.joining());
        int begin = drawn.indexOf("PLAN, LEVEL Qx");
        int end = drawn.indexOf("...", begin) + 3;

        assertThat(drawn).hasSameSizeAs(letters);
        assertThat(drawn.substring(begin, end)).matches("PLAN, LEVEL (Qx)+Q?\\.\\.\\.");
        assertThat(letters.subList(begin, end))
                .allMatch(letter -> right(letter) < size.width() - size.margin() - size.titleBlock());
        assertThat(letters).allMatch(letter -> right(letter) < size.width() - size.margin());
    }

    private static double right(TextPosition letter) {
        return letter.getXDirAdj() + letter.getWidthDirAdj();
    }

    /** A building without electrodes violates 250.50, and nothing about it is least. */
    @Test
    void theTitleBlockOfASiteWithoutElectrodesLeadsWithItsViolation() throws IOException {
        String bare = file("Shed").replaceAll("(?s)\"electrodes\": \\[.*\\]}\\s*$", "\"electrodes\": []}");
        assertThat(text(content(SiteReader.parse(bare, "shed")), SheetSize.ARCH_D)
                        .replaceAll("\\s+", " "))
                .contains("Violates: 1 violation to mend, see keynotes. No copper: nothing is drawn")
                .doesNotContain("Least copper");
    }

    @Test
    void charactersThatTheFaceLacksAreTold() throws IOException {
        assertThat(text(named("Depot \u6df1"), SheetSize.ARCH_D))
                .contains("Depot ?", "Characters that the typeface lacks");
        assertThat(text(named("Depot?"), SheetSize.ARCH_D)).doesNotContain("Characters that the typeface");
    }

    /** NFPA 70, 250.64(B): smaller than 6 AWG needs raceway or armor, as all of the kiosk does. */
    @Test
    void wordsAboutRacewayLeaveIdsAndSizesInOneLine() throws IOException {
        SheetContent content = sample("kiosk");
        Drawing figure = PlanFigure.of(content, content.site().levels().get(0));
        try (PDDocument pdf = Loader.loadPDF(PdfFile.of(List.of(figure)))) {
            assertThat(new PDFTextStripper().getText(pdf).lines().map(String::strip))
                    .anyMatch(line -> line.startsWith("C1 8 AWG GEC, in"));
        }
    }
}
