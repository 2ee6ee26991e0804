package org.bondspan.sheet.plan;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.site.PlanPoint;

/**
 * Sets lines that would cover each other side by side: says of each straight stretch how far beside its true place it
 * is painted. Walls stay where they are; conductors and piping move to their inside, rings and what may not carry to
 * the outside. Elsewhere conductors stay as long as there is room. Beams and lines where copper may run are the way
 * that a conductor takes and lie below it; the latter leave walls to the same side.
 */
final class SideBySide {
    /** Between the edges of two lines, in points. */
    private static final double GAP = 2;

    /** Half the height of letters in a line, with their ground. */
    private static final double LETTER = 3.7;

    /** Lines that would have to stand further aside share the last place, in points. */
    private static final double FARTHEST = 24;

    /** What is painted by itself, with all stretches that lie on the same endless straight line. */
    private record Track(long dx, long dy, BigInteger offset) {}

    /** One straight piece of a run, from {@code low} to {@code high} along its track. */
    private record Stretch(Item.Run run, int piece, boolean isForward, long low, long high) {
        boolean overlaps(Stretch other) {
            return low < other.high && other.low < high;
        }

        boolean isFixed() {
            return isWall(run);
        }

        boolean isConductor() {
            return run.layer() == Layer.CONDUCTORS;
        }

        /** Footings and rings lie outside a wall, or below it. */
        boolean liesInside() {
            return run.layer() != Layer.NOT_PERMITTED && run.kind() != LineKind.RING;
        }

        boolean isWay() {
            return run.kind() == LineKind.ALLOWED_COPPER;
        }

        /** Whether the two may not cover each other. */
        boolean keepsFrom(Stretch other) {
            return !other.run.equals(run) && overlaps(other) && (isWay() ? other.isFixed() : !other.isWay());
        }
    }

    /** A stretch in its place: to the left of the track, to the right where negative, in points. */
    private record Placed(Stretch stretch, double aside) {}

    private SideBySide() {}

    /** The same items in the same order, runs with their places beside each other. */
    static List<Item> of(List<Item> items) {
        Map<Track, List<Stretch>> tracks = new LinkedHashMap<>();
        for (Item item : items) {
            if (item instanceof Item.Run run && takesPart(run)) {
                addStretches(run, tracks);
            }
        }
        Map<Item.Run, Float[]> moved = new LinkedHashMap<>();
        tracks.values().stream().filter(track -> track.size() > 1).forEach(track -> place(track, moved));
        return items.stream().map(item -> aside(item, moved)).toList();
    }

    private static boolean takesPart(Item.Run run) {
        return switch (run.kind()) {
            case BEAM, BEAM_THAT_CARRIES_NOTHING -> false;
            default -> true;
        };
    }

    private static boolean isWall(Item.Run run) {
        return run.kind() == LineKind.WALL || run.kind() == LineKind.INNER_WALL;
    }

    private static Item aside(Item item, Map<Item.Run, Float[]> moved) {
        Float[] aside = item instanceof Item.Run run ? moved.get(run) : null;
        return aside == null ? item : ((Item.Run) item).beside(Arrays.asList(aside));
    }

    private static void addStretches(Item.Run run, Map<Track, List<Stretch>> tracks) {
        for (int i = 0; i + 1 < run.places().size(); i++) {
            PlanPoint from = run.places().get(i);
            PlanPoint to = run.places().get(i + 1);
            if (!from.equals(to)) {
                Track track = track(from, to);
                long a = track.dx() != 0 ? from.x() : from.y();
                long b = track.dx() != 0 ? to.x() : to.y();
                tracks.computeIfAbsent(track, key -> new ArrayList<>())
                        .add(new Stretch(run, i, a < b, Math.min(a, b), Math.max(a, b)));
            }
        }
    }

    /** Its direction in lowest terms, eastwards, or northwards where it has no other; exact. */
    private static Track track(PlanPoint from, PlanPoint to) {
        BigInteger x = BigInteger.valueOf(to.x()).subtract(BigInteger.valueOf(from.x()));
        BigInteger y = BigInteger.valueOf(to.y()).subtract(BigInteger.valueOf(from.y()));
        BigInteger common = x.gcd(y);
        boolean isBackward = x.signum() < 0 || (x.signum() == 0 && y.signum() < 0);
        BigInteger dx = x.divide(isBackward ? common.negate() : common);
        BigInteger dy = y.divide(isBackward ? common.negate() : common);
        BigInteger offset =
                dx.multiply(BigInteger.valueOf(from.y())).subtract(dy.multiply(BigInteger.valueOf(from.x())));
        return new Track(dx.longValueExact(), dy.longValueExact(), offset);
    }

    /** Walls first, then conductors, the heaviest first, then the others in their order. */
    private static void place(List<Stretch> track, Map<Item.Run, Float[]> moved) {
        List<Stretch> order = new ArrayList<>(track);
        order.sort(Comparator.comparing((Stretch stretch) -> !stretch.isFixed())
                .thenComparing(stretch -> !stretch.isConductor())
                .thenComparing(stretch -> -stretch.run().pen().width()));
        List<Placed> placed = new ArrayList<>();
        for (Stretch stretch : order) {
            double aside = stretch.isFixed() ? 0 : aside(stretch, placed);
            placed.add(new Placed(stretch, aside));
            if (aside != 0) {
                Float[] all = moved.computeIfAbsent(stretch.run(), run -> {
                    Float[] none = new Float[run.places().size() - 1];
                    Arrays.fill(none, 0f);
                    return none;
                });
                all[stretch.piece()] = (float) (stretch.isForward() ? aside : -aside);
            }
        }
    }

    private static double aside(Stretch stretch, List<Placed> placed) {
        List<Placed> others = placed.stream()
                .filter(other -> stretch.keepsFrom(other.stretch()))
                .toList();
        if (others.stream().allMatch(other -> isClear(stretch, 0, other))) {
            return 0;
        }
        double left = nearest(stretch, others, 1);
        double right = nearest(stretch, others, -1);
        Optional<Placed> wall =
                others.stream().filter(other -> other.stretch().isFixed()).findFirst();
        if (wall.isPresent()) {
            return isInsideLeft(wall.get().stretch()) == stretch.liesInside() ? left : right;
        }
        return left <= -right ? left : right;
    }

    /** The nearest free place on that side: 1 left, -1 right. */
    private static double nearest(Stretch stretch, List<Placed> others, int side) {
        List<Placed> outwards = others.stream()
                .sorted(Comparator.comparingDouble(other -> side * other.aside()))
                .toList();
        double aside = 0;
        for (Placed other : outwards) {
            if (!isClear(stretch, aside, other)) {
                aside = other.aside() + side * distance(stretch, other.stretch());
            }
        }
        return side * Math.min(FARTHEST, side * aside);
    }

    private static boolean isClear(Stretch stretch, double aside, Placed other) {
        return Math.abs(aside - other.aside()) >= distance(stretch, other.stretch()) - 1e-6;
    }

    private static double distance(Stretch a, Stretch b) {
        return reach(a) + reach(b) + GAP;
    }

    /** From the middle of a line to its edge; crosses and letters stand out. */
    private static double reach(Stretch stretch) {
        Pen pen = stretch.run().pen();
        boolean standsOut =
                pen.crossed() == Pen.Crosses.ALONG_THE_LINE || !pen.letter().isEmpty();
        return Math.max(pen.width() / 2, standsOut ? LETTER : 0);
    }

    /** Whether the building lies to the left of that wall's track: of an outline that turns left, as it runs. */
    private static boolean isInsideLeft(Stretch wall) {
        List<PlanPoint> places = wall.run().places();
        double area = 0;
        PlanPoint origin = places.get(0);
        for (int i = 0; i + 1 < places.size(); i++) {
            PlanPoint a = places.get(i);
            PlanPoint b = places.get(i + 1);
            area += (double) (a.x() - origin.x()) * (b.y() - origin.y())
                    - (double) (b.x() - origin.x()) * (a.y() - origin.y());
        }
        return (area >= 0) == wall.isForward();
    }
}
