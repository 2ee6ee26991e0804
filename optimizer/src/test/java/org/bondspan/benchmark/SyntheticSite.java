package org.bondspan.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A made-up building, the same for the same seed: one open floor with closed rooms that neither touch nor overlap,
 * drawn copper lines, and things to be connected scattered over all of it, which is harder than along the walls. A
 * service, a water pipe, a footing, a ring, in-ground metal and rods need four sizes. The size of its network is
 * steered by the number of rooms and lines, whose corners lie at uneven distances.
 */
final class SyntheticSite {
    private static final double ROOMS_COVER = 0.25;
    private static final double KEPT = 0.89;
    /** Steps of a coordinate in a foot. */
    private static final int STEPS = 20;

    private static final int HALF_FOOT = STEPS / 2;

    private final SplittableRandom random;
    private final int width;
    private final int depth;
    private final List<Room> rooms = new ArrayList<>();

    /** Coordinates in steps. */
    private record Room(int west, int south, int east, int north) {
        boolean isNear(Room other) {
            return west <= other.east + HALF_FOOT
                    && other.west <= east + HALF_FOOT
                    && south <= other.north + HALF_FOOT
                    && other.south <= north + HALF_FOOT;
        }
    }

    private SyntheticSite(long seed, int width, int depth) {
        this.random = new SplittableRandom(seed);
        this.width = STEPS * width;
        this.depth = STEPS * depth;
    }

    /**
     * The text of a site file.
     *
     * @param feet width of the floor; its depth is two thirds of that
     * @param nodes about how many nodes the network is to have
     * @param terminals what is to be connected, the service included; at least 5
     */
    static String text(long seed, int feet, int nodes, int terminals) {
        SyntheticSite made = new SyntheticSite(seed, feet, 2 * feet / 3);
        int lines = (int) Math.round(Math.sqrt(nodes / KEPT));
        made.addRooms(3 * lines / 10);
        return made.site(lines / 5, terminals);
    }

    private void addRooms(int count) {
        int side = (int) Math.sqrt(ROOMS_COVER * width / count * depth);
        while (rooms.size() < count) {
            int west = HALF_FOOT + random.nextInt(width - STEPS);
            int south = HALF_FOOT + random.nextInt(depth - STEPS);
            int reachX = side / 2 + random.nextInt(side);
            int reachY = side / 2 + random.nextInt(side);
            Room room = new Room(west, south, west + reachX, south + reachY);
            boolean inside = room.east < width - HALF_FOOT && room.north < depth - HALF_FOOT;
            if (inside && rooms.stream().noneMatch(room::isNear)) {
                rooms.add(room);
            }
        }
    }

    private String site(int lines, int terminals) {
        List<String> electrodes = new ArrayList<>();
        electrodes.add("{\"id\": \"water\", \"type\": \"water-pipe\", \"earthContact\": 20, \"use\": \"domestic\"}");
        electrodes.add(
                ("{\"id\": \"footing\", \"type\": \"concrete-encased\", \"conductor\": \"rebar\", \"diameter\": 0.5,"
                                + " \"conductorLength\": 40, \"cover\": 2, %s}")
                        .formatted(connections(1)));
        electrodes.add(("{\"id\": \"ring\", \"type\": \"ring\", \"conductorSize\": \"2 AWG\", \"conductorLength\": 400,"
                        + " \"depth\": 3, %s}")
                .formatted(connections(3)));
        electrodes.add("{\"id\": \"casing\", \"type\": \"in-ground-metal\", \"earthContact\": 15, %s}"
                .formatted(connections(1)));
        for (int rod = 1; electrodes.size() < terminals - 1; rod++) {
            electrodes.add("{\"id\": \"rod-%d\", \"type\": \"rod\", \"rodLength\": 8, \"diameter\": 0.625, %s}"
                    .formatted(rod, connections(1)));
        }
        return """
                {"format": "bondspan-site/1", "makeUpPerEnd": 2,
                 "levels": [{"id": "L1", "outline": %s, "open": {"height": 10}, "closedAreas": [%s]}],
                 "services": [{"id": "main", "ungrounded": {"material": "copper", "size": "500 kcmil", "sets": 3}, %s}],
                 "electrodes": [%s],
                 "paths": [%s]}""".formatted(
                        outline(new Room(0, 0, width, depth)),
                        closedAreas(),
                        connections(1),
                        String.join(",\n", electrodes),
                        String.join(",\n", paths(lines)));
    }

    private String closedAreas() {
        List<String> areas = new ArrayList<>();
        for (Room room : rooms) {
            areas.add("{\"id\": \"room-%d\", \"outline\": %s}".formatted(areas.size() + 1, outline(room)));
        }
        return String.join(",\n", areas);
    }

    private List<String> paths(int lines) {
        List<String> paths = new ArrayList<>();
        int[] entry = openPlace();
        paths.add(("{\"id\": \"water-entry\", \"medium\": \"water-pipe\", \"electrode\": \"water\", \"exposed\": true,"
                        + " \"line\": [%s, %s, %s]}")
                .formatted(
                        pipe(entry[0], entry[1], 2),
                        pipe(entry[0], entry[1], 9),
                        pipe(entry[0], entry[1] + 4 * STEPS, 9)));
        for (int line = 1; line <= lines; line++) {
            int x = random.nextInt(width - 60 * STEPS);
            int y = random.nextInt(depth - 60 * STEPS);
            int toX = x + 2 * STEPS + random.nextInt(50 * STEPS);
            int toY = y + 2 * STEPS + random.nextInt(50 * STEPS);
            paths.add("{\"id\": \"line-%d\", \"medium\": \"copper\", \"line\": [%s, %s, %s], \"height\": 10}"
                    .formatted(line, place(x, y), place(toX, y), place(toX, toY)));
        }
        return paths;
    }

    private String connections(int count) {
        List<String> connections = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int[] at = openPlace();
            connections.add("{\"id\": \"c%d\", \"at\": %s, \"height\": 1}".formatted(i + 1, place(at[0], at[1])));
        }
        return "\"connections\": [%s]".formatted(String.join(", ", connections));
    }

    /** A place in no room, and 5 ft from the north side at least. */
    private int[] openPlace() {
        while (true) {
            int x = random.nextInt(width);
            int y = random.nextInt(depth - 5 * STEPS);
            Room here = new Room(x, y, x, y);
            if (rooms.stream().noneMatch(here::isNear)) {
                return new int[] {x, y};
            }
        }
    }

    private static String outline(Room room) {
        return "[%s, %s, %s, %s]"
                .formatted(
                        place(room.west, room.south),
                        place(room.east, room.south),
                        place(room.east, room.north),
                        place(room.west, room.north));
    }

    private static String place(int x, int y) {
        return String.format(Locale.ROOT, "[%.2f, %.2f]", x / (double) STEPS, y / (double) STEPS);
    }

    private static String pipe(int x, int y, int height) {
        return String.format(Locale.ROOT, "[%.2f, %.2f, %d]", x / (double) STEPS, y / (double) STEPS, height);
    }
}
