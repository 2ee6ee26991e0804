package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Least costs of tiny sites against every lawful tree there is. Copper may run along a few drawn lines only; each
 * subset of them is tried and priced here anew, from lengths, Table 250.66 and prices alone.
 */
class LeastCostByTryingTest {
    private static final List<String> SIZES = List.of("8 AWG", "6 AWG", "4 AWG", "2 AWG", "1/0 AWG");

    /** Table 250.66, copper: service size to place in the list above. */
    private static final Map<String, Integer> TABLE =
            Map.of("2 AWG", 0, "1/0 AWG", 1, "3/0 AWG", 2, "350 kcmil", 3, "500 kcmil", 4);

    static LongStream seeds() {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, 150) : LongStream.of(only);
    }

    private record Line(int a, int b, int feet) {}

    /** Cents per ft of each size, installed; terminal 0 is the service. */
    private record Drawing(
            List<Line> lines,
            List<Integer> places,
            List<Boolean> isRod,
            int table,
            List<Integer> perFoot,
            List<Integer> landing,
            int tap) {}

    private final List<String> names = List.of("S", "E1", "E2", "E3");

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noLawfulTreeCostsLess(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Line> lines = new ArrayList<>();
        for (int v = 0; v < 9; v++) {
            if (v % 3 < 2 && random.nextInt(5) > 0) {
                lines.add(new Line(v, v + 1, 10 + random.nextInt(30)));
            }
            if (v < 6 && random.nextInt(5) > 0) {
                lines.add(new Line(v, v + 3, 10 + random.nextInt(30)));
            }
        }
        int terminals = 2 + random.nextInt(3);
        List<Integer> places = new ArrayList<>();
        List<Boolean> rods = new ArrayList<>();
        for (int t = 0; t < terminals; t++) {
            places.add(random.nextInt(9));
            rods.add(t > 0 && random.nextBoolean());
        }
        String service =
                List.of("2 AWG", "1/0 AWG", "3/0 AWG", "350 kcmil", "500 kcmil").get(random.nextInt(5));
        int[] perFoot = new int[5];
        for (int i = 0; i < 5; i++) {
            perFoot[i] = 20 + random.nextInt(200);
        }
        int tap = random.nextInt(3_000);
        int[] landing = {random.nextInt(2_000), random.nextInt(2_000), random.nextInt(2_000)};
        Drawing drawing = new Drawing(lines, places, rods, tableOf(service), listOf(perFoot), listOf(landing), tap);
        long least = least(drawing);
        String site = site(drawing, service);
        if (least == Long.MAX_VALUE) {
            return;
        }
        assertThat(Priced.of(site, book(drawing)).total())
                .as("seed %d of %s", seed, site)
                .isEqualByComparingTo(BigDecimal.valueOf(least, 2));
    }

    private static int tableOf(String service) {
        Integer size = TABLE.get(service);
        if (size == null) {
            throw new IllegalArgumentException(service);
        }
        return size;
    }

    private String site(Drawing drawing, String service) {
        List<String> electrodes = new ArrayList<>();
        for (int t = 1; t < drawing.places().size(); t++) {
            String at = "%d, %d"
                    .formatted(x(drawing.places().get(t)), y(drawing.places().get(t)));
            electrodes.add(
                    drawing.isRod().get(t)
                            ? "{\"id\": \"%s\", $rod, $at(%s)}".formatted(names.get(t), at)
                            : "{\"id\": \"%s\", $water, \"connections\": [{\"at\": [%s], \"fromEntrance\": 0}]}"
                                    .formatted(names.get(t), at));
        }
        List<String> paths = new ArrayList<>();
        for (Line line : drawing.lines()) {
            paths.add("{\"id\": \"P%d\", \"medium\": \"copper\", \"line\": [[%d, %d], [%d, %d]], \"length\": %d}"
                    .formatted(paths.size(), x(line.a()), y(line.a()), x(line.b()), y(line.b()), line.feet()));
        }
        return Sites.linesOnly(
                60,
                60,
                "\"makeUpPerEnd\": 2, \"services\": [{\"id\": \"S\", $copper(%s), $at(%d, %d)}], \"electrodes\": %s, \"paths\": %s"
                        .formatted(
                                service,
                                x(drawing.places().get(0)),
                                y(drawing.places().get(0)),
                                electrodes,
                                paths));
    }

    private static int x(int place) {
        return 20 * (place % 3);
    }

    private static int y(int place) {
        return 20 * (place / 3);
    }

    private static String book(Drawing drawing) {
        List<String> conductors = new ArrayList<>();
        for (int i = 0; i < SIZES.size(); i++) {
            conductors.add("{\"size\": \"%s\", \"per1000ft\": %d, \"hours\": {\"exposed\": 0, \"raceway\": 0}}"
                    .formatted(SIZES.get(i), 10 * drawing.perFoot().get(i)));
        }
        return """
                {"format": "bondspan-prices/1", "labor": {"perHour": 1}, "conductors": %s,
                 "raceway": {"per1000ft": 0, "hours": 0},
                 "connections": {
                   "service-lug": {"price": %s, "hours": 0}, "rod-clamp": {"price": %s, "hours": 0},
                   "pipe-clamp": {"price": %s, "hours": 0}, "exothermic-tap": {"price": %s, "hours": 0}
                 }}""".formatted(
                        conductors,
                        BigDecimal.valueOf(drawing.landing().get(0), 2),
                        BigDecimal.valueOf(drawing.landing().get(1), 2),
                        BigDecimal.valueOf(drawing.landing().get(2), 2),
                        BigDecimal.valueOf(drawing.tap(), 2));
    }

    private static long least(Drawing drawing) {
        long least = Long.MAX_VALUE;
        for (int chosen = 0; chosen < 1 << drawing.lines().size(); chosen++) {
            least = Math.min(least, cost(drawing, chosen));
        }
        return least;
    }

    /** What a set of lines costs in cents; nothing less than the greatest number when it is no tree of all. */
    private static long cost(Drawing drawing, int chosen) {
        boolean[] all = reached(drawing, chosen, drawing.places().get(0));
        int[] meeting = new int[9];
        int lines = 0;
        long cents = 0;
        for (int i = 0; i < drawing.lines().size(); i++) {
            if ((chosen >> i & 1) == 1) {
                Line line = drawing.lines().get(i);
                if (!all[line.a()]) {
                    return Long.MAX_VALUE;
                }
                lines++;
                meeting[line.a()]++;
                meeting[line.b()]++;
                boolean[] near =
                        reached(drawing, chosen & ~(1 << i), drawing.places().get(0));
                cents += (long) line.feet() * perFoot(drawing, need(drawing, near));
            }
        }
        int nodes = 0;
        for (int v = 0; v < 9; v++) {
            nodes += all[v] ? 1 : 0;
        }
        if (lines != nodes - 1) {
            return Long.MAX_VALUE;
        }
        for (int t = 0; t < drawing.places().size(); t++) {
            if (!all[drawing.places().get(t)]) {
                return Long.MAX_VALUE;
            }
            meeting[drawing.places().get(t)]++;
            int need = t == 0 ? need(drawing, new boolean[9]) : ofElectrode(drawing, t);
            cents += 2L * perFoot(drawing, need)
                    + drawing.landing().get(t == 0 ? 0 : drawing.isRod().get(t) ? 1 : 2);
        }
        return cents + Arrays.stream(meeting).mapToLong(k -> Math.max(0, k - 2)).sum() * drawing.tap();
    }

    /** 250.66: the table for water pipes, 6 AWG at most for rods; the largest of what lies beyond. */
    private static int need(Drawing drawing, boolean[] near) {
        int need = 0;
        for (int t = 1; t < drawing.places().size(); t++) {
            need = near[drawing.places().get(t)] ? need : Math.max(need, ofElectrode(drawing, t));
        }
        return need;
    }

    private static int ofElectrode(Drawing drawing, int terminal) {
        return drawing.isRod().get(terminal) ? Math.min(1, drawing.table()) : drawing.table();
    }

    private static List<Integer> listOf(int... values) {
        return Arrays.stream(values).boxed().toList();
    }

    private static int perFoot(Drawing drawing, int need) {
        return Collections.min(drawing.perFoot().subList(need, 5));
    }

    private static boolean[] reached(Drawing drawing, int chosen, int start) {
        boolean[] reached = new boolean[9];
        reached[start] = true;
        for (int pass = 0; pass < 9; pass++) {
            for (int i = 0; i < drawing.lines().size(); i++) {
                Line line = drawing.lines().get(i);
                if ((chosen >> i & 1) == 1 && (reached[line.a()] || reached[line.b()])) {
                    reached[line.a()] = true;
                    reached[line.b()] = true;
                }
            }
        }
        return reached;
    }
}
