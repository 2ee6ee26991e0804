package org.bondspan.solve;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What hangs at one place of a {@link Window}: some leaves with what links them. It may be taken up again at any of its
 * nodes, and what that changes inside the limb depends on nothing outside it.
 *
 * <p>Why. Take an edge of the limb between the place where it hung and the node where it hangs now, with the leaves X
 * beyond it before. Now the other leaves of the limb, Y, are the ones behind it, and all leaves outside are on the side
 * of X. So it needs the grade of the cut round Y, wherever in the tree the limb hangs. All other edges of the limb part
 * the leaves as before.
 */
final class Limb {

    private final Core core;
    private final Window window;
    private final BitSet leaves = new BitSet();
    private final Map<Integer, Cost> landings = new HashMap<>();
    private final int place;

    Limb(Core core, Window window, int place) {
        this.core = core;
        this.window = window;
        this.place = place;
        Map<Integer, BitSet> beyond = new HashMap<>();
        gather(beyond);
        if (isSingleLeaf()) {
            Leaf leaf = core.leaf(leaves.nextSetBit(0));
            for (int i = 0; i < leaf.size(); i++) {
                landings.put(leaf.node(i), leaf.cost(i));
            }
        } else {
            measure(beyond);
        }
    }

    /** Leaves of the limb. */
    BitSet leaves() {
        return leaves;
    }

    /** One leaf by itself, which may land anywhere it can. */
    boolean isSingleLeaf() {
        return leaves.cardinality() == 1 && openEdges(place) == 0;
    }

    /** By node of the core: what hanging the limb there costs more than where it hangs now; a leaf's whole landing. */
    Map<Integer, Cost> landings() {
        return landings;
    }

    /** Where the limb hangs now. */
    int node() {
        return window.web().node(place);
    }

    private int openEdges(int at) {
        TreeWeb web = window.web();
        int count = 0;
        for (int i = 0; i < web.edgeCount(at); i++) {
            count += window.edges().get(web.edge(at, i)) ? 0 : 1;
        }
        return count;
    }

    private record Step(int place, int edge) {}

    /** Nodes of the limb outward, and the leaves beyond each edge. */
    private void gather(Map<Integer, BitSet> beyond) {
        List<Step> order = outward();
        Map<Integer, BitSet> at = new HashMap<>();
        for (int i = order.size() - 1; i >= 0; i--) {
            Step step = order.get(i);
            BitSet here = at.computeIfAbsent(step.place, ignored -> new BitSet());
            for (int j = 0; j < window.web().leafCount(step.place); j++) {
                here.set(window.web().leaf(step.place, j));
            }
            if (step.edge < 0) {
                leaves.or(here);
            } else {
                beyond.put(step.edge, here);
                at.computeIfAbsent(window.web().other(step.edge, step.place), ignored -> new BitSet())
                        .or(here);
            }
        }
    }

    private List<Step> outward() {
        TreeWeb web = window.web();
        List<Step> order = new ArrayList<>();
        order.add(new Step(place, -1));
        for (int i = 0; i < order.size(); i++) {
            Step step = order.get(i);
            for (int j = 0; j < web.edgeCount(step.place); j++) {
                int edge = web.edge(step.place, j);
                if (edge != step.edge && !window.edges().get(edge)) {
                    order.add(new Step(web.other(edge, step.place), edge));
                }
            }
        }
        return order;
    }

    private void measure(Map<Integer, BitSet> beyond) {
        TreeWeb web = window.web();
        Map<Integer, Cost> at = new HashMap<>();
        at.put(place, Cost.NOTHING);
        for (Step step : outward()) {
            Cost before = step.edge < 0 ? Cost.NOTHING : at.get(web.other(step.edge, step.place));
            if (before == null) {
                continue;
            }
            if (step.edge >= 0) {
                BitSet behind = (BitSet) leaves.clone();
                behind.andNot(beyond.getOrDefault(step.edge, new BitSet()));
                Cost turned = turned(step.edge, behind);
                if (turned.equals(Cost.UNKNOWN)) {
                    continue;
                }
                before = before.plus(turned);
                at.put(step.place, before);
            }
            landings.put(web.node(step.place), before);
        }
    }

    /** What an edge costs more when it has these leaves behind it; unknown when it cannot meet their need. */
    private Cost turned(int i, BitSet behind) {
        int edge = window.web().tree().edge(i);
        int old = window.web().tree().grade(i);
        long weight = -core.edgeWeight(edge, old);
        long extent = -core.edgeExtent(edge, old);
        if (behind.isEmpty()) {
            return new Cost(weight, extent);
        }
        int grade = core.need().grade(behind);
        return core.edgeWeight(edge, grade) < 0
                ? Cost.UNKNOWN
                : new Cost(weight + core.edgeWeight(edge, grade), extent + core.edgeExtent(edge, grade));
    }
}
