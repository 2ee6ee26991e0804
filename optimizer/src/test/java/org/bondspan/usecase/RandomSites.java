package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.bondspan.usecase.Pen.Spot;

/**
 * Small sites in whole feet, drawn by chance: orthogonal outlines with notches, closed areas, lines, frames, pipes,
 * rings and installed conductors, everything that must be connected on free floor or at the end of a line.
 */
final class RandomSites {
    /** Service conductors in growing order. In copper, what a sum of two needs weighs no more than what both need. */
    private static final List<String> SERVICES = List.of(
            "\"3/0 AWG\", \"sets\": 1",
            "\"250 kcmil\", \"sets\": 1",
            "\"500 kcmil\", \"sets\": 1",
            "\"500 kcmil\", \"sets\": 2",
            "\"500 kcmil\", \"sets\": 4");

    private final Random random;
    private final SiteSketch sketch = new SiteSketch();
    private final List<int[]> areas = new ArrayList<>();
    private final List<Spot> lineEnds = new ArrayList<>();
    private final String level;
    private final int width;
    private final int depth;
    private int notchX;
    private int notchY;
    private boolean hasFrame;
    private boolean largerServices;
    private boolean frameMayCarry = true;

    private RandomSites(Random random, String level, int most) {
        this.random = random;
        this.level = level;
        this.width = 6 + random.nextInt(most - 5);
        this.depth = 5 + random.nextInt(most - 4);
    }

    /** One level of at most 14 x 14 ft with one or two services and at most six things to connect. */
    static RandomSites ofOneLevel(long seed) {
        return ofOneLevel(seed, 14);
    }

    /** The same with at most so many feet in x and in y. */
    static RandomSites ofOneLevel(long seed, int most) {
        RandomSites site = new RandomSites(new Random(seed * 7_919 + 1), "L1", most);
        site.addLevel(0);
        site.addHead();
        site.addLines();
        site.addServices();
        site.addPaths();
        site.addElectrodes(2 + site.random.nextInt(3), "");
        return site;
    }

    /** The same with a second level above, reached by risers, and rods there. */
    static RandomSites ofTwoLevels(long seed) {
        RandomSites site = ofOneLevel(seed);
        RandomSites above = new RandomSites(site.random, "L2", 14);
        above.addLevel(12);
        site.sketch.levels.addAll(above.sketch.levels);
        for (int i = 0; i <= site.random.nextInt(2); i++) {
            Spot at = site.freeSpot();
            String id = "U" + i;
            site.sketch.risers.add(
                    pen -> "\"id\": \"%s\", \"at\": %s, \"levels\": [\"L1\", \"L2\"]".formatted(id, pen.plan(at)));
        }
        above.addElectrodes(1 + site.random.nextInt(2), "above");
        site.sketch.electrodes.addAll(above.sketch.electrodes);
        return site;
    }

    SiteSketch sketch() {
        return sketch;
    }

    /** The next larger conductors for every service. */
    RandomSites withLargerServices() {
        largerServices = true;
        return this;
    }

    RandomSites withFrameThatMayNotCarry() {
        frameMayCarry = false;
        return this;
    }

    /** One more line along which copper may run. */
    RandomSites withOneMoreLine() {
        addLine("P9");
        return this;
    }

    /** Metal that never carries, drawn anywhere. */
    RandomSites withMetalThatNeverCarries() {
        for (String medium : List.of("footing-rebar", "gas-pipe", "roof-deck", "other")) {
            List<Spot> line = randomLine(false);
            sketch.paths.add(pen -> "\"id\": \"N-%s\", \"medium\": \"%s\", \"level\": \"%s\", \"line\": %s"
                    .formatted(medium, medium, level, pen.line(line)));
        }
        return this;
    }

    private boolean oneIn(int several) {
        return random.nextInt(several) == 0;
    }

    private void addLevel(int floor) {
        if (oneIn(2)) {
            notchX = 2 + random.nextInt(width - 4);
            notchY = 2 + random.nextInt(depth - 3);
        }
        List<Spot> outline = notchX == 0
                ? List.of(Spot.of(0, 0), Spot.of(width, 0), Spot.of(width, depth), Spot.of(0, depth))
                : List.of(
                        Spot.of(0, 0),
                        Spot.of(width, 0),
                        Spot.of(width, notchY),
                        Spot.of(notchX, notchY),
                        Spot.of(notchX, depth),
                        Spot.of(0, depth));
        for (int i = random.nextInt(3); i > 0; i--) {
            int x = random.nextInt(width) - 1;
            int y = random.nextInt(depth) - 1;
            areas.add(new int[] {x, y, x + 1 + random.nextInt(width / 2), y + 1 + random.nextInt(depth / 2)});
        }
        sketch.levels.add(pen -> {
            List<String> closed = new ArrayList<>();
            for (int[] a : areas) {
                List<Spot> corners =
                        List.of(Spot.of(a[0], a[1]), Spot.of(a[2], a[1]), Spot.of(a[2], a[3]), Spot.of(a[0], a[3]));
                closed.add(
                        "{\"id\": \"A%s%d\", \"outline\": %s}".formatted(level, closed.size(), pen.outline(corners)));
            }
            return "\"id\": \"%s\", \"floor\": %s, \"outline\": %s, \"open\": {\"height\": 0}, \"closedAreas\": [%s]"
                    .formatted(level, pen.length(floor), pen.outline(outline), String.join(", ", closed));
        });
    }

    private void addHead() {
        int makeUp = random.nextInt(3);
        boolean qualified = oneIn(3);
        sketch.head.add(pen -> "\"makeUpPerEnd\": " + pen.length(makeUp));
        sketch.head.add(pen -> "\"qualifiedPersonsOnly\": " + qualified);
    }

    private boolean isFree(int x, int y) {
        boolean inOutline = x >= 0 && x <= width && y >= 0 && y <= depth;
        boolean inNotch = notchX > 0 && x > notchX && y > notchY;
        return inOutline && !inNotch && areas.stream().noneMatch(a -> a[0] < x && x < a[2] && a[1] < y && y < a[3]);
    }

    /** Somewhere on the floor, most often at its height. */
    private Spot freeSpot() {
        int x;
        int y;
        do {
            x = random.nextInt(width + 1);
            y = random.nextInt(depth + 1);
        } while (!isFree(x, y));
        return new Spot(x, y, oneIn(5) ? random.nextInt(4) - 1 : 0);
    }

    /** As {@link #freeSpot}, or the end of a line wherever it leads. */
    private Spot placeToLand() {
        return !lineEnds.isEmpty() && oneIn(4) ? lineEnds.get(random.nextInt(lineEnds.size())) : freeSpot();
    }

    /** Two or three places in runs parallel to x or y, at one height. */
    private List<Spot> randomLine(boolean withRise) {
        int z = oneIn(4) ? random.nextInt(4) - 1 : 0;
        List<Spot> line = new ArrayList<>(List.of(new Spot(random.nextInt(width + 1), random.nextInt(depth + 1), z)));
        int runs = 1 + random.nextInt(2);
        boolean alongX = random.nextBoolean();
        for (int i = 0; i < runs; i++) {
            Spot last = line.get(line.size() - 1);
            int move = (1 + random.nextInt(8)) * (random.nextBoolean() ? 1 : -1);
            if (withRise && i == 0 && oneIn(3)) {
                line.add(new Spot(last.x(), last.y(), last.z() + move));
            } else {
                line.add(
                        alongX
                                ? new Spot(last.x() + move, last.y(), last.z())
                                : new Spot(last.x(), last.y() + move, last.z()));
                alongX = !alongX;
            }
        }
        return line;
    }

    private void addLine(String id) {
        List<Spot> line = randomLine(false);
        lineEnds.add(line.get(0));
        lineEnds.add(line.get(line.size() - 1));
        sketch.paths.add(pen -> "\"id\": \"%s\", \"medium\": \"copper\", \"level\": \"%s\", \"line\": %s"
                .formatted(id, level, pen.line(line)));
    }

    private void addLines() {
        if (oneIn(2)) {
            addLine("P0");
        }
        if (oneIn(4)) {
            List<Spot> line = randomLine(false);
            String size = List.of("6 AWG", "4 AWG", "2 AWG", "2/0 AWG").get(random.nextInt(4));
            sketch.paths.add(
                    pen -> "\"id\": \"K\", \"medium\": \"conductor\", \"size\": \"%s\", \"level\": \"%s\", \"line\": %s"
                            .formatted(size, level, pen.line(line)));
        }
    }

    private void addServices() {
        boolean oneSupply = random.nextBoolean();
        String material = !oneSupply && oneIn(4) ? "aluminum" : "copper";
        int most = oneSupply || oneIn(2) ? 4 : 5;
        for (int i = 0; i <= random.nextInt(2); i++) {
            int size = random.nextInt(most - 1);
            String id = "S" + i;
            String supply = oneSupply ? "A" : "A" + i;
            List<Spot> at = oneIn(4) ? List.of(freeSpot(), freeSpot()) : List.of(freeSpot());
            sketch.services.add(pen ->
                    "\"id\": \"%s\", \"supply\": \"%s\", \"ungrounded\": {\"material\": \"%s\", \"size\": %s}, %s"
                            .formatted(
                                    id,
                                    supply,
                                    material,
                                    SERVICES.get(largerServices ? size + 1 : size),
                                    pen.connections(level, at)));
        }
    }

    private void addPaths() {
        if (oneIn(2)) {
            addFrame();
        }
        if (oneIn(2)) {
            addPipe();
        }
        if (oneIn(3)) {
            addRing();
        }
    }

    private void addFrame() {
        hasFrame = true;
        int x = random.nextInt(width);
        int y = random.nextInt(depth);
        int x2 = x + 1 + random.nextInt(width - x);
        int y2 = y + 1 + random.nextInt(depth - y);
        boolean oneRow = oneIn(2);
        int bottom = random.nextInt(2);
        int beams = bottom + random.nextInt(4 - bottom);
        boolean mayCarry = !oneIn(4);
        boolean bond = !oneIn(4);
        sketch.paths.add(pen -> {
            String columns = pen.outline(List.of(Spot.of(x, y), Spot.of(x2, y)))
                    + (oneRow ? "" : pen.outline(List.of(Spot.of(x, y2), Spot.of(x2, y2))));
            List<String> beamLines = new ArrayList<>(List.of(pen.outline(List.of(Spot.of(x, y), Spot.of(x2, y)))));
            if (!oneRow) {
                beamLines.add(pen.outline(List.of(Spot.of(x, y2), Spot.of(x2, y2))));
                beamLines.add(pen.outline(List.of(Spot.of(x, y), Spot.of(x, y2))));
                beamLines.add(pen.outline(List.of(Spot.of(x2, y), Spot.of(x2, y2))));
            }
            return "\"id\": \"F\", \"medium\": \"structural-frame\", \"levels\": [\"%s\"], \"columns\": %s, \"beams\": [%s], \"bottom\": %s, \"top\": %s, \"beamHeight\": %s, \"continuous\": true, \"mayCarry\": %s, \"bondingRequired\": %s"
                    .formatted(
                            level,
                            columns.replace("]][[", "], ["),
                            String.join(", ", beamLines),
                            pen.length(bottom),
                            pen.length(3),
                            pen.length(beams),
                            mayCarry && frameMayCarry,
                            bond);
        });
    }

    private void addPipe() {
        List<Spot> line = randomLine(true);
        boolean exposed = random.nextBoolean();
        boolean bond = !oneIn(4);
        int earthContact = oneIn(3) ? 9 : 10;
        int jumper = oneIn(3) ? 1 + random.nextInt(3) : 0;
        boolean installed = oneIn(3);
        sketch.electrodes.add(
                pen -> "\"id\": \"W\", \"type\": \"water-pipe\", \"earthContact\": %s, \"connections\": []"
                        .formatted(pen.length(earthContact)));
        sketch.paths.add(pen ->
                "\"id\": \"WP\", \"medium\": \"water-pipe\", \"electrode\": \"W\", \"level\": \"%s\", \"line\": %s, \"exposed\": %s, \"bondingRequired\": %s%s"
                        .formatted(
                                level,
                                pen.line(line),
                                exposed,
                                bond,
                                jumper == 0
                                        ? ""
                                        : ", \"breaks\": [{\"distance\": %s, \"jumper\": %s, \"installed\": %s}]"
                                                .formatted(pen.length(1), pen.length(jumper), installed)));
    }

    private void addRing() {
        List<Spot> at = oneIn(3) ? List.of(freeSpot()) : List.of(freeSpot(), freeSpot());
        String size = oneIn(2) ? "2 AWG" : "4/0 AWG";
        boolean mayInterconnect = !oneIn(3);
        sketch.electrodes.add(
                pen -> "\"id\": \"G\", \"type\": \"ring\", \"conductorSize\": \"%s\", \"conductorLength\": %s, %s"
                        .formatted(size, pen.length(60), pen.connections(level, at)));
        sketch.paths.add(pen ->
                "\"id\": \"GP\", \"medium\": \"ring\", \"electrode\": \"G\", \"mayInterconnect\": " + mayInterconnect);
    }

    private void addElectrodes(int count, String suffix) {
        for (int i = 0; i < count; i++) {
            List<Spot> at = oneIn(4) ? List.of(placeToLand(), placeToLand()) : List.of(placeToLand());
            String id = "E" + i + suffix;
            Function<Pen, String> facts = facts();
            sketch.electrodes.add(
                    pen -> "\"id\": \"" + id + "\", " + facts.apply(pen) + ", " + pen.connections(level, at));
        }
    }

    private Function<Pen, String> facts() {
        return switch (random.nextInt(5)) {
            case 0, 1 -> pen -> "\"type\": \"rod\", \"diameter\": 0.625, \"rodLength\": " + pen.length(8);
            case 2 -> pen -> "\"type\": \"other-listed\"";
            case 3 -> {
                boolean inFrame = hasFrame && oneIn(2);
                yield pen -> "\"type\": \"in-ground-metal\", \"earthContact\": " + pen.length(10)
                        + (inFrame ? ", \"frame\": \"F\"" : "");
            }
            default -> {
                boolean tied = hasFrame && oneIn(2);
                boolean use = oneIn(3);
                yield pen ->
                        "\"type\": \"concrete-encased\", \"conductor\": \"rebar\", \"diameter\": 0.5, \"cover\": 2, \"use\": "
                                + use + ", \"conductorLength\": " + pen.length(20)
                                + (tied ? ", \"tiedToFrame\": {\"frame\": \"F\", \"means\": \"weld\"}" : "");
            }
        };
    }
}
