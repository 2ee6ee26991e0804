package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Takes a tree that the solver gave and recounts everything in it from the sketch, in the plainest way. */
final class TreeAudit {

    private final Sketch sketch;
    private final Tree tree;

    private TreeAudit(Sketch sketch, Tree tree) {
        this.sketch = sketch;
        this.tree = tree;
    }

    static void check(Sketch sketch, Tree tree) {
        new TreeAudit(sketch, tree).check();
    }

    private void check() {
        long weight = 0;
        long length = 0;
        Set<Integer> nodes = new HashSet<>();
        for (int i = 0; i < tree.edgeCount(); i++) {
            Sketch.Stretch edge = sketch.edges().get(tree.edge(i));
            nodes.add(edge.a());
            nodes.add(edge.b());
            BitSet side = terminalsFrom(edge.a(), i);
            assertThat(side.cardinality())
                    .isPositive()
                    .isLessThan(sketch.terminals().size());
            assertThat(tree.edgeRank(i))
                    .isEqualTo(sketch.bought(edge.tariff(), sketch.need().rank(side)));
            long perUnit = sketch.tariffs().get(edge.tariff()).get(tree.edgeRank(i));
            assertThat(perUnit).isNotNegative();
            weight += perUnit * edge.length();
            length += perUnit == 0 ? 0 : edge.length();
        }
        for (int t = 0; t < sketch.terminals().size(); t++) {
            Sketch.Landing way = sketch.terminals().get(t).get(tree.attachment(t));
            nodes.add(way.node());
            assertThat(tree.attachmentRank(t))
                    .isEqualTo(sketch.bought(way.tariff(), sketch.need().rankAround(t)));
            long perUnit = sketch.tariffs().get(way.tariff()).get(tree.attachmentRank(t));
            assertThat(perUnit).isNotNegative();
            weight += perUnit * way.length();
            length += perUnit == 0 ? 0 : way.length();
        }
        assertThat(nodes).as("a tree has a node more than edges").hasSize(tree.edgeCount() + 1);
        assertThat(terminalsFrom(node(0), -1).cardinality())
                .as("connects all")
                .isEqualTo(sketch.terminals().size());
        assertThat(tree.weight()).isEqualTo(weight + taps() * sketch.tapWeight());
        assertThat(tree.length()).isEqualTo(length);
        assertThat(tree.taps()).isEqualTo(taps());
    }

    private int node(int terminal) {
        return sketch.terminals().get(terminal).get(tree.attachment(terminal)).node();
    }

    /** Terminals that can be reached from a node without one edge of the tree. */
    private BitSet terminalsFrom(int start, int without) {
        Set<Integer> reached = new HashSet<>();
        reached.add(start);
        boolean grows = true;
        while (grows) {
            grows = false;
            for (int i = 0; i < tree.edgeCount(); i++) {
                Sketch.Stretch edge = sketch.edges().get(tree.edge(i));
                if (i != without && (reached.contains(edge.a()) || reached.contains(edge.b()))) {
                    grows |= reached.addAll(List.of(edge.a(), edge.b()));
                }
            }
        }
        BitSet terminals = new BitSet();
        for (int t = 0; t < sketch.terminals().size(); t++) {
            terminals.set(t, reached.contains(node(t)));
        }
        return terminals;
    }

    /** By spots, as the problem defines them. */
    private int taps() {
        Sketch spots = sketch.withSpots();
        Map<Integer, Integer> conductors = new HashMap<>();
        for (int i = 0; i < tree.edgeCount(); i++) {
            Sketch.Stretch edge = sketch.edges().get(tree.edge(i));
            int a = sketch.spotOf(edge.a());
            int b = sketch.spotOf(edge.b());
            if (a != b) {
                conductors.merge(a, 1, Integer::sum);
                conductors.merge(b, 1, Integer::sum);
            }
        }
        for (int t = 0; t < sketch.terminals().size(); t++) {
            conductors.merge(sketch.spotOf(node(t)), 1, Integer::sum);
        }
        int taps = 0;
        for (Map.Entry<Integer, Integer> at : conductors.entrySet()) {
            taps += spots.metal().get(at.getKey()) ? 0 : Math.max(0, at.getValue() - 2);
        }
        return taps;
    }
}
