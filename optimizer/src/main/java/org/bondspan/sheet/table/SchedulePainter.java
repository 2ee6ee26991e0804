package org.bondspan.sheet.table;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.plan.Typeface;

/** Sets schedules for a column of that width, in letters of that size. Lengths in points. */
public record SchedulePainter(double width, double size) {
    /** Between two columns, in sizes of letters. */
    private static final double GAP = 0.9;

    private static final double LARGEST_SHARE = 0.34;

    /** Titles shrink to no less than so much of their letters. */
    private static final double SMALLEST_TITLE = 0.7;

    public Block block(Schedule schedule) {
        double[] widths = widths(schedule);
        List<Band> head = new ArrayList<>();
        head.add(title(schedule.title()));
        if (schedule.headings().stream()
                .anyMatch(heading -> !Schedule.words(heading).isEmpty())) {
            head.add(row(
                    schedule, schedule.headings().stream().map(Schedule::words).toList(), widths, Tint.GREY));
        }
        return new Block(
                head,
                schedule.rows().stream()
                        .map(cells -> row(schedule, cells, widths, Tint.INK))
                        .toList());
    }

    /** A heading with a line under it; one too long for it is set smaller, and cut where it would be too small. */
    public Band title(String words) {
        double letters = size * 1.15;
        String whole = Typeface.printable(words.toUpperCase(Locale.ROOT));
        double shrunk = letters * width / Math.max(1, Typeface.width(whole, letters));
        double fitting = Math.min(letters, Math.max(SMALLEST_TITLE * letters, shrunk));
        String title = Typeface.fitted(whole, fitting, width);
        return new Painted(letters * 1.75, (g, x, y) -> {
            g.setColor(Palette.LIGHT.of(Tint.INK));
            Typeface.draw(g, title, x, y + letters * 1.05, fitting);
            g.setStroke(new BasicStroke(0.9f));
            g.draw(new Line2D.Double(x, y + letters * 1.38, x + width, y + letters * 1.38));
        });
    }

    /** A paragraph. */
    public Band paragraph(String words, double letters) {
        return paragraph(Wrap.lines(Typeface.printable(words), letters, width), letters);
    }

    /** A heading of some lines; what takes more is cut. */
    public Band heading(String words, double letters, int most) {
        return paragraph(Wrap.lines(Typeface.printable(words), letters, width, most), letters);
    }

    private static Band paragraph(List<String> lines, double letters) {
        return new Painted(Typeface.leading(letters) * lines.size() + 0.3 * letters, (g, x, y) -> {
            g.setColor(Palette.LIGHT.of(Tint.INK));
            drawLines(g, lines, x, y, letters);
        });
    }

    /** Narrow columns as wide as their words, within a limit; the rest is shared by what the wide ones hold. */
    private double[] widths(Schedule schedule) {
        int columns = schedule.headings().size();
        double[] widths = new double[columns];
        double[] weights = new double[columns];
        double room = width - GAP * size * (columns - 1);
        for (int i = 0; i < columns; i++) {
            double natural = schedule.column(i).stream()
                    .mapToDouble(words -> Typeface.width(Typeface.printable(words), size))
                    .max()
                    .orElse(0);
            if (Schedule.isWide(schedule.headings().get(i))) {
                weights[i] = Math.sqrt(Math.min(natural, 3 * width)) + 1;
            } else {
                widths[i] = columns < 3 ? Math.min(natural, 0.7 * width) : Math.min(natural, LARGEST_SHARE * width);
            }
        }
        double wide = Math.max(room - DoubleStream.of(widths).sum(), 0.3 * width);
        double all = DoubleStream.of(weights).sum();
        for (int i = 0; i < columns && all > 0; i++) {
            widths[i] += wide * weights[i] / all;
        }
        double factor = Math.min(1, room / DoubleStream.of(widths).sum());
        return DoubleStream.of(widths).map(column -> column * factor).toArray();
    }

    private Band row(Schedule schedule, List<String> cells, double[] widths, Tint tint) {
        List<List<String>> wrapped = IntStream.range(0, cells.size())
                .mapToObj(i -> Wrap.lines(Typeface.printable(cells.get(i)), size, widths[i] + 0.01))
                .toList();
        int most = wrapped.stream().mapToInt(List::size).max().orElse(1);
        return new Painted(Typeface.leading(size) * most + 0.28 * size, (g, x, y) -> {
            g.setColor(Palette.LIGHT.of(tint));
            double left = x;
            for (int i = 0; i < wrapped.size(); i++) {
                if (Schedule.isRight(schedule.headings().get(i))) {
                    drawRight(g, wrapped.get(i), left + widths[i], y);
                } else {
                    drawLines(g, wrapped.get(i), left, y, size);
                }
                left += widths[i] + GAP * size;
            }
        });
    }

    private void drawRight(Graphics2D g, List<String> lines, double right, double y) {
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            Typeface.draw(g, line, right - Typeface.width(line, size), y + size + i * Typeface.leading(size), size);
        }
    }

    private static void drawLines(Graphics2D g, List<String> lines, double x, double y, double letters) {
        for (int i = 0; i < lines.size(); i++) {
            Typeface.draw(g, lines.get(i), x, y + letters + i * Typeface.leading(letters), letters);
        }
    }
}
