package org.bondspan.solve;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Searches a core within limits. Few leaves: the exact search. More: first a good tree, improved by windows, then the
 * exact search where there are not too many leaves, with that tree as its bound. What it cannot prove gets a lower
 * bound by dual ascent.
 */
final class CoreSolver {

    /** Up to so many leaves the exact search goes on to its end. */
    private static final int SEVERAL = 24;

    /** Steps of the exact search where there are more leaves than several; about a minute. */
    private static final long WORK = 400_000_000;

    /** Leaves from which a first tree is grown. */
    private static final int STARTS = 8;

    private static final int ORDERS = 6;

    private final Core core;
    private final Shortcuts shortcuts;
    private final Meter meter;
    private Optional<Moats> moats = Optional.empty();

    CoreSolver(Core core, Shortcuts shortcuts, Meter meter) {
        this.core = core;
        this.shortcuts = shortcuts;
        this.meter = meter;
    }

    CoreAnswer solve() {
        boolean isNarrow = core.need().isNarrow();
        Optional<CoreTree> first = isNarrow && core.leaves() <= LeastTreeSearch.FEW ? Optional.empty() : findGoodTree();
        if (!isNarrow) {
            return unproven(first, 0, Outcome.Ending.TERMINALS);
        }
        Meter allowed = core.leaves() <= SEVERAL ? meter : meter.withWork(WORK);
        LeastTreeSearch search = new LeastTreeSearch(core, shortcuts, allowed, first);
        try {
            return new CoreAnswer(search.findTree(), search.lowerBound(), Optional.empty());
        } catch (SpentException spent) {
            Optional<CoreTree> best = first.isPresent() ? search.best() : improved(search.best());
            return unproven(best, search.lowerBound(), ending(spent));
        }
    }

    /** The many-terminal method alone. */
    CoreAnswer solveRoughly() {
        return unproven(findGoodTree(), 0, Outcome.Ending.TERMINALS);
    }

    private Outcome.Ending ending(SpentException spent) {
        return switch (spent.what()) {
            case TIME -> Outcome.Ending.TIME;
            case MEMORY -> Outcome.Ending.MEMORY;
            case WORK -> Outcome.Ending.TERMINALS;
        };
    }

    private Optional<CoreTree> findGoodTree() {
        return improved(findFirstTree());
    }

    private Optional<CoreTree> improved(Optional<CoreTree> tree) {
        Optional<CoreTree> first = tree.isPresent() ? tree : findFirstTree();
        first.ifPresent(found -> meter.found(found.cost().weight()));
        if (!meter.isOver()) {
            meter.proven(moats().lowerBound());
        }
        return first.map(found -> new Improver(core, meter).improve(found));
    }

    /** The best of the trees grown from some leaves, the root first; at least from one, whatever the time. */
    private Optional<CoreTree> findFirstTree() {
        FirstTree trees = new FirstTree(core);
        int step = Math.max(1, core.leaves() / STARTS);
        IntStream others = IntStream.iterate(0, leaf -> leaf < core.leaves(), leaf -> leaf + step);
        return Stream.concat(
                        trees.trees().stream(),
                        others.filter(leaf -> leaf != core.root())
                                .takeWhile(leaf -> !meter.isOver())
                                .boxed()
                                .flatMap(leaf -> trees.trees(leaf).stream()))
                .min(Comparator.comparing(CoreTree::cost));
    }

    private Moats moats() {
        if (moats.isEmpty()) {
            moats = Optional.of(Moats.of(core));
        }
        return moats.orElseThrow();
    }

    private CoreAnswer unproven(Optional<CoreTree> tree, long known, Outcome.Ending why) {
        long bound = Math.max(known, moats().lowerBound());
        if (!meter.isOver()) {
            bound = Math.max(bound, moats().deeper(core, ORDERS).lowerBound());
        }
        return new CoreAnswer(tree, bound, Optional.of(why));
    }
}
