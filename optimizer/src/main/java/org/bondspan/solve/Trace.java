package org.bondspan.solve;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Follows the states of a finished search back from the answer, and draws what they mean. */
final class Trace {

    private final Core core;
    private final Map<Integer, States> states;
    private final Map<Integer, Integer> gradeOfEdge = new HashMap<>();
    private final Map<Integer, Integer> leaving = new HashMap<>();
    private final int[] landings;
    private final Cost cost;
    private Optional<Draft.Crossing> crossing = Optional.empty();

    Trace(Core core, Map<Integer, States> states, Cost cost) {
        this.core = core;
        this.states = states;
        this.cost = cost;
        landings = new int[core.leaves()];
    }

    private record Branch(int side, int node) {}

    /** The draft that ends with a side hanging at a node, where the root lands. */
    Draft follow(int root, int side, int node) {
        landings[root] = node;
        leave(node, side);
        Deque<Branch> open = new ArrayDeque<>();
        open.push(new Branch(side, node));
        while (!open.isEmpty()) {
            Branch branch = along(open.pop());
            if (Integer.bitCount(branch.side) == 1) {
                landings[Integer.numberOfTrailingZeros(branch.side)] = branch.node;
            } else {
                int part = part(branch);
                open.push(new Branch(branch.side & ~part, branch.node));
                open.push(new Branch(part, branch.node));
            }
        }
        return new Draft(core, gradeOfEdge, landings, cost, crossing);
    }

    /** Back to where the side landed or was joined. */
    private Branch along(Branch from) {
        States found = statesOf(from.side);
        int node = from.node;
        int arc = found.arc(found.find(node));
        while (arc >= 0) {
            gradeOfEdge.merge(core.arcEdge(arc), core.need().grade(from.side), Math::max);
            node = core.arcStart(arc);
            leave(node, from.side);
            arc = found.arc(found.find(node));
        }
        return new Branch(from.side, node);
    }

    private void leave(int node, int side) {
        Integer earlier = leaving.putIfAbsent(node, side);
        if (earlier != null && crossing.isEmpty()) {
            crossing = Optional.of(new Draft.Crossing(node, Integer.numberOfTrailingZeros(earlier ^ side)));
        }
    }

    /** The part, with the least leaf in it, that was joined with the rest of a side. */
    private int part(Branch branch) {
        States whole = statesOf(branch.side);
        int place = whole.find(branch.node);
        int least = Integer.lowestOneBit(branch.side);
        int others = branch.side & ~least;
        for (int rest = others; rest != 0; rest = (rest - 1) & others) {
            States one = states.get(branch.side & ~rest);
            States other = states.get(rest);
            int i = one == null ? -1 : one.find(branch.node);
            int j = other == null ? -1 : other.find(branch.node);
            if (one != null
                    && other != null
                    && i >= 0
                    && j >= 0
                    && one.weight(i) + other.weight(j) + core.tapWeight(branch.node) == whole.weight(place)
                    && one.extent(i) + other.extent(j) + core.tap(branch.node) == whole.extent(place)) {
                return branch.side & ~rest;
            }
        }
        throw new IllegalStateException("no parts of side " + Integer.toBinaryString(branch.side));
    }

    private States statesOf(int side) {
        States found = states.get(side);
        if (found == null) {
            throw new IllegalStateException("no states of side " + Integer.toBinaryString(side));
        }
        return found;
    }
}
