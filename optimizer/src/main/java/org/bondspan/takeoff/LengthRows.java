package org.bondspan.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Piece;
import org.bondspan.price.Band;
import org.bondspan.price.Bands;
import org.bondspan.price.HeightFactor;
import org.bondspan.price.Installation;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.Weight;

/** Rows of conductors and of raceway around them, one for each way in which a part is installed. */
final class LengthRows {
    private final Site site;
    private final Bands bands;
    private final Optional<Pricing> pricing;

    LengthRows(Site site, List<HeightFactor> heights, Optional<Pricing> pricing) {
        this.site = site;
        this.bands = new Bands(heights);
        this.pricing = pricing;
    }

    List<Row> of(Conductor conductor) {
        Map<Band, Length> parts = parts(conductor);
        List<Row> rows = new ArrayList<>();
        Length makeUp = conductor.length().makeUp();
        for (Map.Entry<Band, Length> part : parts.entrySet()) {
            Length own = part.getValue().isLessThan(makeUp) ? part.getValue() : makeUp;
            makeUp = makeUp.minus(own);
            rows.add(conductor(conductor, part.getKey(), quantity(part.getValue(), own)));
        }
        parts.forEach((band, length) -> {
            if (band.installation() == Installation.RACEWAY) {
                rows.add(raceway(conductor, band, quantity(length, Length.ZERO)));
            }
        });
        return rows;
    }

    /** Its whole length by how it is installed; a result that does not say how high counts as at the floor. */
    private Map<Band, Length> parts(Conductor conductor) {
        List<Piece> pieces = conductor.pieces().isEmpty()
                ? List.of(new Piece(conductor.length().total(), Length.ZERO, Length.ZERO))
                : conductor.pieces();
        Map<Band, Length> parts = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            bands.of(conductor.size(), piece.length(), piece.lowest(), piece.highest())
                    .forEach(part -> parts.merge(part.band(), part.length(), Length::plus));
        }
        parts.values().removeIf(Length::isZero);
        return parts;
    }

    private Quantity quantity(Length measured, Length makeUp) {
        Length waste = measured.increasedBy(site.wastePercent()).minus(measured);
        return new Quantity(measured.minus(makeUp), makeUp, waste, 0);
    }

    private Row conductor(Conductor conductor, Band band, Quantity quantity) {
        return new Row(
                RowKind.CONDUCTOR,
                conductor.id(),
                "bare copper, " + conductor.role().label().replace('-', ' '),
                Optional.of(conductor.size()),
                words(band),
                Optional.of(conductor.from()),
                Optional.of(conductor.to()),
                quantity,
                Weight.of(conductor.size(), quantity.purchase()),
                pricing.map(prices -> prices.conductor(conductor.size(), band, quantity.measured()))
                        .orElse(RowMoney.NONE));
    }

    private Row raceway(Conductor conductor, Band band, Quantity quantity) {
        return new Row(
                RowKind.RACEWAY,
                conductor.id(),
                "raceway around " + conductor.size().label() + ", 250.64(B)",
                Optional.empty(),
                words(band),
                Optional.of(conductor.from()),
                Optional.of(conductor.to()),
                quantity,
                Weight.ZERO,
                pricing.map(prices -> prices.raceway(band, quantity.measured())).orElse(RowMoney.NONE));
    }

    private static String words(Band band) {
        String factor = band.factor().compareTo(BigDecimal.ONE) == 0
                ? ""
                : ", labor times " + band.factor().toPlainString();
        return band.installation().label() + factor;
    }
}
