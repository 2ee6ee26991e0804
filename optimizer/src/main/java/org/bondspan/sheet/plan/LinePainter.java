package org.bondspan.sheet.plan;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Paints lines with their dashes, letters and crosses. Lengths in points. */
public final class LinePainter {
    private static final double RHYTHM = 48;
    private static final double LETTER = 6;
    private static final double CROSS = 2.2;

    /** Both sides of a line together. */
    private static final double CLEAR = 2;

    private final Graphics2D g;
    private final Palette palette;
    private final double pens;
    private final double signs;

    /** For letters of that size beside the lines, in points. */
    public LinePainter(Graphics2D g, Palette palette, double letters) {
        this.g = g;
        this.palette = palette;
        this.pens = Pen.scale(letters);
        this.signs = Symbol.scale(letters);
    }

    /** Clears the ground on which such a line will stand, so that nothing shows through its dashes. */
    void clear(Pen pen, List<Point2D> places, Rectangle2D frame) {
        g.setColor(palette.of(Tint.PAPER));
        g.setStroke(new BasicStroke(
                (float) (pens * (pen.width() + CLEAR)), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4f));
        g.draw(joined(pieces(places, frame)));
    }

    /** A line through these places, as far as it lies within the frame or just beside it. */
    public void paint(Pen pen, List<Point2D> places, Rectangle2D frame) {
        List<Line2D> pieces = pieces(places, frame);
        g.setColor(palette.of(pen.tint()));
        g.setStroke(stroke(pen));
        g.draw(joined(pieces));
        for (Line2D piece : pieces) {
            if (pen.crossed() == Pen.Crosses.ALONG_THE_LINE) {
                crosses(piece);
            }
            if (!pen.letter().isEmpty()) {
                letters(pen, piece, frame);
            }
        }
    }

    private static List<Line2D> pieces(List<Point2D> places, Rectangle2D frame) {
        Rectangle2D wide = new Rectangle2D.Double(
                frame.getX() - 20, frame.getY() - 20, frame.getWidth() + 40, frame.getHeight() + 40);
        return IntStream.range(1, places.size())
                .mapToObj(i -> Clip.within(wide, places.get(i - 1), places.get(i)))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Path2D joined(List<Line2D> pieces) {
        Path2D path = new Path2D.Double();
        for (Line2D piece : pieces) {
            Point2D end = path.getCurrentPoint();
            if (end == null || end.distance(piece.getP1()) > 0.01) {
                path.moveTo(piece.getX1(), piece.getY1());
            }
            path.lineTo(piece.getX2(), piece.getY2());
        }
        return path;
    }

    private BasicStroke stroke(Pen pen) {
        float width = (float) (pens * pen.width());
        if (pen.dash().isEmpty()) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4f);
        }
        float[] dash = new float[pen.dash().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = pen.dash().get(i);
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4f, dash, 0f);
    }

    private void crosses(Line2D piece) {
        g.setStroke(new BasicStroke(0.8f));
        double length = piece.getP1().distance(piece.getP2());
        double cross = signs * CROSS;
        for (double along = signs * RHYTHM / 4; along < length; along += signs * RHYTHM) {
            Point2D at = at(piece, along / length);
            g.draw(new Line2D.Double(at.getX() - cross, at.getY() - cross, at.getX() + cross, at.getY() + cross));
            g.draw(new Line2D.Double(at.getX() - cross, at.getY() + cross, at.getX() + cross, at.getY() - cross));
        }
    }

    private void letters(Pen pen, Line2D piece, Rectangle2D frame) {
        double length = piece.getP1().distance(piece.getP2());
        double size = signs * LETTER;
        double width = Typeface.width(pen.letter(), size);
        double high = 0.58 * size;
        for (double along = 0.75 * signs * RHYTHM; along < length - size; along += signs * RHYTHM) {
            Point2D at = at(piece, along / length);
            Rectangle2D ground =
                    new Rectangle2D.Double(at.getX() - width / 2 - 1.2, at.getY() - high, width + 2.4, 2 * high);
            if (!frame.contains(ground)) {
                continue;
            }
            g.setColor(palette.of(Tint.PAPER));
            g.fill(ground);
            g.setColor(palette.of(pen.tint()));
            Typeface.draw(g, pen.letter(), at.getX() - width / 2, at.getY() + Typeface.capital(size) / 2, size);
        }
    }

    private static Point2D at(Line2D piece, double share) {
        return new Point2D.Double(
                piece.getX1() + share * (piece.getX2() - piece.getX1()),
                piece.getY1() + share * (piece.getY2() - piece.getY1()));
    }
}
