package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bondspan.io.SiteFile;
import org.bondspan.report.DictionaryText;
import org.bondspan.sheet.PlanFigure;
import org.bondspan.sheet.SheetContent;
import org.bondspan.sheet.out.SvgFile;
import org.bondspan.usecase.RouteSite;
import org.junit.jupiter.api.Test;

/** What README shows is what the program does. */
class ReadmeTest {
    private static final Path ROOT = Path.of("..");

    private static List<String> blocks(String kind) throws IOException {
        return Pattern.compile("```" + kind + "\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(ROOT.resolve("README.md")))
                .results()
                .map(match -> match.group(1))
                .toList();
    }

    @Test
    void theOutputShownIsThatOfTheSample() throws IOException {
        assertThat(blocks("text")).hasSize(1);
        assertThat(Run.of("route", Run.sample("hall-timber")).out())
                .startsWith(blocks("text").get(0));
    }

    @Test
    void theSiteShownIsAWholeOne() throws IOException {
        assertThat(blocks("json")).hasSize(1);
        String site = blocks("json").get(0);

        assertThat(Run.withInput(site, "check", "-").exit()).isZero();
        assertThat(Run.withInput(site, "route", "-").out()).contains("Least copper, proven:");
    }

    @Test
    void theReviewShownIsThatOfTheFaultyProposal() throws IOException {
        assertThat(blocks("review")).hasSize(1);
        Run review = Run.of(
                "review",
                Run.sample("hall-timber"),
                Run.SAMPLES.resolve("hall-timber.faulty.proposal.json").toString());
        assertThat(review.out()).startsWith(blocks("review").get(0));
    }

    /**
     * By hand, at the demo prices: 79 ft of 6 AWG at 81.0 lb per 1000 ft (ASTM B8) x $5.00 x 1.35 = $43.19, 8 h per
     * 1000 ft x $85 = $53.72; lug $52.00, clamps $56.50 and $45.00, a tap $52.00: $302.41.
     */
    @Test
    void theCostShownIsThatOfTheKiosk() throws IOException {
        assertThat(blocks("cost")).hasSize(1);
        String prices = Run.SAMPLES.resolve("demo.prices.json").toString();
        assertThat(Run.of("route", Run.sample("kiosk"), "--objective", "cost", "--prices", prices)
                        .out())
                .startsWith(blocks("cost").get(0));
    }

    @Test
    void theTableOfChecksIsTheDictionary() throws IOException {
        assertThat(Files.readString(ROOT.resolve("DEVELOPERS.md")))
                .contains("<!-- checks -->\n" + DictionaryText.markdown() + "<!-- /checks -->");
    }

    @Test
    void everyFileLinkedIsThere() throws IOException {
        for (String document : new String[] {"README.md", "DEVELOPERS.md"}) {
            Stream<String> links = Pattern.compile("\\]\\(([^)#:]+)(?:#[a-z-]+)?\\)")
                    .matcher(Files.readString(ROOT.resolve(document)))
                    .results()
                    .map(match -> match.group(1));
            assertThat(links).allSatisfy(link -> assertThat(ROOT.resolve(link)).exists());
        }
    }

    /** The words are compared, not the bytes: faces and their widths vary a little from one Java to the next. */
    @Test
    void thePictureIsTheOneDrawnOfTheSample() throws IOException {
        Path file = ROOT.resolve("samples/hall-timber.svg");
        SiteFile site = SiteFile.read(Path.of(Run.sample("hall-timber")));
        SheetContent content =
                new SheetContent(site.site(), RouteSite.of(site.site()), site.digest(), Bondspan.Version.name());
        byte[] drawn = SvgFile.of(PlanFigure.of(content, site.site().levels().get(0)));
        if ("update".equals(System.getProperty("golden"))) {
            Files.write(file, drawn);
        }

        assertThat(words(Files.readString(file)))
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(words(new String(drawn, StandardCharsets.UTF_8)));
    }

    private static List<String> words(String svg) {
        return Pattern.compile("<text[^>]*>([^<]*)</text")
                .matcher(svg)
                .results()
                .map(match -> match.group(1))
                .toList();
    }

    @Test
    void thePictureShowsTheCopperOfTheResult() throws IOException {
        String picture = Files.readString(ROOT.resolve("samples/hall-timber.svg"));
        String answer = Run.of("route", Run.sample("hall-timber")).out();

        for (String number :
                new String[] {"1,077.50 ft", "538.98 lb", "1,028.00", "1,031.00 ft", "22.00 ft", "24.50 ft"}) {
            assertThat(picture).contains(number);
            assertThat(answer).contains(number);
        }
    }
}
