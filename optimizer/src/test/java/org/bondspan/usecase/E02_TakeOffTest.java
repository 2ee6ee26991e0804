package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.bondspan.io.PriceReader;
import org.bondspan.io.SiteReader;
import org.bondspan.report.Ink;
import org.bondspan.report.TakeOffCsv;
import org.bondspan.report.TakeOffText;
import org.bondspan.site.Site;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.Total;
import org.bondspan.units.Money;
import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: quantities and money of a route, row by row, against a take-off worked out by hand. */
class E02_TakeOffTest {
    private static final String BODY = """
            "makeUpPerEnd": 2, "wastePercent": 10,
            "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
            "electrodes": [
              {"id": "R", $rod, $at(10, 5)},
              {"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}
            ]""";

    /** Copper at 4.00 per lb times 1.25: 5.00 per lb of conductor. */
    private static final String BOOK = """
            {"format": "bondspan-prices/1", "name": "By hand",
             "copper": {"perPound": 4, "ratio": 1.25, "date": "2025-01-01", "source": "test"},
             "labor": {"perHour": 50},
             "conductors": [
               {"size": "2 AWG", "hours": {"exposed": 16}},
               {"size": "6 AWG", "hours": {"exposed": 8}, "reel": 3}
             ],
             "connections": {
               "service-lug": {"price": 10, "hours": 0.5},
               "pipe-clamp": {"price": 14, "hours": 0.6},
               "rod-clamp": {"price": 6, "hours": 0.3},
               "exothermic-tap": {"price": 20, "hours": 0.8},
               "splice": {"price": 5, "hours": 0.2}
             }}""";

    private static TakeOff takeOff(String body, String book) {
        Site site = SiteReader.parse(Sites.openFloor(40, 20, body), "test.site.json");
        Site priced = site.withPrices(PriceReader.parse(book, "test.prices.json"));
        return TakeOffSite.of(priced, RouteSite.of(priced));
    }

    /** Cells of the rows that count something; those that say what holds of all count nothing. */
    private static List<String> rows(TakeOff takeOff, String... columns) throws IOException {
        List<String> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(TakeOffCsv.of(takeOff)), format)) {
            for (CSVRecord record : parser) {
                if (!record.get("unit").isEmpty()) {
                    rows.add(Stream.of(columns).map(record::get).collect(Collectors.joining(" | ")));
                }
            }
        }
        return rows;
    }

    /**
     * 2 AWG 10 ft from S to the tap and 20 ft on to W, 6 AWG 5 ft down to R; 2 ft make-up at S, W and R; a tenth more
     * is bought. Weights of ASTM B8: 204.9 and 81.0 lb per 1000 ft.
     *
     * <pre>
     * C1 2 AWG  10 + 2 = 12 ft, buys 13.2: 13.2 x 0.2049 = 2.70468 lb
     * C2 2 AWG  20 + 2 = 22 ft, buys 24.2: 24.2 x 0.2049 = 4.95858 lb
     * C3 6 AWG   5 + 2 =  7 ft, buys  7.7:  7.7 x 0.0810 = 0.62370 lb
     * </pre>
     */
    @Test
    void lengthsAndWeightsAreThoseWorkedOutByHand() throws IOException {
        assertThat(rows(
                                takeOff(BODY, BOOK),
                                "item",
                                "size",
                                "net_length",
                                "make_up",
                                "waste",
                                "purchase_quantity",
                                "unit",
                                "purchase_1000_ft",
                                "weight")
                        .subList(0, 3))
                .containsExactly(
                        "C1 | 2 AWG | 10 | 2 | 1.2 | 13.2 | ft | 0.0132 | 2.7",
                        "C2 | 2 AWG | 20 | 2 | 2.2 | 24.2 | ft | 0.0242 | 4.96",
                        "C3 | 6 AWG | 5 | 2 | 0.7 | 7.7 | ft | 0.0077 | 0.62");
    }

    /**
     * 2 AWG 204.9 x 5.00 = 1,024.50 per 1000 ft, labor 16 h x 50 = 800; 6 AWG 405.00 and 400.
     *
     * <pre>
     * C1  13.2 x 1.0245 = 13.5234   12 x 0.8 =  9.60
     * C2  24.2 x 1.0245 = 24.7929   22 x 0.8 = 17.60
     * C3   7.7 x 0.4050 =  3.1185    7 x 0.4 =  2.80
     * lug 10 + 25 = 35; pipe clamp 14 + 30 = 44; rod clamp 6 + 15 = 21; tap 20 + 40 = 60
     * splices of C3: 7 ft from reels of 3 ft, 2 x (5 + 10) = 30
     * exact: 41.4348 + 30.00 + 35 + 44 + 21 + 60 + 30 = 261.4348; rows: 13.52 + 24.79 + 3.12 = 41.43, the rest is exact
     * </pre>
     */
    @Test
    void moneyIsThatWorkedOutByHand() throws IOException {
        TakeOff takeOff = takeOff(BODY, BOOK);
        assertThat(rows(
                        takeOff,
                        "kind",
                        "item",
                        "purchase_quantity",
                        "unit_price",
                        "material",
                        "labor_hours",
                        "labor",
                        "cost"))
                .containsExactly(
                        "conductor | C1 | 13.2 | 1024.50 | 13.52 | 0.192 | 9.60 | 23.12",
                        "conductor | C2 | 24.2 | 1024.50 | 24.79 | 0.352 | 17.60 | 42.39",
                        "conductor | C3 | 7.7 | 405.00 | 3.12 | 0.056 | 2.80 | 5.92",
                        "connection | C1 | 1 | 10.00 | 10.00 | 0.5 | 25.00 | 35.00",
                        "connection | C2 | 1 | 14.00 | 14.00 | 0.6 | 30.00 | 44.00",
                        "connection | C3 | 1 | 6.00 | 6.00 | 0.3 | 15.00 | 21.00",
                        "tap | J1 | 1 | 20.00 | 20.00 | 0.8 | 40.00 | 60.00",
                        "splice | C3 | 2 | 5.00 | 10.00 | 0.4 | 20.00 | 30.00");
        Total total = takeOff.total().orElseThrow();
        assertThat(total.total()).isEqualTo(Money.ofCents(26_143));
        assertThat(total.material()).isEqualTo(Money.ofCents(10_143)); // 41.43 + 10 + 14 + 6 + 20 + 10
        assertThat(total.labor()).isEqualTo(Money.ofCents(16_000)); // 30 + 25 + 30 + 15 + 40 + 20
        assertThat(total.rounding()).isEqualTo(Money.ZERO);
        assertThat(total.hours()).isEqualByComparingTo("3.2"); // 160 / 50
    }

    /** Three rows of half a cent each: 10 ft at 0.50 per 1000 ft is 0.005, 0.01 in a row; exact 0.015, 0.02 once. */
    @Test
    void whatRoundingOfRowsMakesIsARowOfItsOwn() {
        TakeOff takeOff = takeOff("""
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [
                  {"id": "R", $rod, $at(10, 10)},
                  {"id": "Q", $rod, $at(10, 0)},
                  {"id": "T", $rod, $at(20, 0)}
                ]""", """
                {"format": "bondspan-prices/1", "labor": {"perHour": 0},
                 "conductors": [{"size": "6 AWG", "per1000ft": 0.5, "hours": {"exposed": 1}}],
                 "connections": {
                   "service-lug": {"price": 0, "hours": 0}, "rod-clamp": {"price": 0, "hours": 0},
                   "exothermic-tap": {"price": 0, "hours": 0}
                 }}""");
        Total total = takeOff.total().orElseThrow();
        assertThat(total.material()).isEqualTo(Money.ofCents(3));
        assertThat(total.rounding()).isEqualTo(Money.ofCents(-1));
        assertThat(total.total()).isEqualTo(Money.ofCents(2));
        assertThat(sums(takeOff)) // material, hours, labor, other, cost
                .contains("sum of rows 0.03 0.03 0.00 0.00 0.03", "rounding of rows -0.01", "all 0.02")
                .doesNotContain("all 0.03");
    }

    /** Of the table that sums up, with one blank between its cells. */
    private static List<String> sums(TakeOff takeOff) {
        String text = TakeOffText.of(takeOff, Ink.PLAIN);
        return text.substring(text.indexOf("\nSUMS\n"), text.indexOf("\nASSUMPTIONS"))
                .lines()
                .map(line -> line.strip().replaceAll(" +", " "))
                .toList();
    }

    /** Material 101.43, labor 160.00 and nothing else make 261.43; 3.2 hours. */
    @Test
    void totalsAddUpFromLeftToRight() {
        assertThat(sums(takeOff(BODY, BOOK))).contains("all 101.43 3.20 160.00 0.00 261.43");
    }

    @Test
    void withoutPricesThereAreQuantitiesOnly() throws IOException {
        Site site = SiteReader.parse(Sites.openFloor(40, 20, BODY), "test.site.json");
        TakeOff takeOff = TakeOffSite.of(site, RouteSite.of(site));
        assertThat(takeOff.total()).isEmpty();
        assertThat(takeOff.missing()).isEmpty();
        assertThat(rows(takeOff, "item", "purchase_quantity", "cost"))
                .containsExactly(
                        "C1 | 13.2 | ",
                        "C2 | 24.2 | ",
                        "C3 | 7.7 | ",
                        "C1 | 1 | ",
                        "C2 | 1 | ",
                        "C3 | 1 | ",
                        "J1 | 1 | ");
    }

    @Test
    void whatIsNotStatedIsNamedAndNothingIsSummed() throws IOException {
        TakeOff takeOff = takeOff(BODY, BOOK.replace("\"rod-clamp\": {\"price\": 6, \"hours\": 0.3},", ""));
        assertThat(takeOff.total()).isEmpty();
        assertThat(takeOff.missing())
                .containsExactly(
                        "test.prices.json: connections.rod-clamp.hours: is missing",
                        "test.prices.json: connections.rod-clamp.price: is missing");
        assertThat(rows(takeOff, "item", "cost").subList(3, 7))
                .containsExactly("C1 | 35.00", "C2 | 44.00", "C3 | ", "J1 | 60.00");
    }

    /** 8 AWG for services up to 2 AWG copper (Table 250.66), in raceway, 250.64(B): 30 + 2 x 2 ft, a tenth more. */
    @Test
    void smallerThanSixAwgTakesRaceway() throws IOException {
        TakeOff takeOff = takeOff("""
                "makeUpPerEnd": 2, "wastePercent": 10,
                "services": [{"id": "S", $copper(2 AWG), $at(0, 0)}],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}]""", """
                {"format": "bondspan-prices/1", "labor": {"perHour": 50},
                 "conductors": [{"size": "8 AWG", "per1000ft": 300, "hours": {"raceway": 10}}],
                 "raceway": {"per1000ft": 1000, "hours": 40},
                 "connections": {
                   "service-lug": {"price": 10, "hours": 0.5}, "pipe-clamp": {"price": 14, "hours": 0.6}
                 }}""");
        assertThat(rows(takeOff, "kind", "section", "installation", "purchase_quantity", "material", "labor")
                        .subList(0, 2))
                .containsExactly(
                        "conductor | 26 05 26 | raceway | 37.4 | 11.22 | 17.00", // 37.4 x 0.3; 34 x 0.5
                        "raceway | 26 05 33 | raceway | 37.4 | 37.40 | 68.00"); // 37.4 x 1; 34 x 2
    }
}
