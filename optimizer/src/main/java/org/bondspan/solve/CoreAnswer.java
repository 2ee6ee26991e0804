package org.bondspan.solve;

import java.util.Optional;
import java.util.function.Function;

/**
 * What is known of a core when its search has ended.
 *
 * @param tree the best tree found
 * @param lowerBound no tree weighs less
 * @param ending why there is no proof; empty when the tree is least, or none is possible
 */
record CoreAnswer(Optional<CoreTree> tree, long lowerBound, Optional<Outcome.Ending> ending) {

    /** In terms of the problem. */
    Outcome with(Function<CoreTree, Tree> rebuild) {
        if (ending.isEmpty()) {
            return tree.map(rebuild)
                    .map(least -> (Outcome) new Outcome.Least(least))
                    .orElseGet(Outcome.Impossible::new);
        }
        Outcome.Ending why = ending.orElseThrow();
        return tree.map(rebuild)
                .map(best -> (Outcome) new Outcome.BestFound(best, lowerBound, why))
                .orElseGet(() -> new Outcome.NotFound(why));
    }
}
