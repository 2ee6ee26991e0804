package org.bondspan.code;

import java.util.List;
import org.bondspan.site.Material;
import org.bondspan.units.WireSize;

/**
 * Table 250.66: the grounding electrode conductor by the area of the ungrounded service conductors of one phase, all
 * sets added. The numbers are the same in the 2014 to 2023 editions (public copies of the table agree). Band limits
 * that the table writes as AWG are taken as the areas of Chapter 9 Table 8; a sum between two sizes counts as the next
 * larger size.
 */
public final class Table25066 {
    /** One row: the largest area that it covers, and what it calls for. */
    public record Row(long largestCopper, long largestAluminum, WireSize copper, WireSize aluminum) {}

    /** The rows, smallest service first; the last has no upper limit. */
    public static final List<Row> ROWS = List.of(
            row(WireSize.AWG_2, WireSize.AWG_1_0, WireSize.AWG_8, WireSize.AWG_6),
            row(WireSize.AWG_1_0, WireSize.AWG_3_0, WireSize.AWG_6, WireSize.AWG_4),
            row(WireSize.AWG_3_0, WireSize.KCMIL_250, WireSize.AWG_4, WireSize.AWG_2),
            row(WireSize.KCMIL_350, WireSize.KCMIL_500, WireSize.AWG_2, WireSize.AWG_1_0),
            row(WireSize.KCMIL_600, WireSize.KCMIL_900, WireSize.AWG_1_0, WireSize.AWG_3_0),
            new Row(1_100_000, 1_750_000, WireSize.AWG_2_0, WireSize.AWG_4_0),
            new Row(Long.MAX_VALUE, Long.MAX_VALUE, WireSize.AWG_3_0, WireSize.KCMIL_250));

    private Table25066() {}

    private static Row row(WireSize largestCopper, WireSize largestAluminum, WireSize copper, WireSize aluminum) {
        return new Row(largestCopper.circularMils(), largestAluminum.circularMils(), copper, aluminum);
    }

    /**
     * The row for a service.
     *
     * @param material of the ungrounded conductors
     * @param circularMils of one phase, all sets together, positive
     */
    public static Row rowFor(Material material, long circularMils) {
        if (circularMils <= 0) {
            throw new IllegalArgumentException("no conductor area: " + circularMils + " circular mils");
        }
        return ROWS.stream()
                .filter(row ->
                        circularMils <= (material == Material.COPPER ? row.largestCopper() : row.largestAluminum()))
                .findFirst()
                .orElseThrow();
    }

    /** The copper conductor for a service. */
    public static WireSize copperFor(Material material, long circularMils) {
        return rowFor(material, circularMils).copper();
    }

    /** Whether the service lies beyond the last row with an upper limit. */
    public static boolean isBeyond(Material material, long circularMils) {
        return rowFor(material, circularMils).equals(ROWS.get(ROWS.size() - 1));
    }
}
