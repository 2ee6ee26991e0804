package org.bondspan.sheet.plan;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Paints symbols about a place. */
public final class SymbolPainter {
    private static final double LETTERS = 7.5;

    private final Graphics2D g;
    private final double scale;
    private final Color ink;
    private final Color paper;
    private final Color grey;

    /** For letters of that size beside the symbols, in points. */
    public SymbolPainter(Graphics2D g, Palette palette, double letters) {
        this.g = g;
        this.scale = Symbol.scale(letters);
        this.ink = palette.of(Tint.INK);
        this.paper = palette.of(Tint.PAPER);
        this.grey = palette.of(Tint.GREY);
    }

    /** The symbol with its middle there; the letters stand in electrodes. */
    public void paint(Symbol symbol, String letters, Point2D at) {
        AffineTransform before = g.getTransform();
        g.translate(at.getX(), at.getY());
        g.scale(scale, scale);
        paint(symbol, letters);
        g.setTransform(before);
    }

    private void paint(Symbol symbol, String letters) {
        Point2D at = new Point2D.Double();
        double half = symbol.size() / 2;
        Rectangle2D square = new Rectangle2D.Double(at.getX() - half, at.getY() - half, 2 * half, 2 * half);
        Shape circle = new Ellipse2D.Double(square.getX(), square.getY(), square.getWidth(), square.getHeight());
        switch (symbol) {
            case COLUMN -> column(square);
            case CONNECTION -> filled(circle, paper, grey, 0.6f);
            case LANDING -> filled(circle, paper, ink, 1.1f);
            case UP_OR_DOWN -> upOrDown(circle, at);
            case EXOTHERMIC -> filled(circle, ink, ink, 0.5f);
            case IRREVERSIBLE -> filled(square, ink, ink, 0.5f);
            case MECHANICAL -> filled(square, paper, ink, 1.1f);
            case BUSBAR -> busbar(at, half);
            case BREAK -> lettered(square, "M", at, 0.9f);
            case BREAK_WITH_JUMPER -> withJumper(at, half);
            case RISER -> crossed(square, square, 0.9f, ink);
            case ELECTRODE -> lettered(circle, letters, at, 1.8f);
            case ELECTRODE_LEFT_OUT -> leftOut(circle, letters, at);
            case NO_ELECTRODE -> crossed(circle, square, 0.7f, grey);
            case ELECTRODE_UNREACHED -> unreached(square, circle, letters, at);
            case SERVICE -> service(square);
        }
    }

    static Path2D hexagon(Rectangle2D box) {
        double cut = box.getHeight() * 0.28;
        Path2D path = new Path2D.Double();
        path.moveTo(box.getMinX(), box.getCenterY());
        path.lineTo(box.getMinX() + cut, box.getMinY());
        path.lineTo(box.getMaxX() - cut, box.getMinY());
        path.lineTo(box.getMaxX(), box.getCenterY());
        path.lineTo(box.getMaxX() - cut, box.getMaxY());
        path.lineTo(box.getMinX() + cut, box.getMaxY());
        path.closePath();
        return path;
    }

    private void filled(Shape shape, Color fill, Color edge, float width) {
        g.setColor(fill);
        g.fill(shape);
        g.setColor(edge);
        g.setStroke(new BasicStroke(width));
        g.draw(shape);
    }

    /** A rolled section seen from above: two flanges and a web. */
    private void column(Rectangle2D box) {
        g.setColor(grey);
        g.setStroke(new BasicStroke(1.1f));
        line(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMinY());
        line(box.getMinX(), box.getMaxY(), box.getMaxX(), box.getMaxY());
        line(box.getCenterX(), box.getMinY(), box.getCenterX(), box.getMaxY());
    }

    private void upOrDown(Shape circle, Point2D at) {
        filled(circle, paper, ink, 0.8f);
        g.fill(new Ellipse2D.Double(at.getX() - 1.4, at.getY() - 1.4, 2.8, 2.8));
    }

    /** The equipment between the two landings of its jumper. */
    private void withJumper(Point2D at, double half) {
        double equipment = Symbol.BREAK.size();
        double landing = Symbol.LANDING.size();
        for (int side : new int[] {-1, 1}) {
            double middle = at.getX() + side * (half - landing / 2);
            filled(
                    new Ellipse2D.Double(middle - landing / 2, at.getY() - landing / 2, landing, landing),
                    paper,
                    ink,
                    1.1f);
        }
        lettered(
                new Rectangle2D.Double(at.getX() - equipment / 2, at.getY() - equipment / 2, equipment, equipment),
                "M",
                at,
                0.9f);
    }

    private void busbar(Point2D at, double half) {
        filled(new Rectangle2D.Double(at.getX() - half, at.getY() - half / 2.5, 2 * half, half / 1.25), ink, ink, 0.5f);
        g.setColor(paper);
        g.fill(new Ellipse2D.Double(at.getX() - half / 1.5 - 1, at.getY() - 1, 2, 2));
        g.fill(new Ellipse2D.Double(at.getX() + half / 1.5 - 1, at.getY() - 1, 2, 2));
    }

    private void leftOut(Shape circle, String letters, Point2D at) {
        g.setColor(paper);
        g.fill(circle);
        g.setColor(grey);
        g.setStroke(
                new BasicStroke(0.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4f, new float[] {2.5f, 2f}, 0f));
        g.draw(circle);
        letters(letters, at, grey);
    }

    private void unreached(Rectangle2D square, Shape circle, String letters, Point2D at) {
        lettered(circle, letters, at, 0.9f);
        double more = 3;
        g.setStroke(new BasicStroke(1.8f));
        g.draw(new Rectangle2D.Double(
                square.getX() - more,
                square.getY() - more,
                square.getWidth() + 2 * more,
                square.getHeight() + 2 * more));
    }

    private void crossed(Shape shape, Rectangle2D box, float width, Color colour) {
        filled(shape, paper, colour, width);
        double in = shape instanceof Ellipse2D ? box.getWidth() * 0.147 : 0;
        line(box.getMinX() + in, box.getMinY() + in, box.getMaxX() - in, box.getMaxY() - in);
        line(box.getMinX() + in, box.getMaxY() - in, box.getMaxX() - in, box.getMinY() + in);
    }

    private void lettered(Shape shape, String letters, Point2D at, float width) {
        filled(shape, paper, ink, width);
        letters(letters, at, ink);
    }

    private void letters(String letters, Point2D at, Color colour) {
        g.setColor(colour);
        Typeface.draw(
                g,
                letters,
                at.getX() - Typeface.width(letters, LETTERS) / 2,
                at.getY() + Typeface.capital(LETTERS) / 2,
                LETTERS);
    }

    /** A box, its upper left half filled. */
    private void service(Rectangle2D box) {
        filled(box, paper, ink, 1.4f);
        Path2D half = new Path2D.Double();
        half.moveTo(box.getMinX(), box.getMinY());
        half.lineTo(box.getMaxX(), box.getMinY());
        half.lineTo(box.getMinX(), box.getMaxY());
        half.closePath();
        g.fill(half);
    }

    private void line(double x1, double y1, double x2, double y2) {
        g.draw(new Line2D.Double(x1, y1, x2, y2));
    }
}
