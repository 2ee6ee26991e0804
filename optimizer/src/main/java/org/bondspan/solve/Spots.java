package org.bondspan.solve;

import java.util.Arrays;

/**
 * Nodes that lie together: classes of nodes joined by edges that are free at every rank. Numbered in order of nodes.
 */
final class Spots {

    private final int[] spotOf;
    private final boolean[] metal;
    private final int[] joints;

    private Spots(int[] spotOf, boolean[] metal, int[] joints) {
        this.spotOf = spotOf;
        this.metal = metal;
        this.joints = joints;
    }

    static Spots of(RoutingProblem problem) {
        Classes classes = new Classes(problem.nodeCount());
        int[] joints = new int[problem.nodeCount()];
        int count = 0;
        Links edges = problem.edges();
        for (int e = 0; e < edges.size(); e++) {
            if (problem.tariffs().isFree(edges.length(e), edges.tariff(e)) && classes.join(edges.a(e), edges.b(e))) {
                joints[count++] = e;
            }
        }
        return number(problem, classes, Arrays.copyOf(joints, count));
    }

    private static Spots number(RoutingProblem problem, Classes classes, int[] joints) {
        int[] spotOf = new int[problem.nodeCount()];
        int[] spotOfHead = new int[problem.nodeCount()];
        Arrays.fill(spotOfHead, -1);
        int count = 0;
        for (int v = 0; v < spotOf.length; v++) {
            int head = classes.find(v);
            if (spotOfHead[head] < 0) {
                spotOfHead[head] = count++;
            }
            spotOf[v] = spotOfHead[head];
        }
        boolean[] metal = new boolean[count];
        for (int v = 0; v < spotOf.length; v++) {
            metal[spotOf[v]] |= problem.isMetal(v);
        }
        return new Spots(spotOf, metal, joints);
    }

    int count() {
        return metal.length;
    }

    int of(int node) {
        return spotOf[node];
    }

    boolean isMetal(int spot) {
        return metal[spot];
    }

    /** Free edges of which those inside a spot form a spanning tree of it. The array is not to be changed. */
    int[] joints() {
        return joints;
    }
}
