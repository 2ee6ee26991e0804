package org.bondspan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.bondspan.layout.Conductor;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.out.PdfFile;
import org.bondspan.sheet.out.SvgFile;
import org.bondspan.sheet.plan.PlacedNote;
import org.bondspan.sheet.plan.PlacedPlan;
import org.bondspan.units.Numbers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.SAXException;

/** Every sample on every sheet size. Text is read back by PDFBox's own extractor and the JDK's XML parser. */
class PlanSheetsTest {
    static List<Samples.Case> cases() {
        return Samples.cases();
    }

    private static List<Drawing> sheets(Samples.Case sample) {
        return PlanSheets.of(sample.content(), sample.level(), sample.size());
    }

    private static List<Conductor> conductorsHere(Samples.Case sample) {
        return sample.content().layout().conductors().stream()
                .filter(conductor -> conductor.line().stream()
                        .anyMatch(at -> at.level().equals(sample.level().id())))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void noTwoLabelsOverlapAndNoneLeavesItsView(Samples.Case sample) {
        for (PlacedPlan plan : PlanSheets.views(sample.content(), sample.level(), sample.size())
                .plans()) {
            List<Rectangle2D> boxes = plan.notes().stream().map(PlacedNote::box).toList();
            for (int i = 0; i < boxes.size(); i++) {
                assertThat(plan.view().frame().contains(boxes.get(i))).isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(boxes.get(i).intersects(boxes.get(j)))
                            .as(plan.notes().get(i) + " and " + plan.notes().get(j))
                            .isFalse();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyNoteStandsInAViewOrInTheScheduleOfNumbers(Samples.Case sample) {
        PlanViews views = PlanSheets.views(sample.content(), sample.level(), sample.size());
        long words = views.plans().stream()
                .flatMap(plan -> plan.notes().stream())
                .filter(note -> note.shape() != PlacedNote.Shape.CIRCLE)
                .filter(note -> !note.note().id().startsWith("detail "))
                .count();
        long numbered = views.numbered().stream()
                .filter(note -> !note.id().startsWith("detail "))
                .count();
        int notes = views.plans().get(0).picture().notes().size();

        assertThat(words + numbered).isEqualTo(notes);
        assertThat(numbered).isLessThanOrEqualTo(1 + notes / 5);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theSvgIsWellFormedAndNamesEveryConductorWithItsSizeAndLength(Samples.Case sample)
            throws IOException, SAXException, ParserConfigurationException {
        StringBuilder text = new StringBuilder();
        for (Drawing sheet : sheets(sample)) {
            byte[] svg = SvgFile.of(sheet);
            String root = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg))
                    .getDocumentElement()
                    .getTextContent();
            text.append(root);
            assertThat(new String(svg, StandardCharsets.UTF_8)).doesNotContain("<image", "<script", "href=\"http");
        }

        assertNamed(text.toString(), sample);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void thePdfIsSearchableAndItsFaceIsEmbedded(Samples.Case sample) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfFile.of(sheets(sample)))) {
            assertNamed(new PDFTextStripper().getText(pdf), sample);
            assertThat(pdf.getNumberOfPages()).isEqualTo(sheets(sample).size());
            for (PDPage page : pdf.getPages()) {
                assertThat(page.getMediaBox().getWidth())
                        .isEqualTo((float) sample.size().width());
                assertThat(fonts(page)).isNotEmpty().allMatch(PDFont::isEmbedded);
            }
        }
    }

    private static List<PDFont> fonts(PDPage page) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        var resources = page.getResources();
        for (var name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject form) {
                for (var font : form.getResources().getFontNames()) {
                    fonts.add(form.getResources().getFont(font));
                }
            }
        }
        return fonts;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void allWordsLieWithinTheBorderOfTheSheet(Samples.Case sample) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfFile.of(sheets(sample)))) {
            List<TextPosition> places = new ArrayList<>();
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    places.add(text);
                }
            }.getText(pdf);
            double margin = sample.size().margin();
            assertThat(places).isNotEmpty().allSatisfy(place -> {
                assertThat(place.getXDirAdj()).isGreaterThanOrEqualTo((float) margin);
                assertThat(place.getXDirAdj() + place.getWidthDirAdj())
                        .isLessThanOrEqualTo((float) (sample.size().width() - margin));
                assertThat(place.getYDirAdj())
                        .isBetween((float) margin, (float) (sample.size().height() - margin));
            });
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theSameInputGivesTheSameBytes(Samples.Case sample) {
        assertThat(PdfFile.of(sheets(sample))).isEqualTo(PdfFile.of(sheets(sample)));
        assertThat(sheets(sample).stream().map(SvgFile::of).map(PlanSheetsTest::text))
                .isEqualTo(sheets(sample).stream()
                        .map(SvgFile::of)
                        .map(PlanSheetsTest::text)
                        .toList());
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static void assertNamed(String text, Samples.Case sample) {
        String words = text.lines().map(String::strip).collect(Collectors.joining(" "));
        for (Conductor conductor : conductorsHere(sample)) {
            String length = Numbers.print(
                    conductor.length().total().in(sample.content().site().lengthUnit()));
            assertThat(words).contains(conductor.id(), conductor.size().label(), length);
        }
        assertThat(words)
                .contains(
                        sample.content().site().name(),
                        "NFPA 70, " + sample.content().layout().codeEdition().year() + " edition",
                        "Example jurisdiction; no local amendments",
                        "APPROVED",
                        "Least copper, proven");
        sample.content()
                .layout()
                .findings()
                .forEach(finding -> assertThat(words).contains(finding.rule()));
    }

    /** XML 1.0, 2.2: no control characters but tab and line breaks. */
    @Test
    void aTitleOfAnyCharactersGivesAWellFormedSvg() throws IOException, SAXException, ParserConfigurationException {
        Drawing named = new Drawing() {
            @Override
            public String title() {
                return "<a> & \u0007\u202e\ud800 b";
            }

            @Override
            public double width() {
                return 10;
            }

            @Override
            public double height() {
                return 10;
            }

            @Override
            public void paint(Graphics2D g) {
                g.draw(new Rectangle2D.Double(1, 1, 8, 8));
            }
        };

        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(SvgFile.of(named)))
                        .getElementsByTagName("title")
                        .item(0)
                        .getTextContent())
                .isEqualTo("<a> & ??? b");
    }
}
