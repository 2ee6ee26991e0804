package org.bondspan.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.bondspan.price.Band;
import org.bondspan.price.ConnectionKind;
import org.bondspan.price.Rates;
import org.bondspan.site.Wall;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;

/** Puts prices on quantities: material on what is bought, labor on what is installed. */
final class Pricing {
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private final Rates rates;
    private final BigDecimal wastePercent;

    Pricing(Rates rates, BigDecimal wastePercent) {
        this.rates = rates;
        this.wastePercent = wastePercent;
    }

    RowMoney conductor(WireSize size, Band band, Length measured) {
        return ofLength(
                measured,
                rates.findConductor(size),
                rates.findHours(size, band.installation()),
                band.factor(),
                rates.findLabor(size, band),
                rates.conductorSource(size),
                rates.hoursSource(size));
    }

    RowMoney raceway(Band band, Length measured) {
        return ofLength(
                measured,
                rates.findRaceway(),
                rates.findRacewayHours(),
                band.factor(),
                rates.findRacewayLabor(band.factor()),
                rates.racewaySource(),
                rates.racewaySource());
    }

    private RowMoney ofLength(
            Length measured,
            Optional<Money> price,
            Optional<BigDecimal> hours,
            BigDecimal factor,
            Optional<Money> labor,
            String priceSource,
            String laborSource) {
        return new RowMoney(
                price,
                hours,
                factor,
                hours.map(each -> each.multiply(factor).multiply(thousandFeet(measured))),
                price.map(each -> ExactMoney.of(each, measured).increasedBy(wastePercent)),
                labor.map(each -> ExactMoney.of(each, measured)),
                Optional.empty(),
                priceSource,
                laborSource);
    }

    static BigDecimal thousandFeet(Length length) {
        return length.in(LengthUnit.FOOT).divide(THOUSAND, 15, RoundingMode.HALF_UP);
    }

    RowMoney pieces(ConnectionKind kind, int count) {
        Optional<BigDecimal> hours = rates.findConnectionHours(kind);
        return new RowMoney(
                rates.findConnection(kind),
                hours,
                BigDecimal.ONE,
                hours.map(each -> each.multiply(BigDecimal.valueOf(count))),
                rates.findConnection(kind).map(each -> ExactMoney.of(each.times(count))),
                rates.findConnectionLabor(kind).map(each -> ExactMoney.of(each.times(count))),
                Optional.empty(),
                rates.connectionSource(kind),
                rates.connectionSource(kind));
    }

    RowMoney crossing(Wall wall, int count) {
        if (wall.crossing().isEmpty()) {
            rates.note("walls." + wall.id() + ".crossing", "is missing in the site");
        }
        return new RowMoney(
                wall.crossing(),
                Optional.empty(),
                BigDecimal.ONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                wall.crossing().map(each -> ExactMoney.of(each.times(count))),
                "site, wall " + wall.id(),
                "");
    }
}
