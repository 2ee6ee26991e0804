package org.bondspan.sheet;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.plan.LevelPicture;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.table.Block;
import org.bondspan.sheet.table.Flow;
import org.bondspan.sheet.table.Schedule;
import org.bondspan.sheet.table.SchedulePainter;
import org.bondspan.site.Level;

/**
 * The sheets of one level: the plan with as much of the schedules as it leaves room for, then sheets with what is left
 * of them.
 */
public final class PlanSheets {
    private static final double WORTH_ANOTHER_SHEET = 1.6;
    private static final double DETAIL_SHARE = 0.27;

    private final SheetContent content;
    private final SheetSize size;
    private final Level level;
    private final String number;
    private final Picture picture;
    private final PlanStyle style;
    private final Rectangle2D room;
    private final List<Block> blocks = new ArrayList<>();

    private PlanSheets(SheetContent content, SheetSize size, Level level) {
        this.content = content;
        this.size = size;
        this.level = level;
        this.number = "E-" + (101 + content.site().levels().indexOf(level));
        this.picture = LevelPicture.of(content.site(), content.layout(), level);
        this.style = new PlanStyle(DrawingScale.ofUsual(content.site().lengthUnit()), size.text(), DETAIL_SHARE);
        double gap = size.text();
        this.room = new Rectangle2D.Double(
                size.margin() + gap,
                size.margin() + gap,
                size.width() - 2 * size.margin() - size.titleBlock() - 2 * gap,
                size.height() - 2 * size.margin() - 2 * gap);
        SchedulePainter painter = new SchedulePainter(size.column(), size.text());
        blocks.add(Legend.of(picture, painter));
        new Schedules(content, picture).list().forEach(schedule -> blocks.add(painter.block(schedule)));
    }

    /** The sheets of a level of the site, the plan first. */
    public static List<Drawing> of(SheetContent content, Level level, SheetSize size) {
        return new PlanSheets(content, size, level).list();
    }

    /** The plan of a level as it stands on its sheet. */
    static PlanViews views(SheetContent content, Level level, SheetSize size) {
        PlanSheets sheets = new PlanSheets(content, size, level);
        return sheets.views(sheets.best());
    }

    private PlanViews views(Arrangement arrangement) {
        return PlanViews.of(picture, content.site().lengthUnit(), style, arrangement.plan());
    }

    private List<Drawing> list() {
        Arrangement arrangement = best();
        PlanViews views = views(arrangement);
        List<Block> all = new ArrayList<>(blocks);
        Schedule numbered = Schedules.numbered(views.numbered());
        all.add(new SchedulePainter(size.column(), size.text()).block(numbered));
        Flow flow = Flow.of(all, arrangement.columns());
        List<Flow> more = more(flow.left());
        List<Drawing> sheets = new ArrayList<>();
        int count = 1 + more.size();
        sheets.add(new Sheet(content, size, heading(1, count), flow, List.of(views)));
        for (int i = 0; i < more.size(); i++) {
            sheets.add(new Sheet(content, size, heading(i + 2, count), more.get(i), List.of()));
        }
        return sheets;
    }

    private Sheet.Heading heading(int sheet, int count) {
        String what = sheet == 1 ? "plan" : "schedules";
        return new Sheet.Heading(
                number + (count == 1 ? "" : "." + sheet),
                "Grounding electrode interconnection, " + what + ", level " + level.id()
                        + (count == 1 ? "" : ", sheet " + sheet + " of " + count),
                "PLAN, LEVEL " + level.id());
    }

    private List<Flow> more(List<Block> left) {
        List<Flow> flows = new ArrayList<>();
        List<Block> rest = left;
        int columns = (int) ((room.getWidth() + gap()) / (size.column() + gap()));
        while (!rest.isEmpty()) {
            Flow flow = Flow.of(rest, columns(room, columns));
            flows.add(flow);
            rest = flow.left();
        }
        return flows;
    }

    private double gap() {
        return 2 * size.text();
    }

    private List<Rectangle2D> columns(Rectangle2D area, int count) {
        return IntStream.range(0, count)
                .<Rectangle2D>mapToObj(i -> new Rectangle2D.Double(
                        area.getX() + i * (size.column() + gap()), area.getY(), size.column(), area.getHeight()))
                .toList();
    }

    /** Where the plan stands and where schedules may. */
    private record Arrangement(Rectangle2D plan, List<Rectangle2D> columns) {}

    /** The arrangement with the largest plan; one that saves a sheet may be somewhat smaller. */
    private Arrangement best() {
        List<Arrangement> arrangements = new ArrayList<>();
        for (int columns = 1; columns <= 2; columns++) {
            arrangements.add(beside(columns));
        }
        for (double share : new double[] {0.18, 0.22, 0.26, 0.3, 0.35, 0.4}) {
            arrangements.add(below(share));
        }
        arrangements.add(new Arrangement(room, List.of()));
        Arrangement best = arrangements.get(0);
        for (Arrangement arrangement : arrangements) {
            if (cost(arrangement) < cost(best)) {
                best = arrangement;
            }
        }
        return best;
    }

    private double cost(Arrangement arrangement) {
        double denominator = PlanViews.scaleOf(picture, content.site().lengthUnit(), style, arrangement.plan())
                .denominator();
        boolean fits = Flow.of(blocks, arrangement.columns()).left().isEmpty();
        return fits ? denominator : WORTH_ANOTHER_SHEET * denominator;
    }

    private Arrangement beside(int columns) {
        double width = columns * (size.column() + gap());
        Rectangle2D plan = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth() - width, room.getHeight());
        Rectangle2D side = new Rectangle2D.Double(plan.getMaxX() + gap(), room.getY(), width - gap(), room.getHeight());
        return new Arrangement(plan, columns(side, columns));
    }

    private Arrangement below(double share) {
        double height = share * room.getHeight();
        Rectangle2D plan = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), room.getHeight() - height);
        Rectangle2D strip =
                new Rectangle2D.Double(room.getX(), plan.getMaxY() + gap(), room.getWidth(), height - gap());
        int columns = (int) ((room.getWidth() + gap()) / (size.column() + gap()));
        return new Arrangement(plan, columns(strip, columns));
    }
}
