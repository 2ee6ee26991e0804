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

    /**
     * Up to so many leaves a search costs so little that it does not pay to prepare it well: the first limit is wide,
     * and what no tree within the limit can use is left to the bound, not taken out before.
     */
    static final int FEW = 20;

    /** The first limit lies above the lower bound by this part of it. */
    private static final int WIDE_LIMIT = 12;

    private static final int NARROW_LIMIT = 64;

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
                take(new FirstTree(core).find());
            }
            if (best.isPresent()) {
                Moats moats = Moats.of(core, meter);
                long above = moats.lowerBound() / (isFew() ? WIDE_LIMIT : NARROW_LIMIT);
                return findTreeByLimits(moats, narrowing(moats), 1 + above);
            }
        }
        search(Optional.empty(), Optional.empty());
        return best;
    }

    /**
     * The same where a good tree is known, by moats of the core.
     *
     * @param narrowing what these moats say, and others
     * @throws SpentException as {@link #findTree} does
     */
    Optional<CoreTree> findTree(Moats moats, Narrowing narrowing) {
        long known = best.orElseThrow().cost().weight();
        return findTreeByLimits(moats, Optional.of(narrowing), 1 + (known - moats.lowerBound()) / 4);
    }

    /**
     * Among trees not much heavier than the lower bound first: what is found there is least, and nothing else needs to
     * be looked at. A limit that is almost what is known is not worth a search of its own.
     */
    private Optional<CoreTree> findTreeByLimits(Moats moats, Optional<Narrowing> narrowing, long firstAbove) {
        long known = best.orElseThrow().cost().weight();
        raise(moats.lowerBound());
        long above = firstAbove;
        while (core.edges() > SMALL && moats.lowerBound() + above + above / 2 < known) {
            long limit = moats.lowerBound() + above;
            Optional<CoreTree> tree = findTreeIn(moats, narrowing, limit, new Cost(limit + 1, 0));
            if (tree.isPresent()) {
                return tree;
            }
            raise(limit + 1);
            above = Math.max(above + above / 2, limit - moats.lowerBound()) + 1;
        }
        take(findTreeIn(moats, narrowing, known, best.orElseThrow().cost()));
        return best;
    }

    private boolean isFew() {
        return core.leaves() <= FEW;
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
        Moats moats = Moats.of(core, meter);
        return moats.lowerBound() > known.weight()
                ? Optional.empty()
                : findTreeIn(moats, narrowing(moats), known.weight(), known);
    }

    private Optional<Narrowing> narrowing(Moats moats) {
        return isFew() ? Optional.empty() : Optional.of(new Narrowing(core).by(moats));
    }

    /** A least tree of those that weigh at most this and cost less than what is known, if there is any. */
    private Optional<CoreTree> findTreeIn(Moats moats, Optional<Narrowing> narrowing, long weight, Cost known) {
        if (narrowing.isEmpty()) {
            LeastTreeSearch everywhere = new LeastTreeSearch(core, shortcuts, meter, Optional.empty());
            everywhere.search(Optional.of(known), Optional.of(moats.bound(weight)));
            return everywhere.best;
        }
        SubCore part = narrowing.orElseThrow().part(weight, core.root());
        LeastTreeSearch inPart = new LeastTreeSearch(part.core(), shortcuts, meter, Optional.empty());
        inPart.search(Optional.of(known), Optional.of(moats.bound(part.core(), weight)));
        return inPart.best.flatMap(part::findInWhole);
    }

    /** @param known cost of a tree that need not be found again; only what is better counts */
    private void search(Optional<Cost> known, Optional<Bound> bound) {
        Deque<Restriction> open = new ArrayDeque<>();
        open.push(Restriction.none());
        while (!open.isEmpty()) {
            Restriction cases = open.pop();
            bound.ifPresent(found -> limit(known).map(Cost::weight).ifPresent(found::limitTo));
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
