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

    private final Graphics2D g;
    private final Palette palette;

    public LinePainter(Graphics2D g, Palette palette) {
        this.g = g;
        this.palette = palette;
    }

    /** A line through these places, as far as it lies within the frame or just beside it. */
    public void paint(Pen pen, List<Point2D> places, Rectangle2D frame) {
        Rectangle2D wide = new Rectangle2D.Double(
                frame.getX() - 20, frame.getY() - 20, frame.getWidth() + 40, frame.getHeight() + 40);
        List<Line2D> pieces = IntStream.range(1, places.size())
                .mapToObj(i -> Clip.within(wide, places.get(i - 1), places.get(i)))
                .flatMap(Optional::stream)
                .toList();
        g.setColor(palette.of(pen.tint()));
        g.setStroke(stroke(pen));
        g.draw(joined(pieces));
        for (Line2D piece : pieces) {
            if (pen.crossed() == Pen.Crosses.ALONG_THE_LINE) {
                crosses(piece);
            }
            if (!pen.letter().isEmpty()) {
                letters(pen, piece);
            }
        }
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

    private static BasicStroke stroke(Pen pen) {
        float width = (float) pen.width();
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
        for (double along = RHYTHM / 4; along < length; along += RHYTHM) {
            Point2D at = at(piece, along / length);
            g.draw(new Line2D.Double(at.getX() - CROSS, at.getY() - CROSS, at.getX() + CROSS, at.getY() + CROSS));
            g.draw(new Line2D.Double(at.getX() - CROSS, at.getY() + CROSS, at.getX() + CROSS, at.getY() - CROSS));
        }
    }

    private void letters(Pen pen, Line2D piece) {
        double length = piece.getP1().distance(piece.getP2());
        double width = Typeface.width(pen.letter(), LETTER);
        for (double along = 0.75 * RHYTHM; along < length - 5; along += RHYTHM) {
            Point2D at = at(piece, along / length);
            g.setColor(palette.of(Tint.PAPER));
            g.fill(new Rectangle2D.Double(at.getX() - width / 2 - 1.2, at.getY() - 3.5, width + 2.4, 7));
            g.setColor(palette.of(pen.tint()));
            Typeface.draw(g, pen.letter(), at.getX() - width / 2, at.getY() + Typeface.capital(LETTER) / 2, LETTER);
        }
    }

    private static Point2D at(Line2D piece, double share) {
        return new Point2D.Double(
                piece.getX1() + share * (piece.getX2() - piece.getX1()),
                piece.getY1() + share * (piece.getY2() - piece.getY1()));
    }
}
