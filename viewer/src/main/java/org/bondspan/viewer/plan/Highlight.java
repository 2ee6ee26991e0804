package org.bondspan.viewer.plan;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.effect.BlendMode;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcTo;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/**
 * Makes something stand out by shape: a broad translucent halo with a dash in the colour of the paper on lines, rings
 * about symbols.
 */
final class Highlight extends Group {
    /** As a marker pen on paper: what lies below stays as it is; the dash tells it where colour does not. */
    private static final Color ON_LIGHT = Color.web("#e59b2f");

    private static final Color ON_DARK = Color.web("#8a5c14");

    private static final double RING = 1.5;

    /** What has more symbols than this, such as a frame, is told by its lines. */
    private static final int MOST_RINGS = 12;

    private final Path halo = new Path();
    private final Path rings = new Path();
    private final Path dash = new Path();

    /** Both widths in pixels; no dash where its width is 0. */
    Highlight(double haloWidth, double opacity, double dashWidth) {
        getChildren().addAll(halo, rings, dash);
        setMouseTransparent(true);
        halo.setStrokeWidth(haloWidth);
        halo.setOpacity(opacity);
        halo.setStrokeLineCap(StrokeLineCap.ROUND);
        halo.setStrokeLineJoin(StrokeLineJoin.ROUND);
        rings.setStrokeWidth(RING);
        dash.setStrokeWidth(dashWidth);
        dash.getStrokeDashArray().addAll(6.0, 7.0);
        dash.setStrokeLineCap(StrokeLineCap.BUTT);
        dash.setVisible(dashWidth > 0);
    }

    void show(Outline outline, Color ink, Color paper) {
        boolean light = paper.getBrightness() > 0.5;
        halo.setStroke(light ? ON_LIGHT : ON_DARK);
        halo.setBlendMode(light ? BlendMode.MULTIPLY : BlendMode.SCREEN);
        rings.setStroke(ink);
        dash.setStroke(paper);
        List<PathElement> lines = lines(outline.lines());
        List<PathElement> circles = new ArrayList<>();
        outline.circles().forEach(circle -> circles.addAll(circle(circle)));
        List<PathElement> all = new ArrayList<>(lines);
        all.addAll(circles);
        halo.getElements().setAll(all);
        dash.getElements().setAll(lines(outline.lines()));
        boolean ringed =
                outline.circles().size() <= MOST_RINGS || outline.lines().isEmpty();
        rings.getElements().setAll(ringed ? rings(outline.circles()) : List.of());
    }

    private static List<PathElement> lines(List<Line2D> pieces) {
        List<PathElement> elements = new ArrayList<>();
        double x = Double.NaN;
        double y = Double.NaN;
        for (Line2D piece : pieces) {
            if (piece.getX1() != x || piece.getY1() != y) {
                elements.add(new MoveTo(piece.getX1(), piece.getY1()));
            }
            elements.add(new LineTo(piece.getX2(), piece.getY2()));
            x = piece.getX2();
            y = piece.getY2();
        }
        return elements;
    }

    /** Outside the symbols. */
    private static List<PathElement> rings(List<Outline.Circle> circles) {
        return circles.stream()
                .flatMap(circle -> circle(circle, circle.radius() + 5).stream())
                .toList();
    }

    private static List<PathElement> circle(Outline.Circle circle) {
        return circle(circle, circle.radius());
    }

    private static List<PathElement> circle(Outline.Circle circle, double r) {
        return List.of(
                new MoveTo(circle.x() - r, circle.y()),
                new ArcTo(r, r, 0, circle.x() + r, circle.y(), false, true),
                new ArcTo(r, r, 0, circle.x() - r, circle.y(), false, true),
                new ClosePath());
    }
}
