package org.bondspan.solve;

import java.util.ArrayDeque;
import java.util.Deque;
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

    /** Cores of fewer edges are searched at once. */
    private static final int SMALL = 1000;

    private static final int MORE_ORDERS = 4;

    private final Core core;
    private final Shortcuts shortcuts;
    private final Meter meter;
    private Optional<CoreTree> best;
    private long lowerBound;

    /** @param first a tree known beforehand, where there is one */
    LeastTreeSearch(Core core, Shortcuts shortcuts, Meter meter, Optional<CoreTree> first) {
        this.core = core;
        this.shortcuts = shortcuts;
        this.meter = meter;
        best = first;
    }

    /** The best tree so far. */
    Optional<CoreTree> best() {
        return best;
    }

    /** No tree weighs less, as far as is proven. */
    long lowerBound() {
        return lowerBound;
    }

    /**
     * A least tree, if there is any.
     *
     * @throws SpentException when the proof takes more than the meter allows; then {@link #best} and
     *     {@link #lowerBound} tell what is known
     */
    Optional<CoreTree> findTree() {
        if (shortcuts.bounds()) {
            if (best.isEmpty()) {
                new FirstTree(core).trees().forEach(tree -> take(Optional.of(tree)));
            }
            if (best.isPresent()) {
                return findTreeNarrowed();
            }
        }
        search(Optional.empty(), Optional.empty());
        return best;
    }

    /**
     * Among trees not much heavier than the lower bound first: what is found there is least, and nothing else needs to
     * be looked at.
     */
    private Optional<CoreTree> findTreeNarrowed() {
        long known = best.orElseThrow().cost().weight();
        Moats moats = Moats.of(core);
        raise(moats.lowerBound());
        long above = 1 + moats.lowerBound() / 64;
        int attempt = 0;
        while (core.edges() > SMALL && moats.lowerBound() + above < known) {
            long limit = moats.lowerBound() + above;
            Optional<CoreTree> tree = findTreeIn(moats, limit, new Cost(limit + 1, 0));
            if (tree.isPresent()) {
                return tree;
            }
            raise(limit + 1);
            if (attempt++ == 0) {
                moats = moats.deeper(core, MORE_ORDERS);
                raise(moats.lowerBound());
            }
            above = Math.max(above + above / 2, limit - moats.lowerBound()) + 1;
        }
        take(findTreeIn(moats, known, best.orElseThrow().cost()));
        return best;
    }

    private void raise(long bound) {
        lowerBound = Math.max(lowerBound, bound);
        best.ifPresent(tree -> meter.found(tree.cost().weight()));
        meter.proven(lowerBound);
    }

    /**
     * A tree that costs less than a known one, the least of them, if there is any.
     *
     * @throws SpentException as {@link #findTree} does
     */
    Optional<CoreTree> findCheaper(Cost known) {
        Moats moats = Moats.of(core);
        return moats.lowerBound() > known.weight() ? Optional.empty() : findTreeIn(moats, known.weight(), known);
    }

    private Optional<CoreTree> findTreeIn(Moats moats, long limit, Cost known) {
        SubCore part = new Narrowing(core, moats).part(limit);
        LeastTreeSearch inPart = new LeastTreeSearch(part.core(), shortcuts, meter, Optional.empty());
        inPart.search(Optional.of(known), Optional.of(moats.within(part.core())));
        return inPart.best.flatMap(part::findInWhole);
    }

    /** @param known cost of a tree that need not be found again; only what is better counts */
    private void search(Optional<Cost> known, Optional<Moats> moats) {
        Deque<Restriction> open = new ArrayDeque<>();
        open.push(Restriction.none());
        while (!open.isEmpty()) {
            Restriction cases = open.pop();
            Optional<Bound> bound = moats.flatMap(found -> limit(known).map(cost -> new Bound(found, cost.weight())));
            boolean separators = shortcuts.separators() && cases.isNone();
            Optional<Draft> draft = new SubsetProgramme(core, separators, bound, cases, meter).findDraft();
            if (draft.isPresent() && isBetter(draft.get().cost(), limit(known))) {
                take(draft.get().findTree().filter(tree -> isBetter(tree.cost(), limit(known))));
                if (isBetter(draft.get().cost(), limit(known))) {
                    Draft.Crossing crossing = draft.get().findCrossing().orElseThrow();
                    open.push(cases.with(crossing.node(), crossing.leaf()));
                    open.push(cases.without(crossing.node(), crossing.leaf()));
                }
            }
        }
    }

    /** Cost of the best tree so far, found or known. */
    private Optional<Cost> limit(Optional<Cost> known) {
        Optional<Cost> found = best.map(CoreTree::cost);
        return known.isPresent() && isBetter(known.get(), found) ? known : found;
    }

    private static boolean isBetter(Cost cost, Optional<Cost> limit) {
        return limit.isEmpty() || cost.compareTo(limit.get()) < 0;
    }

    private void take(Optional<CoreTree> tree) {
        if (tree.isPresent() && isBetter(tree.get().cost(), best.map(CoreTree::cost))) {
            best = tree;
        }
    }
}
