package org.bondspan.solve;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The method for many leaves: good trees, improved by windows, beside a lower bound by dual ascent. What it knows is
 * the better the longer it runs, and always right.
 */
final class RoughSearch {

    /** Leaves from which a first tree is grown. */
    private static final int STARTS = 8;

    /** Leaves that are tried as the root of the bound. */
    private static final int ROOTS = 12;

    private final Core core;
    private final Meter meter;
    private final Improver improver;
    private Optional<CoreTree> best = Optional.empty();
    private Optional<Moats> moats = Optional.empty();

    RoughSearch(Core core, Meter meter) {
        this.core = core;
        this.meter = meter;
        improver = new Improver(core, meter);
    }

    /** The best tree so far. */
    Optional<CoreTree> best() {
        return best;
    }

    /** The moats that bound most so far. */
    Moats moats() {
        if (moats.isEmpty()) {
            keep(Moats.of(core, meter));
        }
        return moats.orElseThrow();
    }

    private void keep(Moats better) {
        moats = Optional.of(better);
        meter.proven(better.lowerBound());
    }

    /** A tree is known from elsewhere. */
    void take(Optional<CoreTree> tree) {
        tree.filter(other -> best.isEmpty()
                        || other.cost().compareTo(best.orElseThrow().cost()) < 0)
                .ifPresent(better -> {
                    best = tree;
                    meter.found(better.cost().weight());
                });
    }

    /** A good tree and a good bound, in a time that hardly grows faster than the core; sooner where time is over. */
    void run() {
        moats();
        if (best.isEmpty()) {
            take(findFirstTree());
        }
        best.map(improver::improve).ifPresent(better -> take(Optional.of(better)));
        best.ifPresent(guide -> keep(moats().deeper(guide, ROOTS, meter)));
    }

    /**
     * Uses the time until a deadline, where there is one: trees grown from each of the leaves are improved, then the
     * best of all by larger and larger windows.
     *
     * @param lowerBound no tree weighs less; one that weighs as much is not improved
     */
    void goOn(long lowerBound) {
        for (int leaf = 0; leaf < core.leaves() && mayImprove(lowerBound); leaf++) {
            for (CoreTree first : new FirstTree(core).trees(leaf)) {
                take(Optional.of(improver.improve(first)));
            }
        }
        if (mayImprove(lowerBound)) {
            take(best.map(improver::improveFurther));
        }
    }

    private boolean mayImprove(long lowerBound) {
        return meter.isTimed()
                && !meter.isOver()
                && best.filter(tree -> tree.cost().weight() > lowerBound).isPresent();
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
}
