package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Replaces the part of a tree in a {@link Window} by the cheapest that links its limbs again, by the exact search. Each
 * limb is one leaf of a small problem, which may land where the limb may be taken up; needs of cuts between limbs are
 * those between their leaves. By {@link Limb} a solution that weighs less than the part makes a tree that weighs less.
 *
 * <p>Only the nearer nodes are looked at, so something better may be missed. That a better tree does not go further
 * than half the weight of the part is certain; beyond a number of nodes it is left to luck.
 */
final class Rework {

    private final Core core;
    private final Window window;
    private final List<Limb> limbs;
    private final Region region;
    private long weight;
    private long extent;

    Rework(Core core, Window window, Region region) {
        this.core = core;
        this.window = window;
        this.region = region;
        limbs = window.limbs().stream()
                .map(place -> new Limb(core, window, place))
                .toList();
        CoreTree tree = window.web().tree();
        window.edges().stream().forEach(i -> {
            weight += core.edgeWeight(tree.edge(i), tree.grade(i));
            extent += core.edgeExtent(tree.edge(i), tree.grade(i));
        });
    }

    /**
     * A cheaper tree.
     *
     * @throws SpentException when the search takes more than the meter allows
     */
    Optional<CoreTree> findBetter(Meter meter) {
        int[] sources = window.places().stream().mapToInt(window.web()::node).toArray();
        region.spread(sources, weight / 2);
        List<Leaf> leaves =
                IntStream.range(0, limbs.size()).mapToObj(this::leaf).toList();
        StretchPool pool = new StretchPool(core.need().grades(), 2 * region.size());
        Reducer graph = region.graph(leaves, pool);
        CoreNeed need = core.need().grouped(limbs.stream().map(Limb::leaves).toList());
        Core small = new Core(graph, local -> core.isMetal(region.node(local)), need, leaves, core.tapWeight());
        return new LeastTreeSearch(small, Shortcuts.ALL, meter, Optional.empty())
                .findCheaper(new Cost(weight, extent / Cost.TAPS * Cost.TAPS))
                .flatMap(tree -> replaced(small, tree, pool))
                .filter(tree -> tree.cost().compareTo(window.web().tree().cost()) < 0);
    }

    /** A limb as a leaf by nodes of the region; costs are raised to 0 or more, and so is what is known. */
    private Leaf leaf(int which) {
        Limb limb = limbs.get(which);
        List<Map.Entry<Integer, Cost>> there = limb.landings().entrySet().stream()
                .filter(entry -> region.find(entry.getKey()) >= 0)
                .sorted(Comparator.comparingInt(entry -> region.find(entry.getKey())))
                .toList();
        Cost now = limb.landings().getOrDefault(limb.node(), Cost.NOTHING);
        long leastWeight =
                there.stream().mapToLong(e -> e.getValue().weight()).min().orElse(0);
        long leastExtent =
                there.stream().mapToLong(e -> e.getValue().extent()).min().orElse(0);
        weight += now.weight() - leastWeight;
        extent += now.extent() - leastExtent;
        BitSet alone = new BitSet();
        alone.set(which);
        return new Leaf(
                alone,
                there.stream().mapToInt(e -> region.find(e.getKey())).toArray(),
                there.stream()
                        .map(e -> new Cost(
                                e.getValue().weight() - leastWeight,
                                e.getValue().extent() - leastExtent))
                        .toArray(Cost[]::new));
    }

    private Optional<CoreTree> replaced(Core small, CoreTree found, StretchPool pool) {
        CoreTree tree = window.web().tree();
        IntStream.Builder edges = IntStream.builder();
        for (int i = 0; i < tree.size(); i++) {
            if (!window.edges().get(i)) {
                edges.add(tree.edge(i));
            }
        }
        for (int i = 0; i < found.size(); i++) {
            pool.forEachEdge(small.stretch(found.edge(i)), found.grade(i), local -> edges.add(region.edge(local)));
        }
        int[] landings = IntStream.range(0, core.leaves()).map(tree::landing).toArray();
        for (int i = 0; i < limbs.size(); i++) {
            if (limbs.get(i).isSingleLeaf()) {
                landings[limbs.get(i).leaves().nextSetBit(0)] = region.node(small.origin(found.landing(i)));
            }
        }
        Classes pieces = new Classes(core.nodes());
        int[] forest = Arrays.stream(edges.build().toArray())
                .filter(edge -> pieces.join(core.edgeEnd(edge, 0), core.edgeEnd(edge, 1)))
                .toArray();
        return CoreTree.find(core, forest, landings);
    }
}
