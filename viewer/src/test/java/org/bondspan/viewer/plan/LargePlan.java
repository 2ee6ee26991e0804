package org.bondspan.viewer.plan;

import java.util.Random;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.Symbol;

/** A made-up plan of 200 by 125 m with as many separate segments as asked for, a hundredth of them conductors. */
final class LargePlan {
    private static final int CONDUCTORS_ONE_IN = 100;
    private static final int COLUMNS = 160;

    private LargePlan() {}

    static Picture of(int segments, long seed) {
        Random random = new Random(seed);
        Drawn plan = new Drawn();
        int rows = segments / 2 / COLUMNS;
        double dx = 200.0 / COLUMNS;
        double dy = 125.0 / rows;
        plan.run("L1", Layer.BUILDING, LineKind.WALL, 0, 0, 200, 0, 200, 125, 0, 125, 0, 0);
        for (int i = 0; i < segments; i++) {
            int row = i / 2 / COLUMNS;
            double x = i / 2 % COLUMNS * dx;
            double y = row * dy;
            double[] places = i % 2 == 0 ? new double[] {x, y, x + dx, y} : new double[] {x, y, x, y + dy};
            if (random.nextInt(CONDUCTORS_ONE_IN) == 0) {
                plan.run("C" + i, Layer.CONDUCTORS, LineKind.BONDING_JUMPER, places);
                plan.note("C" + i, Layer.CONDUCTORS, Note.Kind.CONDUCTOR, places);
            } else {
                plan.run("path-" + i, Layer.ALLOWED_COPPER, LineKind.ALLOWED_COPPER, places);
            }
        }
        for (int i = 0; i < 100; i++) {
            double x = random.nextInt(COLUMNS) * dx;
            double y = random.nextInt(rows) * dy;
            plan.mark("rod-" + i, Layer.ELECTRODES, Symbol.ELECTRODE, x, y);
            plan.note("rod-" + i, Layer.ELECTRODES, Note.Kind.ELECTRODE, x, y);
        }
        return plan.picture();
    }
}
