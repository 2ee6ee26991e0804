package org.bondspan.price;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.units.Length;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;

class RatesTest {
    private static final PriceBook NOTHING = new PriceBook(
            "x.prices.json",
            "",
            "X",
            "",
            "USD",
            Optional.empty(),
            Optional.empty(),
            Map.of(),
            Optional.empty(),
            Map.of(),
            List.of());

    private static CopperPrice copper(String perPound, String ratio) {
        return new CopperPrice(new BigDecimal(perPound), new BigDecimal(ratio), "2025-01-01", "");
    }

    /**
     * Bare strand of ASTM B8 weighs 51.0 lb (8 AWG), 128.9 lb (4 AWG) and 653.3 lb (4/0 AWG) per 1000 ft, so at 5.00
     * per lb times 1.35 they cost 344.25, 870.075 and 4,409.775.
     */
    @Test
    void copperCostsItsWeightOfAstmB8() {
        CopperPrice price = copper("5.00", "1.35");
        assertThat(price.perThousandFeet(WireSize.AWG_8)).isEqualTo(Money.ofCents(34_425));
        assertThat(price.perThousandFeet(WireSize.AWG_4)).isEqualTo(Money.ofCents(87_008));
        assertThat(price.perThousandFeet(WireSize.AWG_4_0)).isEqualTo(Money.ofCents(440_978));
    }

    @Test
    void namesEveryFieldThatIsMissingOnce() {
        Rates rates = new Rates(NOTHING);
        assertThat(rates.findConductor(WireSize.AWG_6)).isEmpty();
        assertThat(rates.findLabor(WireSize.AWG_6, new Band(Installation.EXPOSED, BigDecimal.ONE)))
                .isEmpty();
        assertThat(rates.findInstalled(ConnectionKind.ROD_CLAMP)).isEmpty();
        assertThat(rates.findInstalled(ConnectionKind.ROD_CLAMP)).isEmpty();
        assertThat(rates.findRaceway()).isEmpty();
        assertThat(rates.missing())
                .containsExactly(
                        "x.prices.json: copper: is missing, and conductors has no per1000ft for 6 AWG",
                        "x.prices.json: conductors: has no hours.exposed for 6 AWG",
                        "x.prices.json: connections.rod-clamp.price: is missing",
                        "x.prices.json: connections.rod-clamp.hours: is missing",
                        "x.prices.json: raceway.per1000ft: is missing");
    }

    /** From 3 ft below the floor to 25 ft above it, with factors from 10 ft and 20 ft on: 3 + 10 + 10 + 5 ft. */
    @Test
    void whatStandsUprightIsCutWhereTheFactorChanges() {
        Bands bands = new Bands(List.of(
                new HeightFactor(Length.ofFeet(10), new BigDecimal("1.1")),
                new HeightFactor(Length.ofFeet(20), new BigDecimal("1.2"))));
        assertThat(bands.of(WireSize.AWG_6, Length.ofFeet(28), Length.ofFeet(-3), Length.ofFeet(25)))
                .containsExactly(
                        part(Installation.BURIED, "1", 3),
                        part(Installation.EXPOSED, "1", 10),
                        part(Installation.EXPOSED, "1.1", 10),
                        part(Installation.EXPOSED, "1.2", 5));
    }

    @Test
    void aHeightIsExceededOnlyAboveIt() {
        Bands bands = new Bands(List.of(new HeightFactor(Length.ofFeet(10), new BigDecimal("1.1"))));
        assertThat(bands.of(WireSize.AWG_8, Length.ofFeet(7), Length.ofFeet(10), Length.ofFeet(10)))
                .containsExactly(part(Installation.RACEWAY, "1", 7));
        Length above = Length.ofNanometres(Length.ofFeet(10).nanometres() + 1);
        assertThat(bands.of(WireSize.AWG_6, Length.ofFeet(7), above, above))
                .containsExactly(part(Installation.EXPOSED, "1.1", 7));
    }

    private static Bands.Part part(Installation installation, String factor, long feet) {
        return new Bands.Part(
                new Band(installation, factor.equals("1") ? BigDecimal.ONE : new BigDecimal(factor)),
                Length.ofFeet(feet));
    }
}
