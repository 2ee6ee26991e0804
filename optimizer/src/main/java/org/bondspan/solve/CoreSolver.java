package org.bondspan.solve;

import java.util.Optional;

/**
 * Searches a core within limits. Few leaves: the exact search at once. More, or where that would go on for long: first
 * a good tree and a good bound, then the exact search by their help, where there are not too many leaves. What it
 * cannot prove is improved as long as there is time.
 */
final class CoreSolver {

    /** Up to so many leaves the exact search at once is as good as any. */
    private static final int VERY_FEW = 15;

    /** Steps of a first search where there are more, about half a second, and as many more for each node. */
    private static final long FEW_STEPS = 4_000_000;

    private static final long FEW_STEPS_BY_NODE = 40;

    /** Steps of the exact search where there are more and there is no deadline; about a minute. */
    private static final long MANY_STEPS = 400_000_000;

    /** Of the time that is left: how much the exact search may take where there are many leaves. */
    private static final double EXACT_SHARE = 0.75;

    private final Core core;
    private final Shortcuts shortcuts;
    private final Meter meter;
    private final RoughSearch rough;
    private long known;

    CoreSolver(Core core, Shortcuts shortcuts, Meter meter) {
        this.core = core;
        this.shortcuts = shortcuts;
        this.meter = meter;
        rough = new RoughSearch(core, meter);
    }

    CoreAnswer solve() {
        if (core.need().isNarrow() && core.leaves() <= LeastTreeSearch.FEW) {
            long steps = core.leaves() <= VERY_FEW ? Long.MAX_VALUE : fewSteps();
            LeastTreeSearch search = new LeastTreeSearch(core, shortcuts, meter.withWork(steps), Optional.empty());
            try {
                return least(meter.run(search::findTree));
            } catch (SpentException spent) {
                learn(search);
                if (spent.what() != SpentException.What.WORK) {
                    rough.run();
                    return unproven(ending(spent));
                }
            }
        }
        return solvePrepared();
    }

    private long fewSteps() {
        return FEW_STEPS + FEW_STEPS_BY_NODE * core.nodes();
    }

    /**
     * As many leaves are searched: with a good tree and a good bound; where that goes on for long, with better ones.
     */
    CoreAnswer solvePrepared() {
        rough.run();
        return solveWith(fewSteps()).orElseGet(() -> {
            rough.runOn();
            long steps = meter.isTimed() ? Long.MAX_VALUE : MANY_STEPS;
            return solveWith(steps).orElseGet(() -> unproven(Outcome.Ending.TERMINALS));
        });
    }

    /** An answer, unless there are too many leaves or it takes more than some steps. */
    private Optional<CoreAnswer> solveWith(long steps) {
        Meter allowed = meter.withWork(steps).withShareOfTime(EXACT_SHARE);
        LeastTreeSearch search = new LeastTreeSearch(rough.moats().core(), shortcuts, allowed, rough.best());
        try {
            Optional<SubCore> part = meter.run(this::findPart);
            if (part.isPresent() || !core.need().isNarrow()) {
                return part.map(this::solveIn);
            }
            return Optional.of(least(meter.run(() ->
                    rough.best().isPresent() ? search.findTree(rough.moats(), rough.narrowing()) : search.findTree())));
        } catch (SpentException spent) {
            learn(search);
            return spent.what() == SpentException.What.WORK ? Optional.empty() : Optional.of(unproven(ending(spent)));
        }
    }

    private Optional<SubCore> findPart() {
        return rough.best()
                .map(tree -> rough.narrowing().part(tree.cost().weight(), core.root()))
                .filter(this::isMuchLess);
    }

    /** Whether a part is worth another beginning: it falls into parts with fewer leaves, or is far smaller. */
    private boolean isMuchLess(SubCore part) {
        return shortcuts.division()
                && (2 * part.core().edges() < core.edges()
                        || Division.find(part.core()).isPresent());
    }

    /** In a part where all trees lie that are as light as the best known. */
    private CoreAnswer solveIn(SubCore part) {
        CoreAnswer answer = new DividedSolver(part.core(), shortcuts, meter).solve();
        rough.take(answer.tree().flatMap(part::findInWhole));
        known = Math.max(known, answer.lowerBound());
        return new CoreAnswer(rough.best(), bound(), answer.ending());
    }

    /** The many-terminal method alone. */
    CoreAnswer solveRoughly() {
        rough.run();
        return unproven(Outcome.Ending.TERMINALS);
    }

    private void learn(LeastTreeSearch search) {
        rough.take(search.best());
        known = Math.max(known, search.lowerBound());
    }

    private static CoreAnswer least(Optional<CoreTree> tree) {
        return new CoreAnswer(tree, tree.map(found -> found.cost().weight()).orElse(0L), Optional.empty());
    }

    private Outcome.Ending ending(SpentException spent) {
        return switch (spent.what()) {
            case TIME -> Outcome.Ending.TIME;
            case MEMORY -> Outcome.Ending.MEMORY;
            case WORK -> Outcome.Ending.TERMINALS;
        };
    }

    private CoreAnswer unproven(Outcome.Ending why) {
        rough.goOn(bound());
        return new CoreAnswer(rough.best(), bound(), Optional.of(why));
    }

    private long bound() {
        return Math.max(known, rough.moats().lowerBound());
    }
}
