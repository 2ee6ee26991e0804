package org.bondspan.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/** Divides what is installed by how: in raceway, buried, exposed, and by factors of height. */
public final class Bands {
    private final List<HeightFactor> heights;

    public Bands(List<HeightFactor> heights) {
        this.heights = List.copyOf(heights);
    }

    /** A part of a length that lies in one band. */
    public record Part(Band band, Length length) {}

    /**
     * A length between two heights above the floor. What stands upright is cut at the heights where factors change, and
     * at the floor, below which it is buried; the rest lies in one band. Smaller than 6 AWG it is in raceway.
     */
    public List<Part> of(WireSize size, Length length, Length lowest, Length highest) {
        List<Part> parts = new ArrayList<>();
        Length from = lowest;
        Length left = length;
        for (Length cut : cuts()) {
            boolean between = from.isLessThan(cut) && cut.isLessThan(highest);
            if (between && cut.minus(from).isLessThan(left)) {
                parts.add(new Part(band(size, from, cut), cut.minus(from)));
                left = left.minus(cut.minus(from));
                from = cut;
            }
        }
        parts.add(new Part(band(size, from, highest), left));
        return parts;
    }

    private List<Length> cuts() {
        List<Length> cuts = new ArrayList<>(List.of(Length.ZERO));
        heights.forEach(height -> cuts.add(height.above()));
        return cuts;
    }

    /** Of what lies between two neighbouring cuts, or at one height. */
    private Band band(WireSize size, Length lowest, Length highest) {
        boolean buried = lowest.isLessThan(Length.ZERO);
        BigDecimal factor = BigDecimal.ONE;
        for (HeightFactor height : heights) {
            if (height.above().isLessThan(highest)) {
                factor = height.factor();
            }
        }
        Installation exposed = buried ? Installation.BURIED : Installation.EXPOSED;
        return new Band(size.needsRaceway() ? Installation.RACEWAY : exposed, factor);
    }
}
