package org.bondspan.viewer.state;

import org.bondspan.layout.Layout;
import org.bondspan.usecase.Question;

/**
 * What a site was asked, and the answer.
 *
 * @param plan with a layout
 */
public record Answer(Question question, Plan plan) {
    public Answer {
        if (plan.layout().isEmpty()) {
            throw new IllegalArgumentException("an answer for " + plan.site().name() + " that is not routed");
        }
    }

    public Layout layout() {
        return plan.layout().orElseThrow();
    }
}
