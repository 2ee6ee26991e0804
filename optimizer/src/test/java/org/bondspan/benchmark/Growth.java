package org.bondspan.benchmark;

import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** How fast something grows: fits through measured points by least squares, on logarithms. */
final class Growth {
    private Growth() {}

    /** One measurement: a size, and what was found there. Both above 0. */
    record Point(double size, double value) {}

    /** The exponent p of value ~ size^p: 1 is linear. */
    static double exponent(List<Point> points) {
        SimpleRegression fit = new SimpleRegression();
        points.forEach(point -> fit.addData(Math.log(point.size()), Math.log(point.value())));
        return fit.getSlope();
    }

    /** The factor f of value ~ f^size: by how much each step multiplies. */
    static double factor(List<Point> points) {
        SimpleRegression fit = new SimpleRegression();
        points.forEach(point -> fit.addData(point.size(), Math.log(point.value())));
        return Math.exp(fit.getSlope());
    }
}
