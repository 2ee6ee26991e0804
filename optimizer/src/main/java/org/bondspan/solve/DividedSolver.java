package org.bondspan.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Searches a core part by part where it falls into parts, those with few leaves first; see {@link Division}. */
final class DividedSolver {

    private final Core core;
    private final Shortcuts shortcuts;
    private final Meter meter;

    DividedSolver(Core core, Shortcuts shortcuts, Meter meter) {
        this.core = core;
        this.shortcuts = shortcuts;
        this.meter = meter;
    }

    CoreAnswer solve() {
        Optional<Division> division = shortcuts.division() ? Division.find(core) : Optional.empty();
        return division.map(this::solveParts).orElseGet(() -> new CoreSolver(core, shortcuts, meter).solve());
    }

    /** What is not proven of any part is not proven of the whole. */
    private CoreAnswer solveParts(Division division) {
        List<CoreTree> trees = new ArrayList<>();
        Optional<Outcome.Ending> ending = Optional.empty();
        Cost known = division.beside();
        long bound = known.weight();
        int leavesLeft = division.cores().stream().mapToInt(Core::leaves).sum();
        for (Core part : division.cores()) {
            Meter share = part.leaves() == leavesLeft
                    ? meter.beside(known.weight(), bound)
                    : meter.forPart(Long.MAX_VALUE).withShareOfTime((double) part.leaves() / leavesLeft);
            leavesLeft -= part.leaves();
            CoreAnswer answer = new CoreSolver(part, shortcuts, share).solve();
            if (answer.tree().isEmpty()) {
                return answer;
            }
            CoreTree tree = answer.tree().orElseThrow();
            trees.add(tree);
            known = known.plus(tree.cost());
            bound += answer.lowerBound();
            ending = ending.isPresent() ? ending : answer.ending();
        }
        return new CoreAnswer(Optional.of(division.join(trees)), bound, ending);
    }
}
