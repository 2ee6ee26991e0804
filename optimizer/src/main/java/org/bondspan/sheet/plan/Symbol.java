package org.bondspan.sheet.plan;

/** The symbols of a plan, with their words in the legend. Circles with letters are electrodes. */
public enum Symbol {
    COLUMN("column", 5),
    CONNECTION("accessible connection, not used", 4),
    LANDING("landing of a conductor", 6),
    UP_OR_DOWN("conductor runs vertically here", 8),
    EXOTHERMIC("joint, exothermic weld", 7),
    IRREVERSIBLE("joint, irreversible compression", 7),
    MECHANICAL("joint, mechanical connector", 7),
    BUSBAR("busbar where conductors are joined", 12),
    BREAK("meter or other equipment in a pipe", 9),
    BREAK_WITH_JUMPER("meter or other equipment with a jumper around it", 19),
    RISER("riser between levels", 12),
    ELECTRODE("electrode, connected", 16),
    ELECTRODE_LEFT_OUT("electrode that need not be connected", 16),
    NO_ELECTRODE("no electrode", 16),
    ELECTRODE_UNREACHED("electrode that cannot be reached", 16),
    SERVICE("service", 15);

    private final String words;
    private final double size;

    Symbol(String words, double size) {
        this.words = words;
        this.size = size;
    }

    /** How many times their size symbols have beside letters of that size. */
    public static double scale(double letters) {
        return letters / 8;
    }

    /** What the legend says. */
    public String words() {
        return words;
    }

    /** Width and height in points, beside letters of 8 points. */
    public double size() {
        return size;
    }
}
