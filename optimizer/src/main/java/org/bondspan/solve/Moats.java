package org.bondspan.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Lower bounds from dual ascent at every grade, towards the root of a core. What a tree pays for an edge is the sum,
 * over the grades up to the one needed, of what each costs more than the one below; so bounds of the grades add up.
 * Immutable.
 */
final class Moats {

    private final Core core;
    private final List<Ascent> ascents;
    private final List<Moat> moats;
    private final long rootLanding;
    private final long lowerBound;

    private Moats(Core core, List<Ascent> ascents, List<Moat> moats, long rootLanding) {
        this.core = core;
        this.ascents = ascents;
        this.moats = moats;
        this.rootLanding = rootLanding;
        lowerBound = rootLanding + ascents.stream().mapToLong(Ascent::width).sum();
    }

    static Moats of(Core core, Meter meter) {
        return of(core, new BitSet(), meter);
    }

    private static Moats of(Core core, BitSet guide, Meter meter) {
        List<Ascent> ascents = new ArrayList<>();
        for (int grade = 0; grade < core.need().grades(); grade++) {
            ascents.add(new Ascent(core, grade, guide, meter));
        }
        Map<Long, Moat> byLeaves = new TreeMap<>();
        for (Ascent ascent : ascents) {
            ascent.moats().forEach(moat -> byLeaves.merge(moat.leaves(), moat, Moat::plus));
        }
        return new Moats(
                core,
                List.copyOf(ascents),
                List.copyOf(byLeaves.values()),
                core.leaf(core.root()).leastWeight());
    }

    /**
     * The best of these and of others towards several roots, each with a guide and without. Any leaf can be the root,
     * as each of the others needs some grade with it.
     *
     * @param guide a good tree
     * @param most how many roots to try
     * @param seen is shown all that were found
     */
    Moats deeper(CoreTree guide, int most, Meter meter, Consumer<Moats> seen) {
        BitSet edges = new BitSet();
        for (int i = 0; i < guide.size(); i++) {
            edges.set(guide.edge(i));
        }
        Moats best = this;
        int step = Math.max(1, core.leaves() / most);
        for (int leaf = 0; leaf < core.leaves() && !meter.isOver(); leaf += step) {
            for (BitSet guided : List.of(edges, new BitSet())) {
                Moats other = of(core.rootedAt(leaf), guided, meter);
                seen.accept(other);
                best = other.lowerBound > best.lowerBound ? other : best;
            }
        }
        return best;
    }

    /** The core, with the root to which the moats belong. */
    Core core() {
        return core;
    }

    /** No tree weighs less. */
    long lowerBound() {
        return lowerBound;
    }

    /**
     * By grade and node: tolls left, at least, on the way from the root to the node, of this grade and of all below;
     * {@link Tolls#NO_WAY} where a stretch of the way cannot meet the grade, or the tolls of one grade alone are more
     * than a tree of some weight can pay.
     */
    private long[][] waysFromRoot(long weight) {
        long[][] ways = ascents.stream()
                .map(ascent -> ascent.fromRoot(weight - lowerBound))
                .toArray(long[][]::new);
        for (int grade = 1; grade < ways.length; grade++) {
            for (int node = 0; node < ways[grade].length; node++) {
                ways[grade][node] = Math.min(Tolls.NO_WAY, ways[grade][node] + ways[grade - 1][node]);
            }
        }
        return ways;
    }

    /** What a tree that uses an edge weighs at least beyond the lower bound, by edge; see {@link Ascent#detours}. */
    long[] detours() {
        return ascents.get(0).detours();
    }

    /** What these moats tell of trees of at most some weight in the core. */
    Bound bound(long weight) {
        return new Bound(core, moats, waysFromRoot(weight), rootLanding, weight);
    }

    /** The same for a part of the core. */
    Bound bound(Core part, long weight) {
        long[][] ways = Arrays.stream(waysFromRoot(weight))
                .map(way -> IntStream.range(0, part.nodes())
                        .mapToLong(node -> way[part.origin(node)])
                        .toArray())
                .toArray(long[][]::new);
        List<Moat> there = moats.stream().map(moat -> moat.within(part)).toList();
        return new Bound(part, there, ways, rootLanding, weight);
    }
}
