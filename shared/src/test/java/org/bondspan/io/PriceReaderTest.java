package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.price.ConductorPrice;
import org.bondspan.price.ConnectionKind;
import org.bondspan.price.ConnectionPrice;
import org.bondspan.price.CopperPrice;
import org.bondspan.price.HeightFactor;
import org.bondspan.price.Installation;
import org.bondspan.price.LaborPrice;
import org.bondspan.price.PriceBook;
import org.bondspan.price.RacewayPrice;
import org.bondspan.units.Length;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PriceReaderTest {
    private static BigDecimal number(String digits) {
        return new BigDecimal(digits);
    }

    @Test
    void readsThePricesOfASite() {
        PriceBook book = SiteReader.parse(Fixtures.text("full.site.json"), "full.site.json")
                .prices()
                .orElseThrow();
        assertThat(book)
                .isEqualTo(new PriceBook(
                        "full.site.json",
                        "prices",
                        "Office",
                        "",
                        "USD",
                        Optional.of(new CopperPrice(number("4.5"), number("1.2"), "2025-01-31", "supplier")),
                        Optional.of(new LaborPrice(number("80"), "agreement")),
                        Map.of(
                                WireSize.AWG_3_0,
                                new ConductorPrice(
                                        Optional.of(Money.ofCents(300_025)),
                                        Map.of(
                                                Installation.EXPOSED, number("24"),
                                                Installation.RACEWAY, number("33"),
                                                Installation.BURIED, number("19.5")),
                                        Optional.of(Length.ofFeet(500)),
                                        "list")),
                        Optional.of(new RacewayPrice(
                                "PVC", Optional.of(Money.ofCents(90_000)), Optional.of(number("40")), "list")),
                        Map.of(
                                ConnectionKind.ROD_CLAMP,
                                new ConnectionPrice(
                                        Optional.of(Money.ofCents(600)), Optional.of(number("0.3")), "list"),
                                ConnectionKind.SPLICE,
                                new ConnectionPrice(Optional.empty(), Optional.of(number("0.5")), "")),
                        List.of(new HeightFactor(Length.ofFeet(10), number("1.1")))));
    }

    @Test
    void anEmptyBookStatesNothing() {
        PriceBook book = PriceReader.parse("{\"format\": \"bondspan-prices/1\"}", "empty.prices.json");
        assertThat(book.name()).isEqualTo("empty.prices.json");
        assertThat(book.currency()).isEqualTo("USD");
        assertThat(book.copper()).isEmpty();
        assertThat(book.labor()).isEmpty();
        assertThat(book.conductors()).isEmpty();
    }

    @Test
    void namesFileLineFieldAndAWayOut() {
        assertThatThrownBy(() -> PriceReader.parse("""
                {
                  "format": "bondspan-prices/1",
                  "connections": {"rod-clam": {"price": 1}},
                  "conductors": [{"size": "6 AWG"}, {"size": "6 AWG"}]
                }""", "x.prices.json"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(
                        "x.prices.json:3: connections.rod-clam: is not a field of connections. Perhaps \"rod-clamp\" is meant.")
                .hasMessageEndingWith("x.prices.json:4: conductors[1].size: is listed twice. Remove one of the two.");
    }

    /** ISO 8601; 2025 has no 29 February, and no month has 40 days. */
    @ParameterizedTest
    @ValueSource(strings = {"2025-13-40", "2025-02-29", "31 January 2025", "2025-1-31"})
    void aPriceHasADayThatThereIs(String day) {
        assertThatThrownBy(() -> PriceReader.parse("""
                        {"format": "bondspan-prices/1",
                         "copper": {"perPound": 4, "ratio": 1.25, "date": "%s"}}""".formatted(day), "p"))
                .isInstanceOf(InputException.class)
                .hasMessage("p:2: copper.date: is not a day. Give the day of the price, such as \"2025-01-31\".");
    }

    @Test
    void aSiteIsNoPriceBook() {
        assertThatThrownBy(() -> PriceReader.parse(Fixtures.text("full.site.json"), "full.site.json"))
                .isInstanceOf(InputException.class)
                .hasMessage("full.site.json:3: format: is not \"bondspan-prices/1\"."
                        + " Write \"bondspan-prices/1\" if this is a price book.");
    }
}
