package org.bondspan.viewer.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.site.PlanPoint;

/**
 * Measured distances: rings at the ends, a broken line straight across or a solid one along routes, and their words.
 */
final class MeasuredNode extends Group {
    private static final double RING = 5;

    MeasuredNode() {
        setMouseTransparent(true);
        setId("measured");
    }

    void show(List<Measured> distances, PlanView view, Palette palette) {
        getChildren().clear();
        Color ink = Tints.colour(palette, Tint.INK);
        Color paper = Tints.colour(palette, Tint.PAPER);
        for (Measured distance : distances) {
            List<Line2D> pieces = Outline.pieces(distance.places(), view);
            pieces.forEach(piece -> getChildren().add(line(piece, paper, 5)));
            pieces.forEach(piece -> addLine(piece, distance.way(), ink));
            addRing(view.of(distance.places().get(0)), ink);
            addRing(view.of(distance.places().get(distance.places().size() - 1)), ink);
            if (!distance.words().isEmpty()) {
                addWords(distance.words(), view.of(middle(distance.places())), ink, paper);
            }
        }
    }

    private void addLine(Line2D piece, Measured.Way way, Color ink) {
        Line line = line(piece, ink, 2);
        if (way == Measured.Way.STRAIGHT) {
            line.setStrokeLineCap(StrokeLineCap.BUTT);
            line.getStrokeDashArray().addAll(3.0, 4.0);
        }
        getChildren().add(line);
    }

    private static Line line(Line2D piece, Color colour, double width) {
        Line line = new Line(piece.getX1(), piece.getY1(), piece.getX2(), piece.getY2());
        line.setStroke(colour);
        line.setStrokeWidth(width);
        return line;
    }

    private void addRing(Point2D at, Color ink) {
        Circle ring = new Circle(at.getX(), at.getY(), RING, Color.TRANSPARENT);
        ring.setStroke(ink);
        ring.setStrokeWidth(2);
        getChildren().add(ring);
    }

    private void addWords(String text, Point2D at, Color ink, Color paper) {
        Text words = new Text(at.getX() + 8, at.getY() - 8, text);
        words.setFont(Font.font(13));
        words.setFill(ink);
        Rectangle plate = new Rectangle(
                words.getX() - 4,
                words.getLayoutBounds().getMinY() - 2,
                words.getLayoutBounds().getWidth() + 8,
                words.getLayoutBounds().getHeight() + 4);
        plate.setFill(paper);
        plate.setStroke(ink);
        getChildren().addAll(plate, words);
    }

    /** Half way along. */
    private static PlanPoint middle(List<PlanPoint> places) {
        double half = 0;
        for (int i = 1; i < places.size(); i++) {
            half += length(places.get(i - 1), places.get(i)) / 2;
        }
        for (int i = 1; i < places.size(); i++) {
            double length = length(places.get(i - 1), places.get(i));
            if (length > 0 && length >= half) {
                return between(places.get(i - 1), places.get(i), half / length);
            }
            half -= length;
        }
        return places.get(0);
    }

    private static double length(PlanPoint a, PlanPoint b) {
        return Math.hypot((double) b.x() - a.x(), (double) b.y() - a.y());
    }

    private static PlanPoint between(PlanPoint a, PlanPoint b, double share) {
        return new PlanPoint(
                a.x() + Math.round(share * ((double) b.x() - a.x())),
                a.y() + Math.round(share * ((double) b.y() - a.y())));
    }
}
