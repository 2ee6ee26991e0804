package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.bondspan.finding.Severity;
import org.bondspan.io.PriceReader;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Objective;
import org.bondspan.layout.Protection;
import org.bondspan.layout.Status;
import org.bondspan.price.MissingPriceException;
import org.bondspan.price.PriceBook;
import org.bondspan.site.Site;
import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: the least installed cost, each answer worked out by hand beside its test. */
class H01_LeastCostTest {
    /** Per ft: 8 AWG in raceway 0.30 + 0.50 and 1.00 + 1.50; 6 AWG 0.50 + 0.40; 4 AWG 0.80 + 0.60; 2 AWG 1 + 1. */
    private static String book(String connections, String more) {
        return """
                {"format": "bondspan-prices/1", "labor": {"perHour": 50},
                 "conductors": [
                   {"size": "8 AWG", "per1000ft": 300, "hours": {"exposed": 7, "raceway": 10, "buried": 7}},
                   {"size": "6 AWG", "per1000ft": 500, "hours": {"exposed": 8, "buried": 8}},
                   {"size": "4 AWG", "per1000ft": 800, "hours": {"exposed": 12, "buried": 12}},
                   {"size": "2 AWG", "per1000ft": 1000, "hours": {"exposed": 20, "buried": 20}}
                 ],
                 "raceway": {"per1000ft": 1000, "hours": 30},
                 "connections": {
                   "service-lug": {"price": 10, "hours": 0.5}, "rod-clamp": {"price": 6, "hours": 0.3},
                   "pipe-clamp": {"price": 14, "hours": 0.6}, %s
                 }%s}""".formatted(connections, more);
    }

    private static final String TAPS = """
            "exothermic-tap": {"price": 20, "hours": 0.8}, "irreversible-tap": {"price": 15, "hours": 0.5}""";

    /**
     * A service of 2 AWG copper calls for 8 AWG (Table 250.66), in raceway (250.64(B)): 3.30 per ft. 6 AWG exposed is
     * 0.90 per ft: 34 x 0.90 = 30.60, lug 10 + 25, clamp 14 + 30.
     */
    @Test
    void buysTheLargerSizeThatIsCheaperInstalled() {
        Priced priced = Priced.of(Sites.openFloor(40, 20, """
                "makeUpPerEnd": 2,
                "services": [{"id": "S", $copper(2 AWG), $at(0, 0)}],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}]"""), book(TAPS, ""));
        assertThat(priced.layout().status()).isEqualTo(Status.LEAST);
        assertThat(priced.layout().objective()).isEqualTo(Objective.COST);
        assertThat(priced.routed().sizes()).isEqualTo("6 AWG 34");
        Conductor conductor = priced.layout().conductors().get(0);
        assertThat(conductor.protection()).isEqualTo(Protection.NONE);
        assertThat(conductor.why()).endsWith("; 6 AWG is cheaper installed than 8 AWG");
        assertThat(priced.total()).isEqualByComparingTo("109.60");
        assertThat(priced.takenOff()).isEqualByComparingTo("109.60");
        // 34 x 3.30 = 112.20 in raceway, connections 79.00
        assertThat(priced.ofLeastCopper()).isEqualByComparingTo("191.20");
        assertThat(priced.layout().findings())
                .containsAll(priced.review().findings().stream()
                        .filter(finding -> finding.severity() == Severity.VIOLATION)
                        .toList()); // those of the site, not of the route
    }

    /** Where raceway costs next to nothing 8 AWG stays: 34 x (0.30 + 0.50 + 0.02) = 27.88 and 79.00. */
    @Test
    void keepsTheSmallerSizeWhereItIsCheaper() {
        Priced priced = Priced.of(
                Sites.openFloor(40, 20, """
                        "makeUpPerEnd": 2,
                        "services": [{"id": "S", $copper(2 AWG), $at(0, 0)}],
                        "electrodes": [{"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}]"""),
                book(TAPS, "")
                        .replace(
                                "\"raceway\": {\"per1000ft\": 1000, \"hours\": 30}",
                                "\"raceway\": {\"per1000ft\": 20, \"hours\": 0}"));
        assertThat(priced.routed().sizes()).isEqualTo("8 AWG 34");
        assertThat(priced.total()).isEqualByComparingTo("106.88");
    }

    /** An irreversible tap is 15 + 25, a weld 20 + 40. 2 AWG 30 ft 60.00, 6 AWG 5 ft 4.50, lug 35, clamps 44 and 21. */
    @Test
    void tapsInTheCheaperWay() {
        Priced priced = Priced.of(Sites.openFloor(40, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [
                  {"id": "R", $rod, $at(10, 5)},
                  {"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}
                ]"""), book(TAPS, ""));
        assertThat(priced.layout().joints())
                .singleElement()
                .satisfies(joint -> assertThat(joint.method()).isEqualTo("irreversible"));
        assertThat(priced.total()).isEqualByComparingTo("204.50"); // 60 + 4.50 + 35 + 44 + 21 + 40
    }

    /**
     * Round the end of a wall 30 ft longer, or through it: 6 AWG at 0.90 per ft, so 27.00 more. A run along the wall
     * passes nothing. Ends: lug 35, rod clamp 21.
     */
    @Test
    void goesRoundAWallWhereThatIsCheaper() {
        assertThat(walled("20, 15", "27.01").routed().sizes()).isEqualTo("6 AWG 70");
        assertThat(walled("20, 15", "27.01").total()).isEqualByComparingTo("119.00"); // 63 + 56
        assertThat(walled("20, 15", "26.99").routed().sizes()).isEqualTo("6 AWG 40");
        assertThat(walled("20, 15", "26.99").total()).isEqualByComparingTo("118.99"); // 36 + 56 + 26.99
    }

    /** A wall from side to side is passed, also where a run follows the outline. */
    @Test
    void aWallFromSideToSideIsPassedOnce() {
        Priced priced = walled("20, 20", "500");
        assertThat(priced.total()).isEqualByComparingTo("592.00"); // 36 + 56 + 500
        assertThat(priced.layout().conductors().get(0).crosses()).containsExactly("X");
        assertThat(priced.takenOff()).isEqualByComparingTo("592.00");
    }

    private static Priced walled(String end, String crossing) {
        return Priced.of(Sites.site("""
                        {"id": "L1", "outline": [[0, 0], [40, 0], [40, 20], [0, 20]], "open": {"height": 0},
                         "walls": [{"id": "X", "line": [[20, 0], [%s]], "crossing": %s}]}""".formatted(end, crossing), """
                        "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                        "electrodes": [{"id": "R", $rod, $at(40, 0)}]"""), book(TAPS, ""));
    }

    /** What hangs on a wall is reached from both sides: 20 ft from either, the wall is not passed. */
    @Test
    void whatLiesOnAWallIsReachedFromBothSides() {
        for (int x : new int[] {0, 40}) {
            Priced priced = Priced.of(Sites.site("""
                            {"id": "L1", "outline": [[0, 0], [40, 0], [40, 20], [0, 20]], "open": {"height": 0},
                             "walls": [{"id": "X", "line": [[20, 0], [20, 20]], "crossing": 500}]}""", """
                            "services": [{"id": "S", $copper(350 kcmil), $at(%d, 10)}],
                            "electrodes": [{"id": "R", $rod, $at(20, 10)}]""".formatted(x)), book(TAPS, ""));
            assertThat(priced.total()).isEqualByComparingTo("74.00"); // 18 + 56
        }
    }

    /**
     * A room with its door: walls with a gap of 2 ft from (10, 0) to (10, 8) and (10, 10) to (10, 20) along the way.
     */
    @Test
    void goesThroughTheGapBetweenTwoWalls() {
        Priced priced = Priced.of(Sites.site("""
                        {"id": "L1", "outline": [[0, 0], [20, 0], [20, 20], [0, 20]], "open": {"height": 0},
                         "walls": [{"id": "X", "line": [[10, 0], [10, 8]], "crossing": 99},
                                   {"id": "Y", "line": [[10, 10], [10, 20]], "crossing": 99}]}""", """
                        "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                        "electrodes": [{"id": "R", $rod, $at(20, 0)}]"""), book(TAPS, ""));
        assertThat(priced.routed().sizes()).isEqualTo("6 AWG 36"); // up 8, across 20, down 8
        assertThat(priced.total()).isEqualByComparingTo("88.40"); // 32.40 + 56
    }

    /**
     * Over the ceiling 20 ft at 12 ft, labor twice, or round at the floor by a line of 50 ft. 6 AWG, per ft 0.90 up to
     * 10 ft, 1.30 above. Over: 2 x 10 x 0.90 + 2 x 2 x 1.30 + 20 x 1.30 = 49.20; round: 50 x 0.90 = 45.00.
     */
    @Test
    void workAtHeightCountsAsOftenAsStated() {
        String site = Sites.site(
                "{\"id\": \"L1\", \"outline\": [[0, 0], [40, 0], [40, 20], [0, 20]], \"open\": {\"height\": 12}}", """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(20, 0)}],
                "paths": [{"id": "P", "medium": "copper", "line": [[0, 0], [20, 0]], "length": 50}]""");
        Priced high = Priced.of(site, book(TAPS, ", \"heights\": [{\"above\": 10, \"factor\": 2}]"));
        assertThat(high.routed().sizes()).isEqualTo("6 AWG 50");
        assertThat(high.total()).isEqualByComparingTo("101.00"); // 45 + 56
        assertThat(high.ofLeastCopper()).isEqualByComparingTo("105.20"); // 49.20 + 56
        Priced plain = Priced.of(site, book(TAPS, ""));
        assertThat(plain.routed().sizes()).isEqualTo("6 AWG 44");
        assertThat(plain.total()).isEqualByComparingTo("95.60"); // 39.60 + 56
    }

    @Test
    void everyPriceThatItTakesIsAskedFor() {
        Site site = SiteReader.parse(Sites.openFloor(40, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(10, 5)}, {"id": "Q", $rod, $at(20, 5)}]"""), "test.site.json");
        PriceBook book = PriceReader.parse("""
                {"format": "bondspan-prices/1",
                 "conductors": [{"size": "6 AWG", "per1000ft": 500, "hours": {"exposed": 8}}],
                 "connections": {"service-lug": {"price": 10, "hours": 0.5}, "exothermic-tap": {"price": 10, "hours": 1}}}""", "test.prices.json");
        assertThatThrownBy(() -> RouteSite.leastCost(site.withPrices(book), RouteLimits.none()))
                .isInstanceOf(MissingPriceException.class)
                .hasMessageContaining("test.prices.json: labor.perHour: is missing")
                .hasMessageContaining("test.prices.json: connections.rod-clamp.price: is missing")
                .hasMessageContaining("test.prices.json: connections.rod-clamp.hours: is missing");
    }

    @Test
    void whatCannotBeReachedHasNoCost() {
        Priced priced = Priced.of(Sites.linesOnly(40, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(10, 5)}]"""), book(TAPS, ""));
        assertThat(priced.layout().status()).isEqualTo(Status.IMPOSSIBLE);
        assertThat(priced.layout().cost()).isEmpty();
    }
}
