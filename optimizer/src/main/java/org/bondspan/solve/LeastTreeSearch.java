package org.bondspan.solve;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Exact search of a core: the subset programme, and a division of cases where its draft is no tree.
 *
 * <p>A draft may come to a node twice. For needs by pairs this never saves weight or length, but two conductors that go
 * side by side along a free stretch onto metal save a tap; for needs by sides (two services of one supply, say) two
 * small conductors that pass a node without being joined there may be lighter than one large one. In a tree exactly one
 * set of leaves leaves a node that it meets, towards the root. So when two different sets leave a node in the draft,
 * with a leaf that is in one of them, then in every tree the set that leaves this node has the leaf, or has it not;
 * each case excludes the draft, and is searched in turn. Cases are finite in number, and those that cost as much as a
 * known tree end.
 *
 * <p>Separators are no use in a case: what they discard might be allowed where the better alternative is not.
 */
final class LeastTreeSearch {

    private final Core core;
    private final Shortcuts shortcuts;
    private final Distances distances;
    private Optional<CoreTree> best = Optional.empty();

    LeastTreeSearch(Core core, Shortcuts shortcuts) {
        this.core = core;
        this.shortcuts = shortcuts;
        distances = new Distances(core);
    }

    /** A least tree, if there is any. */
    Optional<CoreTree> findTree() {
        if (shortcuts.bounds()) {
            takeFirst(new FirstTree(core).trees());
        }
        Deque<Restriction> open = new ArrayDeque<>();
        open.push(Restriction.none());
        while (!open.isEmpty()) {
            Restriction cases = open.pop();
            Optional<Draft> draft = programme(cases).findDraft();
            if (draft.isPresent() && isBetter(draft.get().cost())) {
                take(draft.get().findTree());
                if (isBetter(draft.get().cost())) {
                    Draft.Crossing crossing = draft.get().findCrossing().orElseThrow();
                    open.push(cases.with(crossing.node(), crossing.leaf()));
                    open.push(cases.without(crossing.node(), crossing.leaf()));
                }
            }
        }
        return best;
    }

    private void takeFirst(List<CoreTree> trees) {
        trees.forEach(tree -> take(Optional.of(tree)));
        if (best.isPresent()) {
            take(new UnionTree(core).findTree(trees, best.get().cost()));
        }
    }

    private SubsetProgramme programme(Restriction cases) {
        Optional<Bound> bound =
                shortcuts.bounds() ? best.map(tree -> new Bound(core, distances, tree.cost())) : Optional.empty();
        return new SubsetProgramme(core, shortcuts.separators() && cases.isNone(), bound, cases);
    }

    private boolean isBetter(Cost cost) {
        return best.isEmpty() || cost.compareTo(best.get().cost()) < 0;
    }

    private void take(Optional<CoreTree> tree) {
        if (tree.isPresent() && isBetter(tree.get().cost())) {
            best = tree;
        }
    }
}
