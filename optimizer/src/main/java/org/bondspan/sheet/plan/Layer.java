package org.bondspan.sheet.plan;

/** What can be switched on and off in a plan; painted in this order. */
public enum Layer {
    CLOSED_AREAS,
    BUILDING,
    FRAME,
    NOT_PERMITTED,
    PIPING,
    ALLOWED_COPPER,
    CONDUCTORS,
    JOINTS,
    RISERS,
    ELECTRODES,
    SERVICES,
    KEYNOTES
}
