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
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
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

        SeenPlan narrow = new SeenPlan("Hall A", List.of(one), List.of(), scene(desk), 400, 300);
        SeenPlan high = new SeenPlan("Hall A", List.of(many), List.of(), scene(desk), 400, 300);
        assertThat(high.height()).isGreaterThan(narrow.height());
        assertThat(high.width()).isEqualTo(narrow.width());
    }

    private static PlanScene scene(Desk desk) {
        return Scenes.of(desk).get(0).scene();
    }

    private static String svg(PlanScene scene, String head) {
        SeenPlan seen = new SeenPlan("Hall A", List.of(head), List.of("A design aid."), scene, 900, 600);
        return new String(SvgFile.of(seen), StandardCharsets.UTF_8).replaceAll("\\s+", " ");
    }
}
