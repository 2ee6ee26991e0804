package org.bondspan.solve;

import java.util.Collection;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The method for many leaves: good trees, improved by windows, beside a lower bound by dual ascent. What it knows is
 * the better the longer it runs, and always right.
 */
final class RoughSearch {

    /** Leaves from which a first tree is grown. */
    private static final int STARTS = 8;

    /** Edges times leaves: in so small a core further trees are improved, the more the smaller it is. */
    private static final long SMALL = 250_000;

    /** Leaves that are tried as the root of the bound. */
    private static final int ROOTS = 12;

    private final Core core;
    private final Meter meter;
    private final Improver improver;
    private final Merger merger;
    private final Narrowing narrowing;
    private Optional<CoreTree> best = Optional.empty();
    private Optional<Moats> moats = Optional.empty();

    RoughSearch(Core core, Meter meter) {
        this.core = core;
        this.meter = meter;
        improver = new Improver(core, meter);
        merger = new Merger(core, meter);
        narrowing = new Narrowing(core);
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
        narrowing.by(better);
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
            take(firstTrees().stream().findFirst());
        }
        best.map(improver::improve).ifPresent(better -> take(Optional.of(better)));
        best.ifPresent(this::deepen);
    }

    /** Trees and bounds that are better still, where the core is small. */
    void runOn() {
        long trees = SMALL / Math.max(1, (long) core.edges() * core.leaves());
        Optional<CoreTree> before = best;
        if (trees > 0) {
            firstTrees().stream()
                    .limit(trees)
                    .takeWhile(tree -> isOpen(moats().lowerBound()))
                    .forEach(tree -> add(improver.improve(tree)));
        }
        best.filter(tree -> !before.equals(best)).ifPresent(this::deepen);
    }

    private boolean isOpen(long lowerBound) {
        return !meter.isOver() && best.isPresent() && weight() > lowerBound;
    }

    private long weight() {
        return best.orElseThrow().cost().weight();
    }

    private void deepen(CoreTree guide) {
        try {
            keep(meter.run(() -> moats().deeper(guide, ROOTS, meter, narrowing::by)));
        } catch (SpentException spent) {
            // What was found before is a bound, too.
            return;
        }
    }

    /** What all moats so far leave over. */
    Narrowing narrowing() {
        return narrowing;
    }

    /**
     * Uses the time until a deadline, where there is one: trees grown from each of the leaves are improved, then the
     * best of all by larger and larger windows.
     *
     * @param lowerBound no tree weighs less; one that weighs as much is not improved
     */
    void goOn(long lowerBound) {
        for (int leaf = 0; leaf < core.leaves() && meter.isTimed() && isOpen(lowerBound); leaf++) {
            for (CoreTree first : new FirstTree(core).trees(leaf)) {
                add(improver.improve(first));
            }
        }
        if (meter.isTimed() && isOpen(lowerBound)) {
            take(best.map(improver::improveFurther));
        }
    }

    /** Another good tree: it, or what it and the best have in common, may be better. */
    private void add(CoreTree tree) {
        Optional<CoreTree> before = best;
        take(Optional.of(tree));
        take(before.flatMap(other -> merger.merge(other, tree)).map(improver::improve));
    }

    /**
     * The trees grown from some leaves, the best first, one of each cost; from one leaf at least, whatever the time.
     */
    private Collection<CoreTree> firstTrees() {
        FirstTree trees = new FirstTree(core);
        SortedMap<Cost, CoreTree> found = new TreeMap<>();
        trees.trees().forEach(tree -> found.putIfAbsent(tree.cost(), tree));
        int step = Math.max(1, core.leaves() / STARTS);
        for (int leaf = 0; leaf < core.leaves() && !meter.isOver(); leaf += step) {
            trees.trees(leaf).forEach(tree -> found.putIfAbsent(tree.cost(), tree));
        }
        return found.values();
    }
}
