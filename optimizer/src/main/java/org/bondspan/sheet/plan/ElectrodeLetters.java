package org.bondspan.sheet.plan;

import org.bondspan.site.Electrode;

/** The letters by which a plan tells electrodes apart. */
public enum ElectrodeLetters {
    W("metal underground water pipe"),
    S("in-ground metal support structure"),
    C("concrete-encased electrode"),
    RG("ground ring"),
    R("rod"),
    P("pipe"),
    PL("plate"),
    L("other listed electrode"),
    U("other underground metal"),
    X("not permitted as electrode");

    private final String words;

    ElectrodeLetters(String words) {
        this.words = words;
    }

    /** What the legend says. */
    public String words() {
        return words;
    }

    static ElectrodeLetters of(Electrode electrode) {
        return switch (electrode.type()) {
            case "water-pipe" -> W;
            case "in-ground-metal" -> S;
            case "concrete-encased" -> C;
            case "ring" -> RG;
            case "rod" -> R;
            case "pipe" -> P;
            case "plate" -> PL;
            case "other-listed" -> L;
            case "other-underground-metal" -> U;
            default -> X;
        };
    }
}
