package org.bondspan.review;

import java.util.Locale;
import java.util.stream.Collectors;
import org.bondspan.code.Carrier;
import org.bondspan.code.LineLengths;
import org.bondspan.layout.Excluded;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.NeverCarries;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;

/** What is said of a way that passes metal which may not carry: 250.53(C), 250.52(B), 250.68(C). */
final class UnlawfulLinks {
    private final SiteMetal metal;

    UnlawfulLinks(SiteMetal metal) {
        this.metal = metal;
    }

    Offence through(Electrode electrode) {
        String id = electrode.id();
        if (electrode instanceof ConcreteEncased) {
            return new Offence(
                    CheckedRule.THROUGH_CONCRETE_ENCASED,
                    id,
                    "The way passes through concrete-encased electrode " + id + ": it may only end there.",
                    "Run the conductor past it unbroken and land a conductor of its own on it.");
        }
        if (electrode instanceof GroundRing) {
            return new Offence(
                    CheckedRule.RING_WITHOUT_LEAVE,
                    id,
                    "Ring " + id
                            + " joins other things without leave: the code neither allows nor bars it, and it does not count here.",
                    "Ask the authority having jurisdiction, or join in copper beside the ring.");
        }
        return new Offence(
                check(electrode),
                id,
                "The way passes through " + electrode.type().replace('-', ' ') + " " + id + ", which may not carry.",
                "Join the conductors in copper beside it.");
    }

    private static CheckedRule check(Electrode electrode) {
        if (electrode instanceof WaterPipeElectrode) {
            return CheckedRule.PIPE_TOO_FAR_IN;
        }
        return electrode.type().equals("gas-pipe") ? CheckedRule.GAS_PIPE_AS_LINK : CheckedRule.OTHER_METAL_AS_LINK;
    }

    Offence through(SitePath path) {
        String id = path.id();
        if (path instanceof CopperLine) {
            return new Offence(
                    CheckedRule.OTHER_METAL_AS_LINK,
                    id,
                    id + " is a line where copper may run, not metal that joins anything.",
                    "Say where the conductors meet: a joint, a tap or a place.");
        }
        String reason = metal.media().excluded().stream()
                .filter(excluded -> excluded.path().equals(id))
                .map(Excluded::reason)
                .collect(Collectors.joining(" "));
        String what = path.medium().replace('-', ' ') + " " + id + " is used as a link. " + reason;
        String capital = what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1);
        return new Offence(check(path), id, capital.strip(), "Run copper of full size instead.");
    }

    private static CheckedRule check(SitePath path) {
        if (path instanceof NeverCarries never) {
            return switch (never.kind()) {
                case FOOTING_REBAR -> CheckedRule.REBAR_AS_LINK;
                case GAS_PIPE -> CheckedRule.GAS_PIPE_AS_LINK;
                case ROOF_DECK, OTHER -> CheckedRule.OTHER_METAL_AS_LINK;
            };
        }
        if (path instanceof StructuralFrame) {
            return CheckedRule.FRAME_AS_LINK;
        }
        return path instanceof WaterPiping ? CheckedRule.PIPE_TOO_FAR_IN : CheckedRule.OTHER_METAL_AS_LINK;
    }

    /** Of a landing on water pipe beyond its usable part. */
    Offence beyond(String pipe, Length usable) {
        String limit = Numbers.print(usable, metal.site().lengthUnit());
        return new Offence(
                CheckedRule.PIPE_TOO_FAR_IN,
                pipe,
                "A conductor lands on " + pipe + " further than " + limit + " from the point of entrance.",
                "Land it within " + limit + ", measured along the pipe.");
    }

    /** Whether some of the pipe lies beyond its usable part. */
    static boolean isPartlyUsable(Carrier.Pipe pipe) {
        return pipe.usable().isLessThan(LineLengths.of(pipe.path().line()));
    }
}
