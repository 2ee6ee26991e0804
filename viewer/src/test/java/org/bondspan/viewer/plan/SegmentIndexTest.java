package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.Symbol;
import org.bondspan.site.PlanPoint;
import org.bondspan.viewer.Seeds;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SegmentIndexTest {
    private static LongStream seeds() {
        return Seeds.seeds();
    }

    /** Against java.awt.geom, asked of every line. */
    @ParameterizedTest
    @MethodSource("seeds")
    void missesNothingThatPassesThroughARegion(long seed) {
        Random random = new Random(seed);
        Picture picture = picture(random);
        SegmentIndex index = new SegmentIndex(picture);
        for (int i = 0; i < 20; i++) {
            PlanPoint one = Drawn.at(random.nextInt(120) - 10, random.nextInt(80) - 10);
            PlanPoint other = Drawn.at(random.nextInt(120) - 10, random.nextInt(80) - 10);
            Bounds region = Bounds.around(List.of(one, other));
            List<Item> near = index.near(region);
            List<Item> passing = picture.items().stream()
                    .filter(item -> passes(item, region))
                    .toList();
            assertThat(near).containsAll(passing);
            assertThat(near).isSubsetOf(picture.items());
            assertThat(near.stream().map(picture.items()::indexOf).toList()).isSorted();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void leavesOutMostOfWhatLiesElsewhere(long seed) {
        Picture picture = LargePlan.of(4_000, seed);
        Bounds region = new Bounds(0, 0, 20 * Drawn.METRE, 12 * Drawn.METRE);
        // a hundredth of the plan, and the cells at its edge
        assertThat(new SegmentIndex(picture).near(region).size())
                .isLessThan(picture.items().size() / 20);
    }

    private static Picture picture(Random random) {
        Drawn plan = new Drawn();
        for (int i = 0; i < 200; i++) {
            double[] line = {
                random.nextInt(100),
                random.nextInt(60),
                random.nextInt(100),
                random.nextInt(60),
                random.nextInt(100),
                random.nextInt(60)
            };
            line[3] = random.nextBoolean() ? line[1] : line[3];
            line[4] = random.nextBoolean() ? line[2] : line[4];
            plan.run("path-" + i, Layer.ALLOWED_COPPER, LineKind.ALLOWED_COPPER, line);
        }
        plan.mark("rod", Layer.ELECTRODES, Symbol.ELECTRODE, 50, 30);
        return plan.picture();
    }

    private static boolean passes(Item item, Bounds region) {
        Rectangle2D box = new Rectangle2D.Double(region.west(), region.south(), region.width(), region.height());
        List<Boolean> pieces = new ArrayList<>();
        if (item.places().size() == 1) {
            return region.contains(item.places().get(0));
        }
        for (int i = 1; i < item.places().size(); i++) {
            PlanPoint a = item.places().get(i - 1);
            PlanPoint b = item.places().get(i);
            pieces.add(box.intersectsLine(new Line2D.Double(a.x(), a.y(), b.x(), b.y())));
        }
        return pieces.contains(true);
    }
}
