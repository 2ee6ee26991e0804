package org.bondspan.network;

import java.util.Optional;
import org.apache.commons.math3.util.ArithmeticUtils;
import org.bondspan.site.PlanPoint;

/**
 * A direction in which a wall leaves a place, or an edge beyond which there is no floor.
 *
 * @param dx with {@code dy} the direction, without common divisor
 * @param wall empty for an edge of the floor
 */
record WallRay(long dx, long dy, Optional<String> wall) {

    static WallRay between(PlanPoint from, PlanPoint to, Optional<String> wall) {
        long dx = to.x() - from.x();
        long dy = to.y() - from.y();
        long divisor = ArithmeticUtils.gcd(dx, dy);
        return new WallRay(dx / divisor, dy / divisor, wall);
    }

    boolean isAlong(WallRay other) {
        return dx == other.dx && dy == other.dy;
    }

    /** From east, counter-clockwise, 0 to less than a full turn. */
    double angle() {
        double angle = StrictMath.atan2((double) dy, (double) dx);
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }
}
