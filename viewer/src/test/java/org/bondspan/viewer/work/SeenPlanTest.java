package org.bondspan.viewer.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.bondspan.sheet.out.SvgFile;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.Scenes;
import org.bondspan.viewer.plan.Labels;
import org.bondspan.viewer.plan.PlanScene;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.state.Showing;
import org.junit.jupiter.api.Test;

class SeenPlanTest {
    private final Desk desk = Sitting.solved("hall-timber.site.json");

    /** Titles, totals, cautions, and the words beside what is seen. */
    @Test
    void theDrawingSaysWhatItIsOfAndWhatIsSeen() {
        String svg = svg(scene(desk), "Least copper, proven: 538.98 lb");

        assertThat(svg)
                .contains("Hall A")
                .contains("Least copper, proven: 538.98 lb")
                .contains("C2  3/0 AWG".replace("  ", " "))
                .contains("high-rack-store")
                .contains("A design aid.");
    }

    @Test
    void layersThatAreOffAndWordsThatAreHiddenAreNotThere() {
        Desk without = Looking.toggle(Layer.CLOSED_AREAS).on(desk);
        assertThat(svg(scene(without), "")).doesNotContain("high-rack-store").contains("footing-southwest");

        Desk silent = Looking.labels(Labels.HIDDEN).on(desk);
        assertThat(svg(scene(silent), "")).doesNotContain("footing-southwest");
    }

    @Test
    void aLongLineIsBrokenAfterCommasAndTheDrawingGrows() {
        String one = "weight 1.00 lb";
        String many = String.join(", ", Collections.nCopies(30, one));

        SeenPlan narrow = seen(new SeenPlan.Part(List.of(one), scene(desk), 400, 300));
        SeenPlan high = seen(new SeenPlan.Part(List.of(many), scene(desk), 400, 300));
        assertThat(high.height()).isGreaterThan(narrow.height());
        assertThat(high.width()).isEqualTo(narrow.width());
    }

    /**
     * 900 points are 1,200 pixels, for the 600 ft of the hall and 16 % beside it: 1.7 to a foot. So 100 ft were more
     * than the 160 pixels that the bar may take, 50 ft are not.
     */
    @Test
    void theScaleBarOfTheWindowIsThereToo() {
        assertThat(svg(scene(desk), "")).contains(">50 ft<");
        assertThat(svg(scene(Looking.zoomed(10).on(desk)), "")).contains(">5 ft<");
    }

    @Test
    void plansSideBySideStandThereSideBySideEachWithItsVerdict() {
        Desk both = Looking.showing(Showing.SIDE_BY_SIDE).on(Asking.pin().on(desk));
        List<SeenPlan.Part> parts = Scenes.of(both).stream()
                .map(plan -> new SeenPlan.Part(plan.head(), plan.scene(), 700, 600))
                .toList();
        SeenPlan seen = new SeenPlan("Hall A", parts, List.of());

        assertThat(svg(seen))
                .contains("Pinned: Least copper, proven: weight 538.98 lb")
                .contains("Answer: Least copper, proven: weight 538.98 lb");
        assertThat(svg(seen).split(">high-rack-store<", -1))
                .as("the words of both")
                .hasSize(3);
        assertThat(seen.width()).isGreaterThan(2 * 700);
    }

    private static PlanScene scene(Desk desk) {
        return Scenes.of(desk).get(0).scene();
    }

    private static String svg(PlanScene scene, String head) {
        return svg(seen(new SeenPlan.Part(List.of(head), scene, 900, 600)));
    }

    private static SeenPlan seen(SeenPlan.Part... parts) {
        return new SeenPlan("Hall A", List.of(parts), List.of("A design aid."));
    }

    private static String svg(SeenPlan seen) {
        return new String(SvgFile.of(seen), StandardCharsets.UTF_8).replaceAll("\\s+", " ");
    }
}
