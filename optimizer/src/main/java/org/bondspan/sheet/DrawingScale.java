package org.bondspan.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bondspan.units.LengthUnit;

/**
 * A scale as drawings have it.
 *
 * @param denominator so many units of the building to one of paper
 * @param words as the sheet says it
 */
record DrawingScale(double denominator, String words) {
    private static final double ROUNDING = 1e-9;
    private static final double NANOMETRES_PER_POINT = 25_400_000.0 / 72;

    /** The usual scales of that unit, the largest first; they go on for sites of any size. */
    static List<DrawingScale> usual(LengthUnit unit) {
        return unit == LengthUnit.FOOT ? architects() : metric();
    }

    private static List<DrawingScale> architects() {
        List<DrawingScale> scales = new ArrayList<>();
        String[] inches = {"3", "1 1/2", "1", "3/4", "1/2", "3/8", "1/4", "3/16", "1/8", "3/32"};
        double[] denominators = {4, 8, 12, 16, 24, 32, 48, 64, 96, 128};
        for (int i = 0; i < inches.length; i++) {
            scales.add(new DrawingScale(denominators[i], inches[i] + "\" = 1'-0\""));
        }
        scales.add(new DrawingScale(192, "1/16\" = 1'-0\""));
        for (long feet : new long[] {20, 30, 40, 50, 60}) {
            scales.add(engineers(feet));
        }
        for (long power = 100; power <= 1_000_000_000L; power *= 10) {
            scales.add(engineers(power));
            scales.add(engineers(2 * power));
            scales.add(engineers(5 * power));
        }
        return scales;
    }

    private static DrawingScale engineers(long feet) {
        return new DrawingScale(12.0 * feet, "1\" = " + feet + "'");
    }

    private static List<DrawingScale> metric() {
        List<DrawingScale> scales = new ArrayList<>();
        for (long power = 1; power <= 100_000_000L; power *= 10) {
            for (double step : new double[] {1, 2, 5}) {
                scales.add(ratio(step * power));
            }
        }
        // Of the scales between, those that metric scale rulers have: common practice, no source.
        scales.add(ratio(25));
        scales.add(ratio(75));
        scales.add(ratio(125));
        scales.add(ratio(250));
        scales.add(ratio(750));
        scales.add(ratio(2500));
        scales.sort(Comparator.comparingDouble(DrawingScale::denominator));
        return scales;
    }

    private static DrawingScale ratio(double denominator) {
        return new DrawingScale(denominator, "1 : " + Math.round(denominator));
    }

    /** Points on paper for one nanometre of the building. */
    double pointsPerNanometre() {
        return 1 / (NANOMETRES_PER_POINT * denominator);
    }

    /** Picks the scale for an extent of the building (nanometres) on so much paper (points). */
    @FunctionalInterface
    interface Choice {
        DrawingScale fitting(double width, double height, double paperWidth, double paperHeight);
    }

    /** The largest of the usual scales that fits. */
    static Choice ofUsual(LengthUnit unit) {
        List<DrawingScale> scales = usual(unit);
        return (width, height, paperWidth, paperHeight) -> {
            double least = leastDenominator(width, height, paperWidth, paperHeight);
            return scales.stream()
                    .filter(scale -> scale.denominator() >= least * (1 - ROUNDING))
                    .findFirst()
                    .orElse(scales.get(scales.size() - 1));
        };
    }

    /** Whatever scale fills the paper, for pictures that are resized anyway. */
    static Choice filling() {
        return (width, height, paperWidth, paperHeight) -> new DrawingScale(
                Math.max(1, leastDenominator(width, height, paperWidth, paperHeight)), "as the bar shows");
    }

    private static double leastDenominator(double width, double height, double paperWidth, double paperHeight) {
        return Math.max(width / paperWidth, height / paperHeight) / NANOMETRES_PER_POINT;
    }
}
