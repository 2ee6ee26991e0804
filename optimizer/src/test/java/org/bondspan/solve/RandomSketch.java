package org.bondspan.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Tiny random problems with everything that makes a problem hard. */
final class RandomSketch {

    private final SplittableRandom random;
    private final int ranks;
    private final int nodes;
    private final List<Boolean> metal = new ArrayList<>();
    private final List<List<Long>> tariffs = new ArrayList<>();
    private final List<Sketch.Stretch> edges = new ArrayList<>();
    private final List<List<Sketch.Landing>> terminals = new ArrayList<>();

    private RandomSketch(SplittableRandom random, int nodes, List<int[]> ends) {
        this.random = random;
        this.nodes = nodes;
        ranks = 1 + random.nextInt(4);
        for (int v = 0; v < nodes; v++) {
            metal.add(random.nextInt(4) == 0);
        }
        int tariffCount = 1 + random.nextInt(4);
        for (int i = 0; i < tariffCount; i++) {
            tariffs.add(tariff());
        }
        for (int[] pair : ends) {
            int length = random.nextInt(8) == 0 ? 0 : random.nextInt(1, 5);
            edges.add(new Sketch.Stretch(pair[0], pair[1], length, random.nextInt(tariffCount)));
        }
    }

    /** Some terminals, one in so many of which has a choice of landings. */
    private RandomSketch withTerminals(int count, int oneIn) {
        for (int t = 0; t < count; t++) {
            terminals.add(landings(oneIn));
        }
        return this;
    }

    /** Most cases have a spanning tree, so that few of them are impossible. */
    private static List<int[]> anyEnds(SplittableRandom random, int nodes, int edgeCount) {
        List<int[]> ends = new ArrayList<>();
        for (int e = 0; e < edgeCount; e++) {
            int from = e + 1 < nodes && random.nextInt(6) > 0 ? e + 1 : random.nextInt(nodes);
            ends.add(new int[] {from, from == e + 1 ? random.nextInt(from) : random.nextInt(nodes)});
        }
        return ends;
    }

    /** Pieces of one to three new nodes, each of which meets what was there before at one node alone. */
    private static List<int[]> endsOfPieces(SplittableRandom random, int edgeCount) {
        List<int[]> ends = new ArrayList<>();
        int nodes = 1;
        while (ends.size() < edgeCount) {
            List<Integer> piece = new ArrayList<>(List.of(random.nextInt(nodes)));
            for (int more = 1 + random.nextInt(3); more > 0; more--) {
                ends.add(new int[] {nodes, piece.get(random.nextInt(piece.size()))});
                piece.add(nodes++);
            }
            for (int more = piece.size() < 3 ? 0 : random.nextInt(3); more > 0; more--) {
                ends.add(new int[] {piece.get(random.nextInt(piece.size())), piece.get(random.nextInt(piece.size()))});
            }
        }
        return ends;
    }

    private static RandomSketch ofPieces(SplittableRandom random, int edgeCount, int terminals) {
        List<int[]> ends = endsOfPieces(random, edgeCount);
        int nodes = 1 + ends.stream().flatMapToInt(Arrays::stream).max().orElse(0);
        return new RandomSketch(random, nodes, ends).withTerminals(terminals, 4);
    }

    /** Weights that mostly rise, may be 0 up to a rank (steel, a ring) and forbidden above one. */
    private List<Long> tariff() {
        List<Long> weights = new ArrayList<>();
        long weight = random.nextInt(1, 5);
        int freeUpTo = random.nextInt(6) == 0 ? random.nextInt(ranks) : -1;
        int cap = random.nextInt(5) == 0 ? random.nextInt(ranks) : ranks;
        for (int rank = 0; rank < ranks; rank++) {
            weights.add(rank > cap ? RoutingProblem.FORBIDDEN : rank <= freeUpTo ? 0 : weight);
            weight = Math.max(1, weight + random.nextInt(-1, 4));
        }
        if (random.nextInt(10) == 0) {
            weights.set(random.nextInt(ranks), RoutingProblem.FORBIDDEN);
        }
        return weights;
    }

    private List<Sketch.Landing> landings(int oneIn) {
        int count = random.nextInt(50) == 0 ? 0 : random.nextInt(oneIn) > 0 ? 1 : random.nextInt(1, 4);
        List<Sketch.Landing> ways = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            ways.add(new Sketch.Landing(node(), random.nextInt(3), random.nextInt(tariffs.size())));
        }
        return ways;
    }

    private int node() {
        return random.nextInt(nodes);
    }

    /** Any needs by pairs. */
    static Sketch withPairNeeds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int terminals = random.nextInt(2, 6);
        int nodes = random.nextInt(2, 9);
        return new RandomSketch(random, nodes, anyEnds(random, nodes, random.nextInt(3, 12)))
                .withTerminals(terminals, 2)
                .withNeed(seed, terminals);
    }

    /** The same in pieces that meet at single nodes, with about so many edges and up to so many terminals. */
    static Sketch piecesWithPairNeeds(long seed, int edges, int mostTerminals) {
        SplittableRandom random = new SplittableRandom(seed);
        int terminals = random.nextInt(2, mostTerminals + 1);
        return ofPieces(random, edges, terminals).withNeed(seed, terminals);
    }

    /** The same with fewer edges and terminals. */
    static Sketch smallWithPairNeeds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int terminals = random.nextInt(2, 5);
        int nodes = random.nextInt(2, 7);
        return new RandomSketch(random, nodes, anyEnds(random, nodes, random.nextInt(2, 9)))
                .withTerminals(terminals, 2)
                .withNeed(seed, terminals);
    }

    private Sketch withNeed(long seed, int count) {
        int[][] rank = new int[count][count];
        boolean anyPairs = seed % 2 == 0;
        int services = anyPairs ? count : Math.min(count, 1 + random.nextInt(2));
        for (int s = 0; s < services; s++) {
            for (int t = 0; t < count; t++) {
                if (s != t && (anyPairs || t >= services)) {
                    rank[s][t] = random.nextInt(ranks);
                    rank[t][s] = rank[s][t];
                }
            }
        }
        return sketch(CutNeed.ofPairs(rank));
    }

    /**
     * Terminals 0 .. services - 1 are services with areas, the others have a largest rank; the need of a cut is a table
     * of the sum of the areas of each supply on one side, limited by each terminal on the other, the largest of all.
     */
    static Sketch withSumsOfAreas(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int terminals = random.nextInt(3, 6);
        int nodes = random.nextInt(3, 9);
        List<int[]> ends = anyEnds(random, nodes, random.nextInt(4, 12));
        return new RandomSketch(random, nodes, ends).withTerminals(terminals, 2).withSums(terminals);
    }

    /** The same in pieces that meet at single nodes, with about so many edges and up to so many terminals. */
    static Sketch piecesWithSumsOfAreas(long seed, int edges, int mostTerminals) {
        SplittableRandom random = new SplittableRandom(seed);
        int terminals = random.nextInt(3, mostTerminals + 1);
        return ofPieces(random, edges, terminals).withSums(terminals);
    }

    private Sketch withSums(int terminals) {
        int services = random.nextInt(1, Math.min(4, terminals));
        int[] area = new int[terminals];
        int[] supply = new int[terminals];
        int[] limit = new int[terminals];
        for (int t = 0; t < terminals; t++) {
            area[t] = t < services ? 1 + random.nextInt(3) : 0;
            supply[t] = random.nextInt(2);
            limit[t] = t < services ? -1 : random.nextInt(ranks);
        }
        int[] table = new int[10];
        for (int sum = 1; sum < table.length; sum++) {
            table[sum] = Math.min(ranks - 1, table[sum - 1] + random.nextInt(2));
        }
        return sketch(CutNeed.of(side -> Math.max(
                needOfSide(side, area, supply, limit, table),
                needOfSide(~side & ((1L << terminals) - 1), area, supply, limit, table))));
    }

    private static int needOfSide(long side, int[] area, int[] supply, int[] limit, int[] table) {
        int most = 0;
        for (int which = 0; which < 2; which++) {
            int sum = 0;
            for (int s = 0; s < area.length; s++) {
                sum += (side >> s & 1) == 1 && supply[s] == which ? area[s] : 0;
            }
            for (int t = 0; t < limit.length; t++) {
                if ((side >> t & 1) == 0 && limit[t] >= 0) {
                    most = Math.max(most, Math.min(limit[t], table[sum]));
                }
            }
        }
        return most;
    }

    private Sketch sketch(CutNeed need) {
        return new Sketch(ranks, metal, tariffs, edges, terminals, need);
    }
}
