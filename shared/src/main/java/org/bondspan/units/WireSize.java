package org.bondspan.units;

import java.util.Arrays;
import java.util.Optional;

/**
 * Conductor sizes in order of area. Areas in circular mils: NFPA 70 Chapter 9 Table 8, which are those of ASTM B258
 * with the diameter first rounded to 0.1 mil. Weights in tenths of a pound per 1000 ft of bare copper, Class B strand:
 * those of ASTM B8 for 8 AWG to 600, 750 and 1000 kcmil (from 300 kcmil on from memory); for 14, 12 and 10 AWG and the
 * other sizes 0.00308750 lb per 1000 ft and circular mil, copper of 8.89 g/cm3 with 2 % for the lay of the strand as
 * ASTM B8 has it, rounded to 0.1 lb, halves up.
 */
public enum WireSize {
    AWG_14("14 AWG", 4_110, 127),
    AWG_12("12 AWG", 6_530, 202),
    AWG_10("10 AWG", 10_380, 320),
    AWG_8("8 AWG", 16_510, 510),
    AWG_6("6 AWG", 26_240, 810),
    AWG_4("4 AWG", 41_740, 1_289),
    AWG_3("3 AWG", 52_620, 1_625),
    AWG_2("2 AWG", 66_360, 2_049),
    AWG_1("1 AWG", 83_690, 2_584),
    AWG_1_0("1/0 AWG", 105_600, 3_258),
    AWG_2_0("2/0 AWG", 133_100, 4_109),
    AWG_3_0("3/0 AWG", 167_800, 5_181),
    AWG_4_0("4/0 AWG", 211_600, 6_533),
    KCMIL_250("250 kcmil", 250_000, 7_719),
    KCMIL_300("300 kcmil", 300_000, 9_263),
    KCMIL_350("350 kcmil", 350_000, 10_810),
    KCMIL_400("400 kcmil", 400_000, 12_350),
    KCMIL_500("500 kcmil", 500_000, 15_440),
    KCMIL_600("600 kcmil", 600_000, 18_530),
    KCMIL_700("700 kcmil", 700_000, 21_613),
    KCMIL_750("750 kcmil", 750_000, 23_160),
    KCMIL_800("800 kcmil", 800_000, 24_700),
    KCMIL_900("900 kcmil", 900_000, 27_788),
    KCMIL_1000("1000 kcmil", 1_000_000, 30_880),
    KCMIL_1250("1250 kcmil", 1_250_000, 38_594),
    KCMIL_1500("1500 kcmil", 1_500_000, 46_313),
    KCMIL_1750("1750 kcmil", 1_750_000, 54_031),
    KCMIL_2000("2000 kcmil", 2_000_000, 61_750);

    private final String label;
    private final long circularMils;
    private final int tenthPoundsPerThousandFeet;

    WireSize(String label, long circularMils, int tenthPoundsPerThousandFeet) {
        this.label = label;
        this.circularMils = circularMils;
        this.tenthPoundsPerThousandFeet = tenthPoundsPerThousandFeet;
    }

    /** As the trade writes it: {@code "3/0 AWG"}, {@code "500 kcmil"}. */
    public String label() {
        return label;
    }

    /** Cross-section in circular mils. */
    public long circularMils() {
        return circularMils;
    }

    /** Bare copper, tenths of a pound per 1000 ft. */
    public int tenthPoundsPerThousandFeet() {
        return tenthPoundsPerThousandFeet;
    }

    /** Smaller than 6 AWG: in raceway or cable armor wherever it runs, 250.64(B). */
    public boolean needsRaceway() {
        return !isAtLeast(AWG_6);
    }

    public boolean isAtLeast(WireSize other) {
        return circularMils >= other.circularMils;
    }

    public static WireSize smallerOf(WireSize a, WireSize b) {
        return a.isAtLeast(b) ? b : a;
    }

    public static WireSize largerOf(WireSize a, WireSize b) {
        return a.isAtLeast(b) ? a : b;
    }

    public static Optional<WireSize> find(String label) {
        return Arrays.stream(values()).filter(size -> size.label.equals(label)).findFirst();
    }

    /** The smallest size of at least that area, if there is one. */
    public static Optional<WireSize> findAtLeast(long circularMils) {
        return Arrays.stream(values())
                .filter(size -> size.circularMils >= circularMils)
                .findFirst();
    }
}
