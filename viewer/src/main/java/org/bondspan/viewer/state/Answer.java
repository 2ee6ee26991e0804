package org.bondspan.viewer.state;

import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.usecase.Question;

/** What a site was asked, and the answer. */
public record Answer(Question question, Plan plan) {
    public Layout layout() {
        return plan.layout();
    }

    public boolean isImpossible() {
        return layout().status() == Status.IMPOSSIBLE;
    }
}
