package org.bondspan.price;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a conductor is fastened with where it lands, is tapped, spliced, or passes a wall. */
public enum ConnectionKind {
    SERVICE_LUG("lug on the grounded conductor of a service"),
    PIPE_CLAMP("clamp on a water pipe or other pipe"),
    ROD_CLAMP("clamp on a rod or pipe electrode"),
    REBAR_CLAMP("clamp on a concrete-encased electrode, listed for it"),
    FRAME_WELD("exothermic weld to a structural frame or in-ground metal"),
    RING_TAP("irreversible tap or weld on a ground ring"),
    PLATE_WELD("weld to a plate electrode"),
    ELECTRODE_CLAMP("clamp on another listed electrode or underground metal"),
    IRREVERSIBLE_TAP("irreversible compression tap"),
    EXOTHERMIC_TAP("exothermic weld of a tap"),
    BUSBAR_LUG("lug on a busbar"),
    METER_JUMPER("jumper around a meter or the like: its two clamps"),
    SPLICE("irreversible or exothermic splice where a reel ends");

    private final String words;

    ConnectionKind(String words) {
        this.words = words;
    }

    /** As price books write it: {@code "rod-clamp"}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What it is, in trade words. */
    public String words() {
        return words;
    }

    /** What lands on an electrode of that type, as site files name it. */
    public static ConnectionKind onElectrode(String type) {
        return switch (type) {
            case "rod", "pipe" -> ROD_CLAMP;
            case "water-pipe" -> PIPE_CLAMP;
            case "concrete-encased" -> REBAR_CLAMP;
            case "ring" -> RING_TAP;
            case "plate" -> PLATE_WELD;
            case "in-ground-metal" -> FRAME_WELD;
            default -> ELECTRODE_CLAMP;
        };
    }

    /** What lands on a path of that medium, as site files name it. */
    public static ConnectionKind onPath(String medium) {
        return switch (medium) {
            case "structural-frame" -> FRAME_WELD;
            case "ring" -> RING_TAP;
            case "water-pipe" -> PIPE_CLAMP;
            default -> ELECTRODE_CLAMP;
        };
    }

    public static Optional<ConnectionKind> find(String label) {
        return Arrays.stream(values())
                .filter(kind -> kind.label().equals(label))
                .findFirst();
    }
}
