package org.bondspan.viewer.model;

import java.util.List;
import java.util.function.Predicate;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.usecase.Question;
import org.bondspan.usecase.Question.Leave;
import org.bondspan.viewer.state.Opened;

/**
 * What may carry, as a switch shows it.
 *
 * @param position as the question decides; mixed where the site file lets some carry and others not
 * @param available whether the site draws anything that the switch is about
 * @param explanation for those who wonder
 */
public record Switch(What what, Position position, boolean available, String explanation) {

    /** What the switches are about. */
    public enum What {
        FRAME("Frame"),
        SUPERVISION("Exposed pipe, supervised"),
        RING("Ring");

        private final String label;

        What(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** Whether that may carry. */
    public enum Position {
        ON,
        OFF,
        MIXED
    }

    public static List<Switch> all(Opened opened) {
        return List.of(of(opened, What.FRAME), of(opened, What.SUPERVISION), of(opened, What.RING));
    }

    public static Switch of(Opened opened, What what) {
        Site site = opened.question().suppose(opened.site());
        return switch (what) {
            case FRAME -> frame(site);
            case SUPERVISION -> supervision(site);
            case RING -> ring(site);
        };
    }

    private static Switch frame(Site site) {
        List<StructuralFrame> frames = site.listPaths(StructuralFrame.class).stream()
                .filter(StructuralFrame::continuous)
                .toList();
        return new Switch(
                What.FRAME,
                position(frames, StructuralFrame::mayCarry),
                !frames.isEmpty(),
                frames.isEmpty()
                        ? "No continuous structural frame is drawn"
                        : "Whether structural frames may carry, 250.68(C)(2)");
    }

    private static Switch supervision(Site site) {
        boolean drawn = site.listPaths(WaterPiping.class).stream().anyMatch(WaterPiping::exposed);
        return new Switch(
                What.SUPERVISION,
                site.qualifiedPersonsOnly() ? Position.ON : Position.OFF,
                drawn,
                drawn
                        ? "Whether only qualified persons service the installation, so that exposed water pipe may"
                                + " carry further than 5 ft from its entrance, 250.68(C)(1)"
                        : "No water pipe is drawn as exposed for its whole length");
    }

    private static Switch ring(Site site) {
        List<RingPath> rings = site.listPaths(RingPath.class);
        return new Switch(
                What.RING,
                position(rings, RingPath::mayInterconnect),
                !rings.isEmpty(),
                rings.isEmpty()
                        ? "No ground ring is drawn as a path"
                        : "Whether ground rings may join other electrodes, 250.53(C)");
    }

    private static <T> Position position(List<T> all, Predicate<T> carries) {
        long on = all.stream().filter(carries).count();
        return on == 0 ? Position.OFF : on == all.size() ? Position.ON : Position.MIXED;
    }

    /** The question with that switch turned over; back to what is drawn where that comes to the same. */
    public static Question turned(Opened opened, What what) {
        Leave leave = of(opened, what).position() == Position.ON ? Leave.DENIED : Leave.GIVEN;
        Question next = with(opened.question(), what, leave);
        Question drawn = with(opened.question(), what, Leave.AS_DRAWN);
        return next.suppose(opened.site()).equals(drawn.suppose(opened.site())) ? drawn : next;
    }

    private static Question with(Question asked, What what, Leave leave) {
        return switch (what) {
            case FRAME -> asked.withFrame(leave);
            case SUPERVISION -> asked.withSupervision(leave);
            case RING -> asked.withRing(leave);
        };
    }
}
