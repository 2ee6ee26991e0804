package org.bondspan.solve;

import java.util.Arrays;
import java.util.Optional;

/** A tree in the core: edges, each with the grade it needs, and the node on which each leaf lands. */
final class CoreTree {

    private final int[] edges;
    private final int[] grades;
    private final int[] landings;
    private final Cost cost;

    private CoreTree(int[] edges, int[] grades, int[] landings, Cost cost) {
        this.edges = edges;
        this.grades = grades;
        this.landings = landings;
        this.cost = cost;
    }

    /** The tree in a forest of edges, unless it misses a leaf or an edge cannot meet its need. */
    static Optional<CoreTree> find(Core core, int[] forest, int[] landings) {
        int[] a = Arrays.stream(forest).map(edge -> core.edgeEnd(edge, 0)).toArray();
        int[] b = Arrays.stream(forest).map(edge -> core.edgeEnd(edge, 1)).toArray();
        TreeShape shape = new TreeShape(a, b, landings);
        if (shape.reached() != core.leaves()) {
            return Optional.empty();
        }
        int[] edges = new int[forest.length];
        int[] grades = new int[forest.length];
        int count = 0;
        int taps = shape.taps(node -> core.tap(node) == 0);
        Cost cost = Cost.of(taps * core.tapWeight(), 0, taps);
        for (int i = 0; i < forest.length; i++) {
            if (!shape.isUsed(i)) {
                continue;
            }
            int grade = core.need().grade(shape.behind(i));
            if (core.edgeWeight(forest[i], grade) < 0) {
                return Optional.empty();
            }
            edges[count] = forest[i];
            grades[count++] = grade;
            cost = cost.plus(new Cost(core.edgeWeight(forest[i], grade), core.edgeExtent(forest[i], grade)));
        }
        for (int leaf = 0; leaf < landings.length; leaf++) {
            cost = cost.plus(core.leaf(leaf).costAt(landings[leaf]));
        }
        return Optional.of(
                new CoreTree(Arrays.copyOf(edges, count), Arrays.copyOf(grades, count), landings.clone(), cost));
    }

    int size() {
        return edges.length;
    }

    int edge(int i) {
        return edges[i];
    }

    int grade(int i) {
        return grades[i];
    }

    /** Node on which a leaf lands. */
    int landing(int leaf) {
        return landings[leaf];
    }

    Cost cost() {
        return cost;
    }
}
