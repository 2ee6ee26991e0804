package org.bondspan.code;

import java.util.List;

/** What every answer says, whatever the site. */
public final class StandingCautions {
    /** The usual cautions. */
    public static final List<String> CAUTIONS = List.of(
            "A design aid, not a design: a licensed professional reviews it before anything is built from it.",
            "The adopted code, its local amendments and the authority having jurisdiction decide.",
            "Facts of the site file are taken as stated; verify them in the field before conductors are ordered or cut.",
            "Work on grounding electrode conductors of live services can kill: qualified persons only.");

    /** What one site file cannot tell. */
    public static final List<String> NOT_CHECKED = List.of(
            "Separately derived systems, 250.30.",
            "Buildings supplied by feeders, 250.32.",
            "Bonding for communications systems, 250.94.",
            "Other metal piping, gas piping among it, 250.104(B).",
            "Lightning protection systems, 250.106.",
            "Local amendments to the adopted code.");

    private StandingCautions() {}
}
