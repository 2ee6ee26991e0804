package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bondspan.layout.Conductor;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Symbol;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.Scenes;
import org.bondspan.viewer.state.Desk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CrowdsTest {
    private static final double WIDTH = 800;
    private static final double HEIGHT = 500;

    /** The plan of a window of 1280 by 800 pixels, with facts and schedules beside it. */
    private static final double OF_WINDOW_WIDTH = 806;

    private static final double OF_WINDOW_HEIGHT = 606;

    /** A hall of 200 by 100 m: two pixels and a half are a metre when all of it is seen. */
    private static Drawn hall() {
        return new Drawn()
                .run("L1", Layer.BUILDING, LineKind.WALL, 0, 0, 200, 0, 200, 100, 0, 100, 0, 0)
                .mark("service", Layer.SERVICES, Symbol.SERVICE, 60, 50)
                .note("service", Layer.SERVICES, Note.Kind.SERVICE, 60, 50)
                .mark("rod", Layer.ELECTRODES, Symbol.ELECTRODE, 60, 52)
                .note("rod", Layer.ELECTRODES, Note.Kind.ELECTRODE, 60, 52);
    }

    private static Drawn conductor(Drawn drawn, String id, double... places) {
        return drawn.run(id, Layer.CONDUCTORS, LineKind.GROUNDING_ELECTRODE_CONDUCTOR, places)
                .note(id, Layer.CONDUCTORS, Note.Kind.CONDUCTOR, places);
    }

    /** As many conductors as asked for, 1.5 m each, fanning out from the service, and a long one. */
    private static Picture fan(int count) {
        Drawn drawn = conductor(hall(), "long", 60, 50, 190, 50);
        for (int i = 0; i < count; i++) {
            conductor(drawn, "C" + i, 60, 50, 60 + 1.5 * Math.cos(i), 50 + 1.5 * Math.sin(i));
        }
        return drawn.picture();
    }

    private static Lettering place(Picture picture, PlanView view) {
        return Lettering.place(
                new PlanRaster(new SegmentIndex(picture)), picture, view, Drawn.ALL, Labels.SHOWN, List.of("Nearer"));
    }

    private static Lettering whole(Picture picture) {
        return place(picture, Camera.around(picture.bounds()).view(WIDTH, HEIGHT));
    }

    private static List<String> ids(Lettering words) {
        return words.notes().stream().map(note -> note.note().id()).toList();
    }

    @Test
    void oneNoteStandsForConductorsThatCannotBeToldApart() {
        Lettering words = whole(fan(5));

        assertThat(words.crowds().all())
                .singleElement()
                .satisfies(crowd -> assertThat(crowd.conductors()).containsExactly("C0", "C1", "C2", "C3", "C4"));
        assertThat(words.notes())
                .filteredOn(note -> words.crowds().all().get(0).isOf(note.note()))
                .singleElement()
                .satisfies(note -> assertThat(note.lines())
                        .containsExactly("service, rod", "5 conductors: C0, C1, C2, C3, C4", "Nearer"));
        assertThat(ids(words)).contains("long").doesNotContain("C0", "service", "rod");
    }

    @Test
    void nearerTheConductorsHaveTheirOwnWords() {
        Picture picture = fan(5);
        Camera into = Camera.around(whole(picture).crowds().all().get(0).bounds());
        Lettering words = place(picture, into.view(WIDTH, HEIGHT));

        assertThat(words.crowds().all()).isEmpty();
        assertThat(ids(words)).contains("C0", "C1", "C2", "C3", "C4");
    }

    @Test
    void aFewShortConductorsKeepTheirOwnWords() {
        Lettering words = whole(fan(3));

        assertThat(words.crowds().all()).isEmpty();
        assertThat(ids(words)).contains("C0", "C1", "C2", "service", "rod");
    }

    @Test
    void aLongRowOfShortConductorsIsNoCrowd() {
        Drawn row = hall();
        for (int i = 0; i < 30; i++) {
            conductor(row, "C" + i, 6 * i, 20, 6 * i + 4, 20);
        }
        assertThat(whole(row.picture()).crowds().all()).isEmpty();
    }

    /** Conductors that only rise are never longer in plan, however near one comes. */
    @Test
    void conductorsThatNoCameraTellsApartAreNoCrowd() {
        Drawn risers = hall();
        for (int i = 0; i < 6; i++) {
            conductor(risers, "C" + i, 60, 50);
        }
        assertThat(whole(risers.picture()).crowds().all()).isEmpty();
    }

    @Test
    void aBoxInTheColourOfCopperShowsWhereTheyAre() {
        Picture picture = fan(5);
        PlanView view = Camera.around(picture.bounds()).view(WIDTH, HEIGHT);
        Lettering words = place(picture, view);
        BufferedImage image =
                new PlanRaster(new SegmentIndex(picture)).image(new Shot(view, 1, Palette.LIGHT, Drawn.ALL, words));

        int copper = Palette.LIGHT.of(Tint.GROUNDING_ELECTRODE_CONDUCTOR).getRGB();
        var box = words.crowds().all().get(0).in(view);
        int painted = 0;
        for (int y = (int) box.getMinY(); y < box.getMaxY(); y++) {
            for (int x = (int) box.getMinX() - 1; x <= box.getMinX() + 1; x++) {
                painted += isNear(image.getRGB(x, y), copper) ? 1 : 0;
            }
        }
        assertThat(painted).isGreaterThan((int) (box.getHeight() / 3));
    }

    private static boolean isNear(int one, int other) {
        int red = (one >> 16 & 255) - (other >> 16 & 255);
        int green = (one >> 8 & 255) - (other >> 8 & 255);
        int blue = (one & 255) - (other & 255);
        return Math.max(Math.abs(red), Math.max(Math.abs(green), Math.abs(blue))) < 80;
    }

    /** In the first view of the halls, where most conductors are shorter than the symbols at their ends. */
    @ParameterizedTest
    @ValueSource(strings = {"hall-steel", "hall-timber", "hall-joint"})
    void everyConductorOfTheHallsIsNamedInTheWholeView(String sample) {
        Desk desk = Sitting.solved(sample + ".site.json");
        PlanScene scene = Scenes.of(desk).get(0).scene();
        Lettering words = place(scene.picture(), scene.camera().view(OF_WINDOW_WIDTH, OF_WINDOW_HEIGHT));

        Set<String> named = new TreeSet<>(ids(words));
        words.crowds().all().stream()
                .filter(crowd -> words.notes().stream().anyMatch(note -> crowd.isOf(note.note())))
                .forEach(crowd -> named.addAll(crowd.conductors()));
        assertThat(named)
                .containsAll(desk.answer().orElseThrow().layout().conductors().stream()
                        .map(Conductor::id)
                        .collect(Collectors.toSet()));
    }
}
