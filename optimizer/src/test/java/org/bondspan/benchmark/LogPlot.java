package org.bondspan.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A plot with logarithmic axes as SVG: one mark per point, a colour and a legend per series. */
final class LogPlot {
    private static final int WIDTH = 760;
    private static final int HEIGHT = 480;
    private static final int MARGIN = 70;
    private static final List<String> COLOURS =
            List.of("#1b6ca8", "#c4561a", "#2f7d32", "#7b3fa0", "#8a6d00", "#b0223a", "#00838f", "#555555");

    private final String title;
    private final String across;
    private final String up;
    private final List<Series> series = new ArrayList<>();

    private record Series(String name, List<Growth.Point> points) {}

    LogPlot(String title, String across, String up) {
        this.title = title;
        this.across = across;
        this.up = up;
    }

    /** Adds a series; points that are not above 0 have no place on such a plot and are left out. */
    void add(String name, List<Growth.Point> points) {
        List<Growth.Point> shown = points.stream()
                .filter(point -> point.size() > 0 && point.value() > 0)
                .toList();
        if (!shown.isEmpty()) {
            series.add(new Series(name, shown));
        }
    }

    String toSvg() {
        StringBuilder svg = new StringBuilder();
        svg.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" font-family=\"sans-serif\" font-size=\"12\">%n"
                        .formatted(WIDTH, HEIGHT));
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n");
        text(svg, WIDTH / 2.0, 24, "middle", title);
        text(svg, WIDTH / 2.0, HEIGHT - 16, "middle", across);
        text(svg, MARGIN, 44, "middle", up);
        Axis x = new Axis(series.stream()
                .flatMap(s -> s.points.stream())
                .mapToDouble(Growth.Point::size)
                .toArray());
        Axis y = new Axis(series.stream()
                .flatMap(s -> s.points.stream())
                .mapToDouble(Growth.Point::value)
                .toArray());
        grid(svg, x, y);
        for (int i = 0; i < series.size(); i++) {
            draw(svg, i, x, y);
        }
        return svg.append("</svg>\n").toString();
    }

    private void grid(StringBuilder svg, Axis x, Axis y) {
        for (int decade = x.low; decade <= x.high; decade++) {
            double at = left(x, Math.pow(10, decade));
            line(svg, at, HEIGHT - MARGIN, at, MARGIN - 10);
            text(svg, at, HEIGHT - MARGIN + 18, "middle", label(decade));
        }
        for (int decade = y.low; decade <= y.high; decade++) {
            double at = top(y, Math.pow(10, decade));
            line(svg, MARGIN, at, WIDTH - MARGIN, at);
            text(svg, MARGIN - 6, at + 4, "end", label(decade));
        }
    }

    private void draw(StringBuilder svg, int number, Axis x, Axis y) {
        String colour = COLOURS.get(number % COLOURS.size());
        for (Growth.Point point : series.get(number).points) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"%s\" fill-opacity=\"0.8\"/>%n",
                    left(x, point.size()),
                    top(y, point.value()),
                    colour));
        }
        double at = MARGIN + 16.0 * number;
        svg.append(String.format(
                Locale.ROOT, "<circle cx=\"%d\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>%n", MARGIN + 14, at - 4, colour));
        text(svg, MARGIN + 24, at, "start", series.get(number).name);
    }

    private static double left(Axis x, double value) {
        return MARGIN + x.share(value) * (WIDTH - 2 * MARGIN);
    }

    private static double top(Axis y, double value) {
        return HEIGHT - MARGIN - y.share(value) * (HEIGHT - 2 * MARGIN);
    }

    private static String label(int decade) {
        return decade >= 0 ? String.format(Locale.ROOT, "%,d", Math.round(Math.pow(10, decade))) : "1e" + decade;
    }

    private static void line(StringBuilder svg, double fromX, double fromY, double toX, double toY) {
        svg.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#cccccc\"/>%n",
                fromX,
                fromY,
                toX,
                toY));
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
        String escaped = words.replace("&", "&amp;").replace("<", "&lt;");
        svg.append(String.format(
                Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n", x, y, anchor, escaped));
    }

    /** Whole decades around all values. */
    private static final class Axis {
        private final int low;
        private final int high;

        Axis(double[] values) {
            double least = Double.MAX_VALUE;
            double most = 0;
            for (double value : values) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
            low = values.length == 0 ? 0 : (int) Math.floor(Math.log10(least));
            high = Math.max(low + 1, values.length == 0 ? 1 : (int) Math.ceil(Math.log10(most)));
        }

        double share(double value) {
            return (Math.log10(value) - low) / (high - low);
        }
    }
}
