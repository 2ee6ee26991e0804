package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlacedNote;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Symbol;
import org.junit.jupiter.api.Test;

class LetteringTest {
    private final Picture hall = Drawn.hall();
    private final Camera camera = Camera.around(hall.bounds());
    private final PlanView view = camera.view(800, 500);

    private static Lettering place(Picture picture, PlanView view, Set<Layer> layers, Labels labels) {
        return Lettering.place(new PlanRaster(new SegmentIndex(picture)), picture, view, layers, labels, List.of());
    }

    private static List<String> ids(Lettering words) {
        return words.notes().stream().map(note -> note.note().id()).toList();
    }

    @Test
    void whatIsSeenIsLabelled() {
        assertThat(ids(place(hall, view, Drawn.ALL, Labels.SHOWN))).containsExactlyInAnyOrder("service", "C1", "rod");
    }

    @Test
    void whatIsOutOfViewOrSwitchedOffIsNot() {
        PlanView west = camera.zoomed(6, Drawn.at(2, 2)).view(800, 500);
        assertThat(ids(place(hall, west, Drawn.ALL, Labels.SHOWN))).containsExactly("service");
        Set<Layer> layers = EnumSet.complementOf(EnumSet.of(Layer.ELECTRODES));
        assertThat(ids(place(hall, view, layers, Labels.SHOWN))).containsExactlyInAnyOrder("service", "C1");
    }

    @Test
    void withoutLabelsTheNumbersOfFindingsStay() {
        Picture picture = new Drawn()
                .mark("rod", Layer.ELECTRODES, Symbol.ELECTRODE, 5, 5)
                .mark("other", Layer.ELECTRODES, Symbol.ELECTRODE, 15, 9)
                .note("rod", Layer.ELECTRODES, Note.Kind.ELECTRODE, 5, 5)
                .note("other", Layer.KEYNOTES, Note.Kind.KEYNOTE, 15, 9)
                .picture();
        PlanView seen = Camera.around(picture.bounds()).view(800, 500);
        assertThat(ids(place(picture, seen, Drawn.ALL, Labels.HIDDEN))).containsExactly("other");
    }

    @Test
    void aSmallPaneHasFewerWordsThanALargeOne() {
        Picture picture = LargePlan.of(4_000, 7);
        Camera whole = Camera.around(picture.bounds());
        int small = place(picture, whole.view(400, 250), Drawn.ALL, Labels.SHOWN)
                .notes()
                .size();
        int large = place(picture, whole.view(1600, 1000), Drawn.ALL, Labels.SHOWN)
                .notes()
                .size();
        assertThat(small).isPositive().isLessThan(large / 4);
    }

    @Test
    void noWordsStandOnTheScaleBar() {
        Picture picture = LargePlan.of(4_000, 7);
        PlanView seen = Camera.around(picture.bounds()).zoomed(3).view(800, 500);
        Rectangle2D bar = Magnification.inPoints(ScaleBar.room(500));
        List<PlacedNote> notes = place(picture, seen, Drawn.ALL, Labels.SHOWN).notes();
        assertThat(notes).isNotEmpty().noneMatch(note -> note.box().intersects(bar));
    }

    @Test
    void wordsMoveWithWhatTheyBelongTo() {
        Lettering words = place(hall, view, Drawn.ALL, Labels.SHOWN);
        PlanView east = camera.moved(4.0 * Drawn.METRE, 0).view(800, 500);
        double pixels = 4.0 * Drawn.METRE * view.pointsPerNanometre();
        List<PlacedNote> moved = words.moved(east).notes();
        for (int i = 0; i < moved.size(); i++) {
            double shift =
                    words.notes().get(i).box().getX() - moved.get(i).box().getX();
            assertThat(shift * Magnification.PIXELS_PER_POINT).isCloseTo(pixels, within(1e-6));
        }
        assertThat(words.moved(view)).isSameAs(words);
    }

    @Test
    void wordsCanBePicked() {
        Lettering words = place(hall, view, Drawn.ALL, Labels.SHOWN);
        for (PlacedNote note : words.notes()) {
            Point2D middle = new Point2D.Double(
                    note.box().getCenterX() * Magnification.PIXELS_PER_POINT,
                    note.box().getCenterY() * Magnification.PIXELS_PER_POINT);
            assertThat(words.find(middle)).contains(note.note().id());
        }
        assertThat(words.find(new Point2D.Double(1, 1))).isEmpty();
    }
}
