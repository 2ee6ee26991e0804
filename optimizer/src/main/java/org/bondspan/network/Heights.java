package org.bondspan.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bondspan.layout.Piece;
import org.bondspan.site.Level;
import org.bondspan.units.Length;

/** How high copper runs above the floor that one stands on to install it. */
final class Heights {
    private final Network network;

    Heights(Network network) {
        this.network = network;
    }

    /** Copper of that length between two places. */
    Piece between(int from, int to, Length length) {
        NetworkArrays arrays = network.arrays();
        int lower = arrays.elevation(from) <= arrays.elevation(to) ? from : to;
        int higher = lower == from ? to : from;
        long floor = floorBelow(lower);
        Length lowest = Length.ofNanometres(arrays.elevation(lower) - floor);
        Length highest = Length.ofNanometres(arrays.elevation(higher) - floor);
        boolean vertical = arrays.at(from).equals(arrays.at(to)) && length.equals(highest.minus(lowest));
        return new Piece(length, vertical ? lowest : highest, highest);
    }

    /** Copper of that length at one place. */
    Piece at(int place, Length length) {
        return between(place, place, length);
    }

    /** That of its own level, or what lies below that where the place is lower and there is another level. */
    private long floorBelow(int place) {
        long elevation = network.arrays().elevation(place);
        long own = network.site()
                .levels()
                .get(network.arrays().level(place))
                .floor()
                .nanometres();
        if (elevation >= own) {
            return own;
        }
        List<Long> floors = network.site().levels().stream()
                .map(Level::floor)
                .map(Length::nanometres)
                .sorted(Comparator.reverseOrder())
                .toList();
        return floors.stream().filter(floor -> floor <= elevation).findFirst().orElse(floors.get(floors.size() - 1));
    }

    /** The same copper in fewer pieces, in the same order. */
    static List<Piece> merged(List<Piece> pieces) {
        List<Piece> merged = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.length().isZero()) {
                continue;
            }
            int last = merged.size() - 1;
            if (last >= 0 && isLevel(merged.get(last), piece)) {
                Piece before = merged.get(last);
                merged.set(last, new Piece(before.length().plus(piece.length()), piece.lowest(), piece.highest()));
            } else if (last >= 0 && isStacked(merged.get(last), piece)) {
                Piece before = merged.get(last);
                boolean up = before.highest().equals(piece.lowest());
                merged.set(
                        last,
                        new Piece(
                                before.length().plus(piece.length()),
                                up ? before.lowest() : piece.lowest(),
                                up ? piece.highest() : before.highest()));
            } else {
                merged.add(piece);
            }
        }
        return merged;
    }

    private static boolean isLevel(Piece one, Piece other) {
        return one.lowest().equals(one.highest())
                && other.lowest().equals(other.highest())
                && one.lowest().equals(other.lowest());
    }

    private static boolean isStacked(Piece one, Piece other) {
        return isVertical(one)
                && isVertical(other)
                && (one.highest().equals(other.lowest()) || one.lowest().equals(other.highest()));
    }

    private static boolean isVertical(Piece piece) {
        return !piece.lowest().equals(piece.highest());
    }
}
