package org.bondspan.viewer.model;

import java.util.List;
import org.bondspan.sheet.plan.Layer;

/** What the layers of a plan are called, in the order of the list. */
public final class LayerNames {
    private LayerNames() {}

    public static List<Layer> order() {
        return List.of(
                Layer.CONDUCTORS,
                Layer.JOINTS,
                Layer.ELECTRODES,
                Layer.SERVICES,
                Layer.KEYNOTES,
                Layer.ALLOWED_COPPER,
                Layer.FRAME,
                Layer.PIPING,
                Layer.NOT_PERMITTED,
                Layer.RISERS,
                Layer.BUILDING,
                Layer.CLOSED_AREAS);
    }

    public static String of(Layer layer) {
        return switch (layer) {
            case CLOSED_AREAS -> "Closed areas";
            case BUILDING -> "Outline and walls";
            case FRAME -> "Frame";
            case NOT_PERMITTED -> "Rebar, gas, deck: not permitted";
            case PIPING -> "Pipes, rings, installed conductors";
            case ALLOWED_COPPER -> "Where new copper may run";
            case CONDUCTORS -> "Conductors";
            case JOINTS -> "Joints, landings, busbars";
            case RISERS -> "Risers";
            case ELECTRODES -> "Electrodes";
            case SERVICES -> "Services";
            case KEYNOTES -> "Numbers of findings";
        };
    }
}
