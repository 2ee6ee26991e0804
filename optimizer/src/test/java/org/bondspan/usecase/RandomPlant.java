package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Small random sites, with walls, a frame and heights, and price books for them. */
final class RandomPlant {
    private final SplittableRandom random;

    RandomPlant(long seed) {
        random = new SplittableRandom(seed);
    }

    private int at(int most) {
        return 5 * random.nextInt(most / 5 + 1);
    }

    private int most(int number) {
        return random.nextInt(number + 1);
    }

    String site() {
        List<String> walls = new ArrayList<>();
        for (int i = 0; i < random.nextInt(4); i++) {
            int x = 5 + at(30);
            int y = at(15);
            boolean upright = random.nextBoolean();
            walls.add("{\"id\": \"X%d\", \"line\": [[%d, %d], [%d, %d]], \"crossing\": %d}"
                    .formatted(
                            i, x, y, upright ? x : x + 5 + at(10), upright ? y + 5 + at(10) : y, random.nextInt(60)));
        }
        String level = "{\"id\": \"L1\", \"outline\": %s, \"open\": {\"height\": %d}, \"walls\": %s}"
                .formatted(Sites.rectangle(60, 40), 3 * random.nextInt(6), walls);
        List<String> electrodes = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            electrodes.add("{\"id\": \"R%d\", $rod, $at(%d, %d)}".formatted(i, at(60), at(40)));
        }
        electrodes.add("{\"id\": \"W\", $water, \"connections\": [{\"at\": [%d, %d], \"fromEntrance\": 0}]}"
                .formatted(at(60), at(40)));
        String[] sizes = {"2 AWG", "1/0 AWG", "350 kcmil", "500 kcmil"};
        String frame = random.nextInt(3) > 0
                ? ""
                : ", \"paths\": [{\"id\": \"F\", \"medium\": \"structural-frame\", \"grid\": {\"x\": [5, 55], \"y\": [5, 35]}, \"top\": 20,"
                        + " \"continuous\": true}]";
        return Sites.site(level, """
                "makeUpPerEnd": %d, "wastePercent": %d,
                "services": [{"id": "S", $copper(%s), $at(%d, %d)}],
                "electrodes": [%s]%s""".formatted(
                        1 + random.nextInt(3),
                        random.nextInt(3) * 5,
                        sizes[random.nextInt(4)],
                        at(60),
                        at(40),
                        String.join(", ", electrodes),
                        frame));
    }

    /** The same book where labor takes longer above 5 ft and above 10 ft. */
    String bookWithHeights() {
        String book = book(1).strip();
        return book.substring(0, book.length() - 1)
                + ", \"heights\": [{\"above\": 5, \"factor\": 1.2}, {\"above\": 10, \"factor\": 1.5}]}";
    }

    /**
     * Prices in whole dollars per 1000 ft and hours in whole numbers: every rate can be multiplied without rounding.
     */
    String book(int times) {
        List<String> conductors = new ArrayList<>();
        int price = 200;
        for (String size : List.of("8 AWG", "6 AWG", "4 AWG", "2 AWG", "1/0 AWG")) {
            price += random.nextInt(-50, 400);
            conductors.add(
                    "{\"size\": \"%s\", \"per1000ft\": %d, \"hours\": {\"exposed\": %d, \"raceway\": %d, \"buried\": 5}}"
                            .formatted(size, times * price, 4 + most(20), 5 + most(20)));
        }
        List<String> connections = new ArrayList<>();
        for (String kind :
                List.of("service-lug", "rod-clamp", "pipe-clamp", "frame-weld", "exothermic-tap", "irreversible-tap")) {
            connections.add("\"%s\": {\"price\": %d, \"hours\": %d}".formatted(kind, times * most(60), most(1)));
        }
        return """
                {"format": "bondspan-prices/1", "labor": {"perHour": %d}, "conductors": [%s],
                 "raceway": {"per1000ft": %d, "hours": %d}, "connections": {%s}}""".formatted(
                        times * most(80),
                        String.join(", ", conductors),
                        times * most(900),
                        most(30),
                        String.join(", ", connections));
    }
}
