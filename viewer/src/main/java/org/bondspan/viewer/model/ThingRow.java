package org.bondspan.viewer.model;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.layout.BondState;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.ServiceState;
import org.bondspan.units.WireSize;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Plan;

/**
 * A service, an electrode, a frame or piping, and what has become of it.
 *
 * @param need copper size that it calls for, or a dash; of a proposal the thinnest conductor on the way
 */
public record ThingRow(String id, String what, String state, String need) {
    private static final String NONE = "\u2013";

    /**
     * Services, then electrodes, then frames and piping to be bonded; of a proposal, what is to be connected with each
     * service, and whether it is.
     */
    public static List<ThingRow> rows(Desk desk) {
        return desk.proposal()
                .map(review ->
                        review.outcome().ways().stream().map(ThingRow::of).toList())
                .or(() -> desk.plan().map(ThingRow::of))
                .orElse(List.of());
    }

    private static ThingRow of(JudgedWay way) {
        return new ThingRow(
                way.thing(),
                "from " + way.service(),
                way.lawful() ? "lawful way" : "no lawful way",
                way.thinnest().orElse(NONE));
    }

    private static List<ThingRow> of(Plan plan) {
        List<ThingRow> rows = new ArrayList<>();
        for (ServiceState service : plan.states().services()) {
            rows.add(new ThingRow(service.id(), "service", "", service.need().label()));
        }
        for (ElectrodeState electrode : plan.states().electrodes()) {
            rows.add(new ThingRow(
                    electrode.id(),
                    Wording.spaced(electrode.type()),
                    Wording.of(electrode.state(), plan),
                    electrode.need().map(WireSize::label).orElse(NONE)));
        }
        for (BondState bond : plan.states().bonds()) {
            rows.add(new ThingRow(
                    bond.path(),
                    "frame or piping",
                    Wording.of(bond.state(), plan),
                    bond.need().map(WireSize::label).orElse(NONE)));
        }
        return List.copyOf(rows);
    }
}
