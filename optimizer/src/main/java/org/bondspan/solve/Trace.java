package org.bondspan.solve;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Follows the states of a finished search back from the answer, and draws what they mean. */
final class Trace {

    private final Core core;
    private final Map<Long, States> states;
    private final Map<Integer, Integer> gradeOfEdge = new HashMap<>();
    private final Map<Integer, Long> leaving = new HashMap<>();
    private final int[] landings;
    private final Cost cost;
    private Optional<Draft.Crossing> crossing = Optional.empty();

    Trace(Core core, Map<Long, States> states, Cost cost) {
        this.core = core;
        this.states = states;
        this.cost = cost;
        landings = new int[core.leaves()];
    }

    private record Branch(long side, int node) {}

    /** The draft that ends with a side hanging at a node, where the root lands. */
    Draft follow(int root, long side, int node) {
        landings[root] = node;
        leave(node, side);
        Deque<Branch> open = new ArrayDeque<>();
        open.push(new Branch(side, node));
        while (!open.isEmpty()) {
            Branch branch = along(open.pop());
            if (Long.bitCount(branch.side) == 1) {
                landings[Long.numberOfTrailingZeros(branch.side)] = branch.node;
            } else {
                long part = part(branch);
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

    private void leave(int node, long side) {
        Long earlier = leaving.putIfAbsent(node, side);
        if (earlier != null && crossing.isEmpty()) {
            crossing = Optional.of(new Draft.Crossing(node, Long.numberOfTrailingZeros(earlier ^ side)));
        }
    }

    /** The part, with the least leaf in it, that was joined with the rest of a side; the first in order of sides. */
    private long part(Branch branch) {
        States whole = statesOf(branch.side);
        int place = whole.find(branch.node);
        for (Map.Entry<Long, States> part : states.entrySet()) {
            long rest = branch.side & ~part.getKey();
            boolean isPart = (part.getKey() & ~branch.side) == 0 && rest != 0;
            States other = isPart && (part.getKey() & Long.lowestOneBit(branch.side)) != 0 ? states.get(rest) : null;
            int i = other == null ? -1 : part.getValue().find(branch.node);
            int j = other == null || i < 0 ? -1 : other.find(branch.node);
            if (other != null
                    && j >= 0
                    && part.getValue().weight(i) + other.weight(j) + core.tapWeight(branch.node) == whole.weight(place)
                    && part.getValue().extent(i) + other.extent(j) + core.tap(branch.node) == whole.extent(place)) {
                return part.getKey();
            }
        }
        throw new IllegalStateException("no parts of side " + Long.toBinaryString(branch.side));
    }

    private States statesOf(long side) {
        States found = states.get(side);
        if (found == null) {
            throw new IllegalStateException("no states of side " + Long.toBinaryString(side));
        }
        return found;
    }
}
