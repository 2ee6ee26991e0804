package org.bondspan.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.Role;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Site;
import org.bondspan.units.WireSize;
import org.bondspan.usecase.RouteSite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whose words a reader takes words for: those of the nearest line, unless a leader says otherwise. Distances are found
 * by walking along the painted lines in small steps, not by the formula that places the words.
 */
class OwnConductorTest {
    private static final double SIZE = 8;

    private static Stream<PlacedPlan> plans() {
        try (Stream<Path> files = Files.list(Path.of("..", "samples"))) {
            List<PlacedPlan> plans = new ArrayList<>();
            for (Path file : files.filter(each -> each.toString().endsWith(".site.json"))
                    .sorted()
                    .toList()) {
                Site site = SiteFile.read(file).site();
                for (Level level : site.levels()) {
                    Picture picture = LevelPicture.of(site, RouteSite.of(site), level);
                    for (double width : new double[] {500, 900, 1700}) {
                        plans.add(placed(picture, width));
                    }
                }
            }
            return plans.stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PlacedPlan placed(Picture picture, double width) {
        Rectangle2D frame = new Rectangle2D.Double(0, 0, width, width);
        Bounds bounds = picture.bounds();
        double scale = 0.7 * width / Math.max(bounds.width(), bounds.height());
        PlanView view = PlanView.centred(frame, scale, bounds);
        return PlacedPlan.of(picture, view, picture.notes(), List.of(), SIZE, 1);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void wordsWithoutALeaderStandNearerToTheirOwnLineThanToAnyOther(PlacedPlan plan) {
        for (Layer layer : new Layer[] {Layer.CONDUCTORS, Layer.ALLOWED_COPPER}) {
            List<PlacedNote> alone = plan.notes().stream()
                    .filter(note ->
                            note.note().layer() == layer && note.leader().isEmpty())
                    .toList();
            for (PlacedNote note : alone) {
                assertThat(nearest(note, plan, layer, true))
                        .as(note.toString())
                        .isLessThan(nearest(note, plan, layer, false));
            }
        }
    }

    private static double nearest(PlacedNote note, PlacedPlan plan, Layer layer, boolean own) {
        return plan.picture().items().stream()
                .filter(item -> item instanceof Item.Run && item.layer() == layer)
                .filter(item -> item.id().equals(note.note().id()) == own)
                .map(item -> BesidePath.of((Item.Run) item, plan.view(), Symbol.scale(SIZE)))
                .mapToDouble(path -> nearest(note.box(), path))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private static double nearest(Rectangle2D box, List<Point2D> path) {
        double nearest = fromBox(path.get(0), box);
        for (int i = 1; i < path.size(); i++) {
            Point2D from = path.get(i - 1);
            Point2D to = path.get(i);
            int steps = 1 + (int) (4 * from.distance(to));
            for (int step = 0; step <= steps; step++) {
                double share = (double) step / steps;
                Point2D at = new Point2D.Double(
                        from.getX() + share * (to.getX() - from.getX()),
                        from.getY() + share * (to.getY() - from.getY()));
                nearest = Math.min(nearest, fromBox(at, box));
            }
        }
        return nearest;
    }

    private static double fromBox(Point2D at, Rectangle2D box) {
        double x = Math.min(Math.max(at.getX(), box.getMinX()), box.getMaxX());
        double y = Math.min(Math.max(at.getY(), box.getMinY()), box.getMaxY());
        return at.distance(x, y);
    }

    /** C1 only rises, beside C2 that runs north from there: without a leader its words would be read as those of C2. */
    @Test
    void wordsOfAConductorThatOnlyRisesHaveALeaderWhereAnotherRunsOn() {
        PlanPoint foot = new PlanPoint(0, 0);
        PlanPoint head = new PlanPoint(0, 1_000);
        Pen pen = LineKind.pen(Role.BONDING_JUMPER, WireSize.AWG_6);
        LineKind kind = LineKind.of(Role.BONDING_JUMPER);
        List<Item> items = List.of(
                new Item.Run("C1", Layer.CONDUCTORS, kind, pen, List.of(foot)),
                new Item.Run("C2", Layer.CONDUCTORS, kind, pen, List.of(foot, head)),
                new Item.Mark("C1", Layer.JOINTS, Symbol.UP_OR_DOWN, "", foot));
        Note rises = new Note("C1", Layer.CONDUCTORS, Note.Kind.CONDUCTOR, List.of("C1  6 AWG"), List.of(foot));
        PlanView view = new PlanView(new Rectangle2D.Double(0, 0, 200, 200), 0.09, 0, 500);
        Rectangle2D south = new Rectangle2D.Double(0, 140, 200, 60);

        PlacedPlan plan =
                PlacedPlan.of(new Picture("L1", items, List.of(rises)), view, List.of(rises), List.of(south), SIZE, 1);

        assertThat(plan.notes()).hasSize(1);
        assertThat(plan.notes().get(0).leader()).isPresent();
    }
}
