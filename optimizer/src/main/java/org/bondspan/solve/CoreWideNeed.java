package org.bondspan.solve;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** Needs given by any function of a side, between more leaves than a table by sides could hold. */
final class CoreWideNeed extends CoreNeed {

    private final RoutingProblem problem;
    private final List<BitSet> members;

    /** Grades are all ranks of the problem, as nobody knows which of them a cut may need. */
    private CoreWideNeed(RoutingProblem problem, List<BitSet> members) {
        super(IntStream.range(0, problem.ranks()).toArray());
        this.problem = problem;
        this.members = members;
    }

    static CoreWideNeed of(RoutingProblem problem, List<Leaf> leaves) {
        return new CoreWideNeed(problem, leaves.stream().map(Leaf::members).toList());
    }

    @Override
    boolean isNarrow() {
        return false;
    }

    @Override
    int grade(BitSet side) {
        return CoreSideNeed.checkedRank(problem, terminals(side));
    }

    private BitSet terminals(BitSet side) {
        BitSet terminals = new BitSet();
        side.stream().forEach(leaf -> terminals.or(members.get(leaf)));
        return terminals;
    }

    @Override
    int floorOfPair(int leaf, int other) {
        return members.get(leaf).stream()
                .flatMap(
                        s -> members.get(other).stream().map(t -> problem.need().floor(s, t)))
                .max()
                .orElse(0);
    }

    @Override
    CoreNeed grouped(List<BitSet> groups) {
        return groups.size() <= CoreSideNeed.MOST_LEAVES
                ? CoreSideNeed.grouped(this, groups)
                : new CoreWideNeed(problem, groups.stream().map(this::terminals).toList());
    }

    @Override
    int grade(long side) {
        throw noNumber();
    }

    @Override
    long within(long side) {
        throw noNumber();
    }

    @Override
    int floor(long side, int leaf) {
        throw noNumber();
    }

    @Override
    int withinGrade(long side) {
        throw noNumber();
    }

    private IllegalStateException noNumber() {
        return new IllegalStateException("sides of " + members.size() + " leaves are no numbers");
    }
}
