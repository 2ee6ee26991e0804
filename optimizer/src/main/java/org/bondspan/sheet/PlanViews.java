package org.bondspan.sheet;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.bondspan.sheet.DetailFinder.Crowd;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlacedNote;
import org.bondspan.sheet.plan.PlacedPlan;
import org.bondspan.sheet.plan.PlanPainter;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.LengthUnit;

/**
 * A picture set into a part of a sheet: the plan at the largest usual scale that fits, with enlarged details of what
 * would be crowded there, each to scale. Lengths in points.
 */
final class PlanViews {
    private static final int MOST_DETAILS = 3;
    private static final double LARGER = 1.9;

    /** In a detail the nearest symbols stand this far apart if there is room, not further; in sizes of letters. */
    private static final double APART = 6;

    /** Details take so much of the height that the plan leaves free, in sizes of letters. */
    private static final double MOST_SPARE = 10;

    /** Height of the title below a view, in sizes of letters. */
    private static final double TITLE = 4.2;

    /** From the outermost symbols of a detail to the box that marks it, in sizes of letters. */
    private static final double CALL_OUT = 1.4;

    /** A view with its scale; details have letters. */
    record View(PlacedPlan plan, DrawingScale scale, String letter, Bounds seen) {}

    private final Picture picture;
    private final LengthUnit unit;
    private final PlanStyle style;
    private final DrawingScale.Choice scales;
    private final Rectangle2D room;
    private final double size;
    private final List<View> views = new ArrayList<>();
    private final List<Note> numbered = new ArrayList<>();

    private PlanViews(Picture picture, LengthUnit unit, PlanStyle style, Rectangle2D room) {
        this.picture = picture;
        this.unit = unit;
        this.style = style;
        this.scales = style.scales();
        this.room = room;
        this.size = style.size();
    }

    static PlanViews of(Picture picture, LengthUnit unit, PlanStyle style, Rectangle2D room) {
        PlanViews views = new PlanViews(picture, unit, style, room);
        views.set();
        return views;
    }

    /** The scale that the plan has in so much room, with its details beside it. */
    static DrawingScale scaleOf(Picture picture, LengthUnit unit, PlanStyle style, Rectangle2D room) {
        Split split = new PlanViews(picture, unit, style, room).split();
        return scale(picture, style.scales(), split.plan(), style.size());
    }

    private static DrawingScale scale(Picture picture, DrawingScale.Choice scales, Rectangle2D room, double size) {
        Bounds bounds = picture.bounds();
        double around = around(size);
        return scales.fitting(
                bounds.width(),
                bounds.height(),
                Math.max(10, room.getWidth() - around),
                Math.max(10, room.getHeight() - around - TITLE * size));
    }

    /** Room kept free for words about a plan, both sides together. */
    static double around(double size) {
        return 7 * size;
    }

    /** Words that found no room in any view. */
    List<Note> numbered() {
        return numbered;
    }

    /** The plan, then its details. */
    List<PlacedPlan> plans() {
        return views.stream().map(View::plan).toList();
    }

    Rectangle2D room() {
        return room;
    }

    boolean hasDetails() {
        return views.size() > 1;
    }

    /** Height that details take below the plan. */
    double detailStrip() {
        return detailHeight() + 2 * size;
    }

    DrawingScale scale() {
        return views.get(0).scale();
    }

    private Split split() {
        List<Crowd> crowds = crowds(scale(picture, scales, room, size));
        return crowds.isEmpty() ? new Split(room, List.of()) : split(crowds.size());
    }

    private void set() {
        List<Crowd> crowds = crowds(scale(picture, scales, room, size));
        Split split = split();
        DrawingScale scale = scale(picture, scales, split.plan(), size);
        List<View> details = new ArrayList<>();
        for (int i = 0; i < split.details().size(); i++) {
            detail(crowds.get(i), split.details().get(i), String.valueOf((char) ('A' + i)), scale)
                    .ifPresent(details::add);
        }
        List<Note> rest = new ArrayList<>();
        picture.notes().stream()
                .filter(note -> details.stream().noneMatch(view -> belongs(note, view.seen())))
                .forEach(rest::add);
        Rectangle2D frame = new Rectangle2D.Double(
                split.plan().getX(),
                split.plan().getY(),
                split.plan().getWidth(),
                split.plan().getHeight() - TITLE * size);
        PlanView view = PlanView.centred(frame, scale.pointsPerNanometre(), picture.bounds());
        details.forEach(detail -> rest.add(0, callOut(detail, scale)));
        List<Rectangle2D> boxes =
                details.stream().map(detail -> callOutBox(view, detail)).toList();
        PlacedPlan plan = PlacedPlan.of(picture, view, rest, boxes, size, numbered.size() + 1);
        numbered.addAll(plan.numbered());
        views.add(new View(plan, scale, "", picture.bounds()));
        views.addAll(details);
    }

    private List<Crowd> crowds(DrawingScale scale) {
        return DetailFinder.crowds(picture, scale.pointsPerNanometre(), size).stream()
                .filter(crowd -> Math.max(crowd.bounds().width(), crowd.bounds().height()) * scale.pointsPerNanometre()
                        < 0.5 * detailWidth())
                .limit(MOST_DETAILS)
                .toList();
    }

    private double detailWidth() {
        return Math.min(58 * size, room.getWidth() / 2);
    }

    private double detailHeight() {
        return Math.min(32 * size, style.detailShare() * room.getHeight());
    }

    private record Split(Rectangle2D plan, List<Rectangle2D> details) {}

    /** Details below the plan or beside it, whichever leaves the plan the larger scale. */
    private Split split(int count) {
        Split below = below(count, detailHeight());
        double spare = spare(below.plan());
        if (spare > 0) {
            below = below(count, detailHeight() + Math.min(spare, MOST_SPARE * size));
        }
        Split beside = beside(count);
        return scale(picture, scales, beside.plan(), size).denominator()
                        < scale(picture, scales, below.plan(), size).denominator()
                ? beside
                : below;
    }

    /** Height that the plan leaves free at its scale. */
    private double spare(Rectangle2D plan) {
        double drawn =
                picture.bounds().height() * scale(picture, scales, plan, size).pointsPerNanometre();
        return plan.getHeight() - drawn - around(size) - TITLE * size;
    }

    private Split below(int count, double height) {
        double gap = 2 * size;
        double width = Math.min(detailWidth(), (room.getWidth() - gap * (count - 1)) / count);
        List<Rectangle2D> details = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            details.add(
                    new Rectangle2D.Double(room.getX() + i * (width + gap), room.getMaxY() - height, width, height));
        }
        return new Split(
                new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), room.getHeight() - height - gap),
                details);
    }

    private Split beside(int count) {
        double width = detailWidth();
        double gap = 2 * size;
        double height = Math.min(detailHeight() * 1.2, (room.getHeight() - gap * (count - 1)) / count);
        List<Rectangle2D> details = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            details.add(
                    new Rectangle2D.Double(room.getMaxX() - width, room.getY() + i * (height + gap), width, height));
        }
        return new Split(
                new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth() - width - gap, room.getHeight()),
                details);
    }

    private Optional<View> detail(Crowd found, Rectangle2D box, String letter, DrawingScale planScale) {
        Bounds crowd = found.bounds();
        Rectangle2D frame =
                new Rectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight() - TITLE * size);
        double width = Math.max(20, frame.getWidth() - 18 * size);
        double height = Math.max(20, frame.getHeight() - 8 * size);
        double roomy = found.closest() * width / (APART * size);
        DrawingScale scale = scales.fitting(Math.max(crowd.width(), roomy), crowd.height(), width, height);
        if (planScale.denominator() / scale.denominator() < LARGER) {
            return Optional.empty();
        }
        PlanView view = PlanView.centred(frame, scale.pointsPerNanometre(), crowd);
        List<Note> notes =
                picture.notes().stream().filter(note -> belongs(note, crowd)).toList();
        PlacedPlan plan = PlacedPlan.of(picture, view, notes, List.of(), size, numbered.size() + 1);
        numbered.addAll(plan.numbered());
        return Optional.of(new View(plan, scale, letter, crowd));
    }

    /** Whether all that a note may point to lies in a detail. */
    private static boolean belongs(Note note, Bounds seen) {
        return note.anchors().stream().allMatch(seen::contains);
    }

    void paint(Graphics2D g, String title) {
        for (View view : views) {
            Rectangle2D frame = view.plan().view().frame();
            new PlanPainter(g, Palette.LIGHT).paint(view.plan(), EnumSet.allOf(Layer.class), size);
            if (view.letter().isEmpty()) {
                Point2D corner = below(view);
                new ViewTitle(title, view.scale(), unit, size)
                        .paint(g, corner.getX(), corner.getY(), frame.getMaxX() - corner.getX());
            } else {
                new ViewTitle("DETAIL " + view.letter(), view.scale(), unit, 0.85 * size)
                        .paint(g, frame.getX(), frame.getMaxY() + 0.4 * size, frame.getWidth());
                g.setColor(Palette.LIGHT.of(Tint.INK));
                g.setStroke(new BasicStroke(0.8f));
                g.draw(frame);
                callOut(g, view);
            }
        }
    }

    /** Below all that the view shows, at its left edge: there its title stands. */
    private Point2D below(View view) {
        Rectangle2D frame = view.plan().view().frame();
        Point2D southwest = view.plan()
                .view()
                .of(new PlanPoint(view.seen().west(), view.seen().south()));
        double y = southwest.getY() + 2 * size;
        double x = southwest.getX();
        for (PlacedNote note : view.plan().notes()) {
            y = Math.max(y, note.box().getMaxY());
        }
        for (View detail : views.subList(1, views.size())) {
            y = Math.max(y, callOutBox(view.plan().view(), detail).getMaxY());
        }
        return new Point2D.Double(
                Math.max(frame.getX(), Math.min(x, frame.getMaxX() - 40 * size)),
                Math.min(frame.getMaxY(), y) + 0.4 * size);
    }

    /** Shows in the plan what a detail enlarges. */
    private void callOut(Graphics2D g, View detail) {
        g.setStroke(new BasicStroke(0.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4f, new float[] {6f, 3f}, 0f));
        g.draw(callOutBox(views.get(0).plan().view(), detail));
    }

    private Rectangle2D callOutBox(PlanView plan, View detail) {
        Point2D southwest =
                plan.of(new PlanPoint(detail.seen().west(), detail.seen().south()));
        Point2D northeast =
                plan.of(new PlanPoint(detail.seen().east(), detail.seen().north()));
        double around = CALL_OUT * size;
        return new Rectangle2D.Double(
                southwest.getX() - around,
                northeast.getY() - around,
                northeast.getX() - southwest.getX() + 2 * around,
                southwest.getY() - northeast.getY() + 2 * around);
    }

    /** Points to the middles of the sides of the box that marks the detail. */
    private Note callOut(View detail, DrawingScale scale) {
        Bounds seen = detail.seen();
        long around = Math.round(CALL_OUT * size / scale.pointsPerNanometre());
        long x = seen.west() + Math.round(seen.width() / 2);
        long y = seen.south() + Math.round(seen.height() / 2);
        return new Note(
                "detail " + detail.letter(),
                Layer.BUILDING,
                Note.Kind.CONDUCTOR,
                List.of("SEE DETAIL " + detail.letter()),
                List.of(
                        new PlanPoint(seen.east() + around, y),
                        new PlanPoint(seen.west() - around, y),
                        new PlanPoint(x, seen.north() + around),
                        new PlanPoint(x, seen.south() - around)));
    }
}
