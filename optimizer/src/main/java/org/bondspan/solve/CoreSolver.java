package org.bondspan.solve;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Searches a core within limits. Few leaves: the exact search. More: first a good tree and a good bound, then the exact
 * search by their help, where there are not too many leaves. What it cannot prove is improved as long as there is time.
 */
final class CoreSolver {

    /** Up to so many leaves the exact search goes on to its end. */
    private static final int SEVERAL = 24;

    /** Steps of the exact search where there are more leaves than several; about a minute. */
    private static final long WORK = 400_000_000;

    /** Of the time that is left: how much the exact search may take where there are many leaves. */
    private static final double EXACT_SHARE = 0.75;

    private final Core core;
    private final Shortcuts shortcuts;
    private final Meter meter;
    private final RoughSearch rough;

    CoreSolver(Core core, Shortcuts shortcuts, Meter meter) {
        this.core = core;
        this.shortcuts = shortcuts;
        this.meter = meter;
        rough = new RoughSearch(core, meter);
    }

    CoreAnswer solve() {
        if (!core.need().isNarrow()) {
            return solveRoughly();
        }
        if (core.leaves() <= LeastTreeSearch.FEW) {
            LeastTreeSearch search = new LeastTreeSearch(core, shortcuts, meter, Optional.empty());
            return solveExactly(search, search::findTree);
        }
        rough.run();
        Meter allowed = (core.leaves() <= SEVERAL ? meter : meter.withWork(WORK)).withShareOfTime(EXACT_SHARE);
        Core rooted = rough.moats().core();
        LeastTreeSearch search = new LeastTreeSearch(rooted, shortcuts, allowed, rough.best());
        return solveExactly(
                search, () -> rough.best().isPresent() ? search.findTree(rough.moats()) : search.findTree());
    }

    /** The many-terminal method alone. */
    CoreAnswer solveRoughly() {
        rough.run();
        return unproven(0, Outcome.Ending.TERMINALS);
    }

    private CoreAnswer solveExactly(LeastTreeSearch search, Supplier<Optional<CoreTree>> run) {
        try {
            return new CoreAnswer(run.get(), search.lowerBound(), Optional.empty());
        } catch (SpentException spent) {
            rough.take(search.best());
            if (core.leaves() <= LeastTreeSearch.FEW) {
                rough.run();
            }
            return unproven(search.lowerBound(), ending(spent));
        }
    }

    private Outcome.Ending ending(SpentException spent) {
        return switch (spent.what()) {
            case TIME -> Outcome.Ending.TIME;
            case MEMORY -> Outcome.Ending.MEMORY;
            case WORK -> Outcome.Ending.TERMINALS;
        };
    }

    private CoreAnswer unproven(long known, Outcome.Ending why) {
        long bound = Math.max(known, rough.moats().lowerBound());
        rough.goOn(bound);
        return new CoreAnswer(rough.best(), bound, Optional.of(why));
    }
}
