package org.bondspan.solve;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Makes a tree better as long as it can: one {@link Window} after the other is replaced by the best there is, small
 * windows first, until none helps any more.
 */
final class Improver {

    private static final int[] LIMBS = {4, 6, 8, 10};
    private static final int MOST_LIMBS = 24;
    private static final int MOST_NODES = 4000;
    private static final long WORK_OF_A_WINDOW = 400_000;

    private final Core core;
    private final Meter meter;
    private final Region region;
    private final int[] placeOf;
    private final SplittableRandom random = new SplittableRandom(1);
    private final Set<Long> tried = new HashSet<>();

    Improver(Core core, Meter meter) {
        this.core = core;
        this.meter = meter;
        region = new Region(core, MOST_NODES);
        placeOf = new int[core.nodes()];
        Arrays.fill(placeOf, -1);
    }

    /** The best tree found; what is given when there is no better one, or no time. */
    CoreTree improve(CoreTree first) {
        CoreTree tree = first;
        for (int limbs : LIMBS) {
            CoreTree before;
            do {
                before = tree;
                tree = pass(tree, limbs, WORK_OF_A_WINDOW);
            } while (tree.cost().compareTo(before.cost()) < 0 && !meter.isOver());
        }
        return tree;
    }

    /** By larger and larger windows, until there are none, or no time. */
    CoreTree improveFurther(CoreTree first) {
        CoreTree tree = first;
        long work = WORK_OF_A_WINDOW;
        for (int limbs = LIMBS[LIMBS.length - 1] + 2; limbs <= MOST_LIMBS && !meter.isOver(); limbs += 2) {
            work *= 2;
            tree = pass(tree, limbs, work);
        }
        return tree;
    }

    /** Looks at a window round each place where the tree branches or a leaf lands. */
    private CoreTree pass(CoreTree first, int limbs, long work) {
        CoreTree tree = first;
        int[] centres = shuffled(keys(tree));
        for (int centre : centres) {
            if (meter.isOver()) {
                return tree;
            }
            tree = findBetter(tree, centre, limbs, work).orElse(tree);
            meter.found(tree.cost().weight());
        }
        return tree;
    }

    /** Nodes of the core where the tree branches or a leaf lands. */
    private int[] keys(CoreTree tree) {
        TreeWeb web = new TreeWeb(core, tree, placeOf);
        int[] keys = new int[web.size()];
        int count = 0;
        for (int place = 0; place < web.size(); place++) {
            if (web.isKey(place)) {
                keys[count++] = web.node(place);
            }
        }
        web.clear();
        return Arrays.copyOf(keys, count);
    }

    private int[] shuffled(int[] nodes) {
        for (int i = nodes.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int kept = nodes[i];
            nodes[i] = nodes[j];
            nodes[j] = kept;
        }
        return nodes;
    }

    private Optional<CoreTree> findBetter(CoreTree tree, int centre, int limbs, long work) {
        TreeWeb web = new TreeWeb(core, tree, placeOf);
        try {
            if (placeOf[centre] < 0) {
                return Optional.empty();
            }
            Window window = Window.round(web, placeOf[centre], limbs);
            if (window.limbs().size() < 2 || !tried.add(signature(window))) {
                return Optional.empty();
            }
            return new Rework(core, window, region).findBetter(meter.forPart(work));
        } catch (SpentException end) {
            return Optional.empty();
        } finally {
            web.clear();
        }
    }

    /** Of the edges of a window: the same window is not tried twice. */
    private static long signature(Window window) {
        CoreTree tree = window.web().tree();
        return window.edges().stream()
                .mapToLong(i -> 0x9E3779B97F4A7C15L * (tree.edge(i) + 1L))
                .map(mixed -> (mixed ^ (mixed >>> 29)) * 0xBF58476D1CE4E5B9L)
                .map(mixed -> mixed ^ (mixed >>> 32))
                .sum();
    }
}
