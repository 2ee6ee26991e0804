package org.bondspan.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.LevelPicture;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.table.Block;
import org.bondspan.sheet.table.Flow;
import org.bondspan.sheet.table.Schedule;
import org.bondspan.sheet.table.SchedulePainter;
import org.bondspan.site.Level;
import org.bondspan.units.LengthUnit;

/**
 * The plan of a level as a figure among text: with its legend, the conductors and their totals, without border and
 * title block. It fills its width, whatever scale that gives.
 */
public final class PlanFigure implements Drawing {
    private static final double WIDTH = 800;
    private static final double SIZE = 10;
    private static final double GAP = 16;
    private static final PlanStyle STYLE = new PlanStyle(DrawingScale.filling(), SIZE, 0.45);
    private static final int COLUMNS = 3;

    private final SheetContent content;
    private final Level level;
    private final Schedules schedules;
    private final PlanViews views;
    private final Flow below;
    private final double height;

    private PlanFigure(SheetContent content, Level level) {
        this.content = content;
        this.level = level;
        Picture picture = LevelPicture.of(content.site(), content.layout(), level);
        this.schedules = new Schedules(content, picture);
        this.views = views(picture, content.site().lengthUnit());
        double top = views.room().getMaxY() + GAP;
        SchedulePainter painter = new SchedulePainter((WIDTH - GAP * (COLUMNS + 1)) / COLUMNS, SIZE);
        Block legend = Legend.of(picture, painter);
        int half = (legend.rows().size() + 1) / 2;
        List<Block> left = List.of(legend.upTo(half));
        List<Block> middle = List.of(legend.from(half));
        List<Block> right = right(painter);
        double tall = Math.max(tall(left), tall(right));
        this.height = top + tall + GAP;
        List<Rectangle2D> columns = columns(painter.width(), top, tall);
        this.below = Flow.inColumns(List.of(left, middle, right), columns);
    }

    /** The figure of a level of the site. */
    public static Drawing of(SheetContent content, Level level) {
        return new PlanFigure(content, level);
    }

    private List<Block> right(SchedulePainter painter) {
        List<Schedule> chosen = new ArrayList<>(schedules.figures());
        chosen.add(Schedules.numbered(views.numbered()));
        chosen.add(schedules.lettering(chosen));
        return chosen.stream()
                .filter(schedule -> !schedule.rows().isEmpty())
                .map(painter::block)
                .toList();
    }

    private static double tall(List<Block> blocks) {
        return blocks.stream().mapToDouble(Block::height).sum() + Flow.GAP * blocks.size();
    }

    private static List<Rectangle2D> columns(double width, double top, double tall) {
        return IntStream.range(0, COLUMNS)
                .<Rectangle2D>mapToObj(i -> new Rectangle2D.Double(GAP + i * (width + GAP), top, width, tall))
                .toList();
    }

    private static PlanViews views(Picture picture, LengthUnit unit) {
        Bounds bounds = picture.bounds();
        double around = PlanViews.around(SIZE);
        double inner = (WIDTH - 2 * GAP - around) * bounds.height() / Math.max(1, bounds.width());
        double plan = Math.min(WIDTH, Math.max(12 * SIZE, inner)) + around + 5 * SIZE;
        PlanViews alone = set(picture, unit, plan);
        return alone.hasDetails() ? set(picture, unit, plan + alone.detailStrip()) : alone;
    }

    private static PlanViews set(Picture picture, LengthUnit unit, double tall) {
        Rectangle2D room = new Rectangle2D.Double(GAP, GAP, WIDTH - 2 * GAP, tall);
        return PlanViews.of(picture, unit, STYLE, room);
    }

    @Override
    public String title() {
        return content.site().name() + ", level " + level.id();
    }

    @Override
    public double width() {
        return WIDTH;
    }

    @Override
    public double height() {
        return height;
    }

    @Override
    public void paint(Graphics2D g) {
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(0, 0, WIDTH, height));
        paintViews(g);
        below.paint(g);
    }

    private void paintViews(Graphics2D g) {
        views.paint(g, title());
    }

    /** The plan with its details; its legend and tables. */
    @Override
    public List<Drawing> listStrips() {
        double top = views.room().getMaxY();
        return List.of(new Strip(title(), top, this::paintViews), new Strip(title(), height - top, g -> {
            AffineTransform before = g.getTransform();
            g.translate(0, -top);
            below.paint(g);
            g.setTransform(before);
        }));
    }

    private record Strip(String title, double height, Consumer<Graphics2D> painter) implements Drawing {
        @Override
        public double width() {
            return WIDTH;
        }

        @Override
        public void paint(Graphics2D g) {
            painter.accept(g);
        }
    }
}
