package org.bondspan.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Random orthogonal floors: lines at uneven distances, rectangles cut out, a steel frame with columns, a ring that
 * carries up to its own size, terminals with make-up and choices. Terminal 0 is the service; every other has its own
 * largest rank.
 */
final class GridSketch {

    private static final long[] COPPER = {510, 810, 1289, 2049, 2584};

    private final SplittableRandom random;
    private final int side;
    private final int ranks;
    private final boolean[] hole;
    private final List<Boolean> metal = new ArrayList<>();
    private final List<List<Long>> tariffs = new ArrayList<>();
    private final List<Sketch.Stretch> edges = new ArrayList<>();
    private final List<List<Sketch.Landing>> terminals = new ArrayList<>();

    private GridSketch(SplittableRandom random, int side, int ranks) {
        this.random = random;
        this.side = side;
        this.ranks = ranks;
        hole = new boolean[side * side];
        List<Long> copper = new ArrayList<>();
        for (int rank = 0; rank < ranks; rank++) {
            copper.add(COPPER[rank]);
        }
        tariffs.add(copper);
        addHoles();
        addFloor();
    }

    /** Copper alone, every terminal with one landing at no length. */
    static Sketch plain(long seed, int side, int terminals, int ranks) {
        GridSketch made = new GridSketch(new SplittableRandom(seed), side, ranks);
        for (int t = 0; t < terminals; t++) {
            made.terminals.add(List.of(new Sketch.Landing(made.place(), 0, 0)));
        }
        return made.sketch();
    }

    /** With steel, a ring, make-up and choices of landings. */
    static Sketch rich(long seed, int side, int terminals, int ranks) {
        GridSketch made = new GridSketch(new SplittableRandom(seed), side, ranks);
        made.addFrame();
        made.addRing();
        for (int t = 0; t < terminals; t++) {
            int count = made.random.nextInt(3) == 0 ? 1 + made.random.nextInt(4) : 1;
            List<Sketch.Landing> ways = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                ways.add(new Sketch.Landing(made.place(), made.random.nextInt(3) * 6L, 0));
            }
            made.terminals.add(ways);
        }
        return made.sketch();
    }

    private void addHoles() {
        for (int count = side / 3; count > 0; count--) {
            int x = random.nextInt(side);
            int y = random.nextInt(side);
            int toX = Math.min(side - 1, x + 1 + random.nextInt(1 + side / 4));
            int toY = Math.min(side - 1, y + 1 + random.nextInt(1 + side / 4));
            for (int i = x; i < toX; i++) {
                for (int j = y; j < toY; j++) {
                    hole[i * side + j] = true;
                }
            }
        }
    }

    private void addFloor() {
        long[] dx = random.longs(side, 6, 60).toArray();
        long[] dy = random.longs(side, 6, 60).toArray();
        for (int v = 0; v < side * side; v++) {
            metal.add(false);
        }
        for (int i = 0; i < side; i++) {
            for (int j = 0; j < side; j++) {
                int v = i * side + j;
                if (!hole[v] && i + 1 < side && !hole[v + side]) {
                    edges.add(new Sketch.Stretch(v, v + side, dx[i], 0));
                }
                if (!hole[v] && j + 1 < side && !hole[v + 1]) {
                    edges.add(new Sketch.Stretch(v, v + 1, dy[j], 0));
                }
            }
        }
    }

    /** A node of steel that a few places reach with some make-up, one of them with none. */
    private void addFrame() {
        metal.add(true);
        int frame = metal.size() - 1;
        for (int column = 0; column < 4; column++) {
            edges.add(new Sketch.Stretch(place(), frame, 6L * column, 0));
        }
    }

    /** A ring whose conductor serves ranks up to its own; copper that lands there is limited to them too. */
    private void addRing() {
        metal.add(true);
        int own = random.nextInt(ranks);
        List<Long> limited = new ArrayList<>(tariffs.get(0));
        for (int rank = own + 1; rank < ranks; rank++) {
            limited.set(rank, RoutingProblem.FORBIDDEN);
        }
        tariffs.add(limited);
        for (int landing = 0; landing < 3; landing++) {
            edges.add(new Sketch.Stretch(place(), metal.size() - 1, 6L * landing, tariffs.size() - 1));
        }
    }

    private int place() {
        int v;
        do {
            v = random.nextInt(side * side);
        } while (hole[v]);
        return v;
    }

    private Sketch sketch() {
        int[][] need = new int[terminals.size()][terminals.size()];
        for (int t = 1; t < need.length; t++) {
            need[0][t] = random.nextInt(ranks);
            need[t][0] = need[0][t];
        }
        return new Sketch(ranks, metal, tariffs, edges, terminals, CutNeed.ofPairs(need));
    }
}
