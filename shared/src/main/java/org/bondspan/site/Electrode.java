package org.bondspan.site;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * A grounding electrode, or what was drawn as one, with the facts that decide whether it qualifies (250.52). Lengths
 * and depths are lengths; diameters, covers, thicknesses and trade sizes are inches, in every site.
 */
public sealed interface Electrode {
    /** Its id, and where conductors may land on it. */
    record Terminals(String id, List<Connection> connections) {
        public Terminals {
            connections = List.copyOf(connections);
        }
    }

    Terminals terminals();

    default String id() {
        return terminals().id();
    }

    default List<Connection> connections() {
        return terminals().connections();
    }

    /** As site files name it, e.g. {@code "concrete-encased"}. */
    String type();

    /** What a water pipe carries. */
    enum WaterUse {
        DOMESTIC,
        FIRE,
        COMBINED
    }

    /** Metal underground water pipe, 250.52(A)(1). {@code earthContact} is metal and continuous to the landing. */
    record WaterPipeElectrode(Terminals terminals, Length earthContact, WaterUse use) implements Electrode {
        @Override
        public String type() {
            return "water-pipe";
        }
    }

    /** In-ground metal support structure, 250.52(A)(2). {@code earthContact} is vertical. */
    record InGroundMetal(Terminals terminals, Length earthContact, Optional<String> frame) implements Electrode {
        @Override
        public String type() {
            return "in-ground-metal";
        }
    }

    /** What lies in the concrete. */
    enum EncasedMetal {
        REBAR,
        COPPER
    }

    /** How a concrete-encased electrode's bars are tied to hold-down bolts of a frame. */
    enum TieMeans {
        WELD,
        EXOTHERMIC,
        TIE_WIRE,
        WET_SET
    }

    /** Bars tied to the hold-down bolts of that frame. */
    record FrameTie(String frame, TieMeans means) {}

    /**
     * Concrete-encased electrode, 250.52(A)(3).
     *
     * @param diameter of the bar in inches, where {@code metal} is rebar
     * @param conductorSize where {@code metal} is copper
     * @param cover of concrete, in inches
     * @param coated epoxy and the like
     * @param isolated from earth by a vapor barrier, film or insulation
     * @param use must be used, whichever else there are
     * @param reachable false where concrete would have to be disturbed (250.50 Exception)
     */
    record ConcreteEncased(
            Terminals terminals,
            Length conductorLength,
            EncasedMetal metal,
            Optional<BigDecimal> diameter,
            Optional<WireSize> conductorSize,
            BigDecimal cover,
            boolean coated,
            boolean isolated,
            boolean use,
            boolean reachable,
            Optional<FrameTie> tiedToFrame)
            implements Electrode {
        @Override
        public String type() {
            return "concrete-encased";
        }
    }

    /** Ground ring, 250.52(A)(4). */
    record GroundRing(Terminals terminals, WireSize conductorSize, Length conductorLength, Optional<Length> depth)
            implements Electrode {
        @Override
        public String type() {
            return "ring";
        }
    }

    /** Rods, pipes and plates: the electrodes that may need company, 250.53(A). */
    sealed interface Driven extends Electrode {
        /** Measured resistance to earth in ohms. */
        Optional<BigDecimal> resistance();
    }

    /** Rod, 250.52(A)(5); diameter in inches. */
    record Rod(
            Terminals terminals, Length rodLength, BigDecimal diameter, boolean listed, Optional<BigDecimal> resistance)
            implements Driven {
        @Override
        public String type() {
            return "rod";
        }
    }

    /** Pipe or conduit, 250.52(A)(5); trade size in inches. */
    record DrivenPipe(Terminals terminals, Length pipeLength, BigDecimal tradeSize, Optional<BigDecimal> resistance)
            implements Driven {
        @Override
        public String type() {
            return "pipe";
        }
    }

    /** Metal of a plate electrode. */
    enum PlateMetal {
        STEEL,
        NONFERROUS
    }

    /** Plate, 250.52(A)(7); area in square feet, thickness in inches. */
    record Plate(
            Terminals terminals,
            BigDecimal squareFeet,
            PlateMetal metal,
            BigDecimal thickness,
            Optional<BigDecimal> resistance)
            implements Driven {
        @Override
        public String type() {
            return "plate";
        }
    }

    /** Other listed electrode, 250.52(A)(6). */
    record OtherListed(Terminals terminals) implements Electrode {
        @Override
        public String type() {
            return "other-listed";
        }
    }

    /** Other local metal underground system or structure, 250.52(A)(8); connected only with {@code use}. */
    record OtherUndergroundMetal(Terminals terminals, boolean use) implements Electrode {
        @Override
        public String type() {
            return "other-underground-metal";
        }
    }

    /** What 250.52(B) bars from being an electrode. */
    record NotPermitted(Terminals terminals, String type) implements Electrode {}
}
