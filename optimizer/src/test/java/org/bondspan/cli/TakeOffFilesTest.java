package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files that {@code takeoff} writes. */
class TakeOffFilesTest {
    private static final String PRICES = Run.SAMPLES.resolve("demo.prices.json").toString();

    @TempDir
    private Path directory;

    private String file(String name) {
        return directory.resolve(name).toString();
    }

    private static List<CSVRecord> records(String csv) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(csv, format)) {
            return parser.getRecords();
        }
    }

    /** RFC 4180, 2: records end in CRLF, and all have as many fields. */
    @Test
    void theRowsFollowRfc4180() throws IOException {
        Run run = Run.of("takeoff", Run.sample("plant-block"), "--prices", PRICES, "--csv", file("a.csv"));
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        String csv = Files.readString(directory.resolve("a.csv"));
        assertThat(csv).endsWith("\r\n").startsWith("line,section,kind,item,");
        assertThat(csv.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(records(csv)).isNotEmpty().allMatch(CSVRecord::isConsistent);
    }

    private static boolean counts(CSVRecord record) {
        return !record.get("unit").isEmpty();
    }

    /** As the answer on the screen names them, which wraps its lines. */
    @Test
    void theRowsNameTheSiteAndCarryTheCautions() throws IOException {
        Run run = Run.of("takeoff", Run.sample("hall-joint"), "--prices", PRICES, "--csv", file("a.csv"));
        String screen = run.out().replaceAll("\\s+", " ");
        List<CSVRecord> notes = records(Files.readString(directory.resolve("a.csv"))).stream()
                .filter(record -> !counts(record))
                .toList();

        assertThat(notes)
                .extracting(record -> record.get("kind"))
                .containsSubsequence("site", "scope", "status", "assumption", "finding", "not_checked", "caution");
        for (String kind : List.of("site", "scope", "assumption", "not_checked", "caution")) {
            assertThat(notes)
                    .filteredOn(record -> record.get("kind").equals(kind))
                    .isNotEmpty()
                    .allMatch(record -> screen.contains(record.get("description")));
        }
        assertThat(words(notes, "site")).isEqualTo("Quillmarsh Depot, hall C, expansion joint");
        assertThat(words(notes, "status")).isEqualTo("least copper, proven");
        assertThat(words(notes, "caution"))
                .contains("design aid", "local amendments", "authority having jurisdiction", "licensed professional");
    }

    private static String words(List<CSVRecord> records, String kind) {
        return records.stream()
                .filter(record -> record.get("kind").equals(kind))
                .map(record -> record.get("description"))
                .collect(Collectors.joining(" "));
    }

    /** Their columns add up to what the result says, and whoever sums a column meets no other number. */
    @Test
    void onlyRowsThatCountStateNumbers() throws IOException {
        String sample = Run.sample("hall-timber");
        Run.of("takeoff", sample, "--prices", PRICES, "--csv", file("a.csv"));
        List<CSVRecord> rows = records(Files.readString(directory.resolve("a.csv")));
        List<String> words = List.of("line", "kind", "item", "description");

        assertThat(rows.stream().filter(record -> !counts(record)))
                .isNotEmpty()
                .allSatisfy(record -> assertThat(record.toMap().keySet().stream()
                                .filter(column -> !record.get(column).isEmpty()))
                        .isSubsetOf(words));
        assertThat(rows).extracting(record -> record.get("line")).doesNotHaveDuplicates();
        // as README prints it: 1,077.50 ft, a twentieth more to buy
        assertThat(rows.stream()
                        .filter(record -> record.get("kind").equals("conductor"))
                        .map(record ->
                                new BigDecimal(record.get("net_length")).add(new BigDecimal(record.get("make_up"))))
                        .reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo("1077.50");
    }

    /** A result file states that it is least; nobody proved it here. */
    @Test
    void theStatusOfAResultIsToldAsTheFileStatesIt() throws IOException {
        String sample = Run.sample("hall-timber");
        Files.writeString(
                directory.resolve("r.json"), Run.of("route", "--json", sample).out());
        Run.of("takeoff", sample, file("r.json"), "--csv", file("a.csv"), "--xlsx", file("a.xlsx"));
        String told = "least copper, proven; as the result file states it";

        assertThat(words(records(Files.readString(directory.resolve("a.csv"))), "status"))
                .isEqualTo(told);
        assertThat(String.join("", sheets("a.xlsx"))).contains(told);
    }

    /** Whatever a spreadsheet may take for a formula: = + - @, tab, carriage return at the start of a cell. */
    @Test
    void noCellOfTheUsersIsAFormula() throws IOException {
        String site = """
                {"format": "bondspan-site/1", "name": "=cmd", "adoption": "@x",
                 "levels": [{"id": "-L", "outline": [[0, 0], [40, 0], [40, 20], [0, 20]], "open": {"height": 0}}],
                 "services": [{"id": "=1+1", "ungrounded": {"material": "copper", "size": "2 AWG", "sets": 1},
                   "connections": [{"id": "\\tA", "at": [0, 0]}]}],
                 "electrodes": [
                   {"id": "@SUM(A1)", "type": "rod", "rodLength": 8, "diameter": 0.625,
                     "connections": [{"at": [10, 5]}]},
                   {"id": " -2+3", "type": "rod", "rodLength": 8, "diameter": 0.625,
                     "connections": [{"at": [20, 5]}]}
                 ],
                 "prices": {"name": "+1", "labor": {"perHour": 1, "source": "=2"},
                   "copper": {"perPound": 1, "ratio": 1, "date": "2025-01-31", "source": "\\r=3"},
                   "conductors": [{"size": "8 AWG", "hours": {"raceway": 1}, "source": "=4"}],
                   "connections": {"service-lug": {"price": 1, "hours": 1, "source": "=HYPERLINK(5)"}}}}""";
        Run run = Run.withInput(site, "takeoff", "-", "--csv", file("a.csv"), "--xlsx", file("a.xlsx"));
        assertThat(run.err()).isEmpty();
        for (CSVRecord record : records(Files.readString(directory.resolve("a.csv")))) {
            assertThat(record.stream()).noneMatch(cell -> cell.strip().matches("(?s)[=+\\-@\\t\\r].*"));
        }
        assertThat(Files.readString(directory.resolve("a.csv"))).contains("'=1+1", "'@SUM(A1)", "'-2+3", "'=4");
        for (String sheet : sheets("a.xlsx")) {
            assertThat(sheet).doesNotContain("<f>", "<t>=", "<t>@", "<t>+", "<t>-");
        }
        // as XML writes an apostrophe
        assertThat(String.join("", sheets("a.xlsx"))).contains("&apos;=1+1");
    }

    private List<String> sheets(String name) throws IOException {
        List<String> texts = new ArrayList<>();
        try (ZipFile zip = new ZipFile(directory.resolve(name).toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                try (InputStream in = zip.getInputStream(entry)) {
                    texts.add(new String(in.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        return texts;
    }

    @Test
    void theWorkbookHasSixSheetsAndIsTheSameEachTime() throws IOException {
        String sample = Run.sample("hall-timber");
        assertThat(Run.of("takeoff", sample, "--prices", PRICES, "--xlsx", file("a.xlsx"))
                        .exit())
                .isZero();
        assertThat(Run.of("takeoff", sample, "--prices", PRICES, "--xlsx", file("b.xlsx"))
                        .exit())
                .isZero();
        assertThat(Files.readAllBytes(directory.resolve("a.xlsx")))
                .isEqualTo(Files.readAllBytes(directory.resolve("b.xlsx")));
        assertThat(String.join("", sheets("a.xlsx")))
                .contains(
                        "name=\"Summary\"",
                        "name=\"Detail\"",
                        "name=\"By size\"",
                        "name=\"Joints\"",
                        "name=\"Assumptions\"",
                        "name=\"Findings\"");
    }

    @Test
    void aFileThatExistsIsKeptUnlessForced() throws IOException {
        Files.writeString(directory.resolve("a.csv"), "mine");
        String[] args = {"takeoff", Run.sample("pump-house"), "--csv", file("a.csv")};
        Run refused = Run.of(args);
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains("a.csv: exists already", "--force");
        assertThat(directory.resolve("a.csv")).hasContent("mine");

        assertThat(Run.of("takeoff", Run.sample("pump-house"), "--force", "--csv", file("a.csv"))
                        .exit())
                .isZero();
        assertThat(Files.readString(directory.resolve("a.csv"))).startsWith("line,");
        assertThat(directory).isDirectoryNotContaining("glob:**.part");
    }

    /** From a result, whose numbers are rounded to 0.01 ft, as from the site: this sample has no finer numbers. */
    @Test
    void aResultIsTakenOffAsTheSiteItself() throws IOException {
        String sample = Run.sample("hall-timber");
        Files.writeString(
                directory.resolve("r.json"),
                Run.of("route", "--json", "--prices", PRICES, sample).out());
        Run ofSite = Run.of("takeoff", sample, "--prices", PRICES);
        Run ofResult = Run.of("takeoff", sample, file("r.json"), "--prices", PRICES);
        assertThat(ofSite.out()).contains("Installed cost of the least-copper route: $");
        String told = "Status as the result file states it: least copper.";
        assertThat(ofResult.out())
                .contains("Installed cost of the route of the result file: $", told)
                .doesNotContain("least-copper route");
        assertThat(afterVerdict(ofResult)).isEqualTo(afterVerdict(ofSite));
        assertThat(ofResult.exit()).isEqualTo(ofSite.exit()).isZero();
    }

    private static String afterVerdict(Run run) {
        return run.out().substring(run.out().indexOf("LENGTHS"));
    }

    /** Both have the same ids: only the name tells them apart. */
    @Test
    void theResultOfAnotherSiteIsRefused() throws IOException {
        Files.writeString(
                directory.resolve("r.json"),
                Run.of("route", "--json", Run.sample("plant-block")).out());
        Run run = Run.of("takeoff", Run.sample("hall-steel"), file("r.json"), "--csv", file("a.csv"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).startsWith(file("r.json") + ":3: site: the result is of another site, ");
        assertThat(directory.resolve("a.csv")).doesNotExist();
    }

    private String nameless(String sample, String as) throws IOException {
        String text = Files.readString(Path.of(Run.sample(sample))).replaceFirst("\"name\": \"[^\"]*\",", "");
        return Files.writeString(directory.resolve(as), text).toString();
    }

    /** Without a name it is called by its file; under another file name it is the same site all the same. */
    @Test
    void theResultOfASiteWithoutANameFitsItUnderAnotherFileName() throws IOException {
        String before = nameless("hall-steel", "before.site.json");
        Files.writeString(
                directory.resolve("r.json"), Run.of("route", "--json", before).out());
        String after = nameless("hall-steel", "after.site.json");
        Run takeoff = Run.of("takeoff", after, file("r.json"));
        Run review = Run.of("review", after, file("r.json"));

        assertThat(takeoff.err()).isEmpty();
        assertThat(takeoff.exit()).isZero();
        assertThat(review.out()).contains("Complies.").doesNotContain("CAUTION site");
    }

    /** Another building, and the same with another service. */
    @Test
    void theResultOfASiteWithoutANameIsKnownByWhatTheSiteIs() throws IOException {
        String site = nameless("hall-steel", "before.site.json");
        Files.writeString(
                directory.resolve("r.json"), Run.of("route", "--json", site).out());
        String other = nameless("plant-block", "other.site.json");
        String larger = Files.writeString(
                        directory.resolve("larger.site.json"),
                        Files.readString(Path.of(site)).replaceFirst("\"sets\": 4", "\"sets\": 5"))
                .toString();
        for (String each : List.of(other, larger)) {
            Run run = Run.of("takeoff", each, file("r.json"));
            assertThat(run.exit()).isEqualTo(2);
            assertThat(run.err())
                    .hasLineCount(1)
                    .contains(":3: site: the result is of another site, \"before\", not of ", "electrodes differ");
        }
    }

    /** Edited to look least at another size and length. */
    @Test
    void aResultThatWasEditedIsRefused() throws IOException {
        String sample = Run.sample("hall-steel");
        String result = Run.of("route", "--json", sample).out();
        String longer = result.replaceFirst("\"total\": [0-9.]+", "\"total\": 900");
        String thinner = result.replaceFirst("\"size\": \"3/0 AWG\",\\n", "\"size\": \"6 AWG\",\n");
        assertThat(longer).isNotEqualTo(result);
        assertThat(thinner).isNotEqualTo(result);
        Files.writeString(directory.resolve("longer.json"), longer);
        Files.writeString(directory.resolve("thinner.json"), thinner);
        Run ofLonger = Run.of("takeoff", sample, file("longer.json"));
        Run ofThinner = Run.of("takeoff", sample, file("thinner.json"));
        assertThat(ofLonger.err()).contains(": conductors[0].length.total: is 900.00 ft, but its parts add up to ");
        assertThat(ofThinner.err()).contains(": sizes: have ", ": copper.weight: is ");
        assertThat(List.of(ofLonger.exit(), ofThinner.exit())).containsOnly(2);
        assertThat(ofLonger.out() + ofThinner.out()).isEmpty();
    }

    @Test
    void standardOutputIsNoFileAndADirectoryIsToldAtOnce() {
        String sample = Run.sample("hall-steel");
        Run dash = Run.of("takeoff", sample, "--csv", "-");
        assertThat(dash.exit()).isEqualTo(2);
        assertThat(dash.err()).contains("--csv -: standard output has the answer. Name a file");
        Run directoryItself = Run.of("takeoff", sample, "--csv", directory.toString());
        assertThat(directoryItself.exit()).isEqualTo(2);
        assertThat(directoryItself.err())
                .contains("is a directory. Name a file in it")
                .doesNotContain("--force");
        Run nowhere = Run.of("takeoff", sample, "--csv", file("no/x.csv"), "--force");
        assertThat(nowhere.exit()).isEqualTo(2);
        assertThat(nowhere.err()).contains("lies in a directory that does not exist. Make it first");
    }

    @Test
    void everySampleIsPricedByTheDemoBook() throws IOException {
        for (Path sample : SamplesTest.samples()) {
            Run run = Run.of("takeoff", sample.toString(), "--prices", PRICES, "--csv", file("s.csv"), "--force");
            assertThat(run.err()).isEmpty();
            assertThat(run.out())
                    .contains("Installed cost of", "Demo figures, not quotes")
                    .doesNotContain("NOT PRICED");
            long cents = records(Files.readString(directory.resolve("s.csv"))).stream()
                    .filter(TakeOffFilesTest::counts)
                    .mapToLong(record -> Long.parseLong(record.get("cost").replace(".", "")))
                    .sum();
            assertThat(cents).isPositive();
        }
    }

    /** The published schemas, by an independent validator. */
    @Test
    void everySampleHasALeastCostProvenLeast() throws IOException {
        for (Path sample : SamplesTest.samples()) {
            Run run = Run.of("route", "--objective", "cost", "--prices", PRICES, "--json", sample.toString());
            assertThat(run.err()).isEmpty();
            assertThat(run.exit()).isZero();
            assertThat(run.out()).contains("\"objective\": \"cost\"", "\"status\": \"least\"", "\"cost\": {");
            assertThat(SamplesTest.faults("result", run.out())).isEmpty();
        }
        assertThat(SamplesTest.faults("prices", Files.readString(Path.of(PRICES))))
                .isEmpty();
    }

    @Test
    void bothOptimaStandSideBySide() {
        Run run = Run.of("route", "--objective", "cost", "--prices", PRICES, Run.sample("hall-steel"));
        assertThat(run.out())
                .contains("Least cost, proven: $", "LEAST COST AND LEAST COPPER", "least copper  19.98 lb");
    }

    /** Stopped at once, neither search has a proof: nothing is called least, and the headline says why. */
    @Test
    void whatIsNotProvenIsCalledBestFound() throws IOException {
        Files.writeString(directory.resolve("many.site.json"), manyRods());
        Run run = Run.watched(
                new Watch(false, () -> true),
                "route",
                "--objective",
                "cost",
                "--prices",
                PRICES,
                file("many.site.json"));
        assertThat(run.out())
                .contains(
                        "BEST FOUND FOR COST AND BEST FOUND FOR COPPER",
                        "  best found for cost ",
                        "  best found for copper ",
                        "possible.\n  The search was stopped before its proof; with more time")
                .doesNotContain("least cost", "least copper", "NOTE proof");
    }

    @Test
    void aTimeLimitThatEndedTheSearchIsNamed() throws IOException {
        Files.writeString(directory.resolve("many.site.json"), manyRods());
        String headed = "possible.\n  The time limit ended the search before its proof; a longer one may";
        Run run = Run.of("route", "--time-limit", "0.001", file("many.site.json"));
        assertThat(run.out()).contains(headed).doesNotContain("NOTE proof");
        assertThat(Run.of("route", "--time-limit", "0.001", "--json", file("many.site.json"))
                        .out())
                .contains("\"rule\": \"proof\"", "\"subject\": \"route\"");
    }

    /** 40 rods scattered over an open floor. */
    private static String manyRods() {
        String rods = IntStream.range(0, 40)
                .mapToObj(i -> String.format(
                        "{\"id\": \"R%d\", \"type\": \"rod\", \"rodLength\": 10, \"diameter\": 0.75,"
                                + " \"connections\": [{\"at\": [%d, %d], \"height\": 1}]}",
                        i, 10 + i * 37 % 181, 10 + i * 53 % 127))
                .collect(Collectors.joining(", "));
        return """
                {"format": "bondspan-site/1", "name": "Rods", "adoption": "example", "makeUpPerEnd": 3,
                 "levels": [{"id": "L1", "outline": [[0, 0], [200, 0], [200, 140], [0, 140]], "open": {"height": 10}}],
                 "services": [{"id": "S", "ungrounded": {"material": "copper", "size": "3/0 AWG", "sets": 1},
                   "connections": [{"at": [2, 2], "height": 5}]}],
                 "electrodes": [%s]}
                """.formatted(rods);
    }

    @Test
    void twoFilesOfOneNameAreRefused() throws IOException {
        Run run = Run.of("takeoff", Run.sample("pump-house"), "--csv", file("one"), "--xlsx", file("./one"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("name the same file");
        assertThat(directory).isEmptyDirectory();
    }

    @Test
    void aPriceThatIsMissingIsNamedAndNothingAnswered() throws IOException {
        String book = Files.readString(Path.of(PRICES)).replaceAll("\"rod-clamp\": \\{[^}]*},", "");
        Files.writeString(directory.resolve("p.json"), book);
        Run run = Run.of("route", "--objective", "cost", "--prices", file("p.json"), Run.sample("hall-steel"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .isEqualTo(file("p.json") + ": connections.rod-clamp.price: is missing\n" + file("p.json")
                        + ": connections.rod-clamp.hours: is missing\n"
                        + "State them where the prices are, see schema prices, or route without --objective cost.\n");
    }
}
