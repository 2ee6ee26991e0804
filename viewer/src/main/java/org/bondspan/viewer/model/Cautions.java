package org.bondspan.viewer.model;

import java.util.List;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Plan;

/** What every answer says whatever the site: cautions, and what was not checked. */
public record Cautions(List<String> cautions, List<String> notChecked) {
    public Cautions {
        cautions = List.copyOf(cautions);
        notChecked = List.copyOf(notChecked);
    }

    public static Cautions of(Desk desk) {
        return desk.plan()
                .map(Plan::states)
                .map(states -> new Cautions(states.cautions(), states.notChecked()))
                .orElse(new Cautions(List.of(), List.of()));
    }
}
