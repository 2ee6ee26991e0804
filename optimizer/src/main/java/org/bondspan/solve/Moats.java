package org.bondspan.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Lower bounds from dual ascent at every grade. What a tree pays for an edge is the sum, over the grades up to the one
 * needed, of what each costs more than the one below; so bounds of the grades add up. Immutable.
 */
final class Moats {

    private final List<Ascent> ascents;
    private final List<Moat> moats;
    private final long[][] wayFromRoot;
    private final long rootLanding;
    private final long lowerBound;

    private Moats(List<Ascent> ascents, List<Moat> moats, long[][] wayFromRoot, long rootLanding) {
        this.ascents = ascents;
        this.moats = moats;
        this.wayFromRoot = wayFromRoot;
        this.rootLanding = rootLanding;
        lowerBound = rootLanding + ascents.stream().mapToLong(Ascent::width).sum();
    }

    /** Digs round the leaves in order of their numbers. */
    static Moats of(Core core) {
        List<Ascent> ascents = new ArrayList<>();
        for (int grade = 0; grade < core.need().grades(); grade++) {
            ascents.add(new Ascent(core, grade, ascending(core.leaves())));
        }
        return of(core, ascents);
    }

    /** Tries other orders, and takes the best for each grade. */
    Moats deeper(Core core, int orders) {
        List<Ascent> best = new ArrayList<>(ascents);
        SplittableRandom random = new SplittableRandom(core.leaves());
        for (int i = 0; i < orders; i++) {
            int[] order = ascending(core.leaves());
            shuffle(order, random);
            for (int grade = 0; grade < best.size(); grade++) {
                Ascent other = new Ascent(core, grade, order);
                if (other.width() > best.get(grade).width()) {
                    best.set(grade, other);
                }
            }
        }
        return of(core, best);
    }

    private static Moats of(Core core, List<Ascent> ascents) {
        Map<Integer, Moat> byLeaves = new TreeMap<>();
        for (Ascent ascent : ascents) {
            ascent.moats().forEach(moat -> byLeaves.merge(moat.leaves(), moat, Moat::plus));
        }
        return new Moats(
                List.copyOf(ascents),
                List.copyOf(byLeaves.values()),
                waysFromRoot(ascents),
                leastLanding(core.leaf(core.root())));
    }

    private static long[][] waysFromRoot(List<Ascent> ascents) {
        long[][] ways = ascents.stream().map(Ascent::waysFromRoot).toArray(long[][]::new);
        for (int grade = 1; grade < ways.length; grade++) {
            for (int node = 0; node < ways[grade].length; node++) {
                ways[grade][node] = Math.min(Ascent.NO_WAY, ways[grade][node] + ways[grade - 1][node]);
            }
        }
        return ways;
    }

    private static int[] ascending(int leaves) {
        int[] order = new int[leaves];
        for (int leaf = 0; leaf < leaves; leaf++) {
            order[leaf] = leaf;
        }
        return order;
    }

    private static void shuffle(int[] order, SplittableRandom random) {
        for (int i = order.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int kept = order[i];
            order[i] = order[j];
            order[j] = kept;
        }
    }

    private static long leastLanding(Leaf leaf) {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < leaf.size(); i++) {
            least = Math.min(least, leaf.cost(i).weight());
        }
        return least;
    }

    /** No tree weighs less. */
    long lowerBound() {
        return lowerBound;
    }

    /** Least weight for landing the root. */
    long rootLanding() {
        return rootLanding;
    }

    /** What a tree that uses an edge weighs at least beyond the lower bound, by edge; see {@link Ascent#detours}. */
    long[] detours() {
        return ascents.get(0).detours();
    }

    /**
     * By node: tolls left, at least, on the way from the root to the node, of this grade and of all below;
     * {@link Ascent#NO_WAY} where a stretch of the way cannot meet the grade. The array is not to be changed.
     */
    long[] waysFromRoot(int grade) {
        return wayFromRoot[grade];
    }

    /** The same moats by the nodes of a part of the core. */
    Moats within(Core part) {
        long[][] ways = Arrays.stream(wayFromRoot)
                .map(way -> IntStream.range(0, part.nodes())
                        .mapToLong(node -> way[part.origin(node)])
                        .toArray())
                .toArray(long[][]::new);
        return new Moats(ascents, moats.stream().map(moat -> moat.within(part)).toList(), ways, rootLanding);
    }

    List<Moat> list() {
        return moats;
    }
}
