package org.bondspan.site;

import java.util.List;
import java.util.Optional;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * Something drawn that copper may follow or that may carry the interconnection, or that people take for it. The split
 * is by type: only a {@link MayCarry} can become part of a network, a {@link NeverCarries} cannot.
 */
public sealed interface SitePath {
    String id();

    /** As site files name it, e.g. {@code "structural-frame"}. */
    String medium();

    /** Its run as drawn; empty for a frame, and for a ring without one. */
    Optional<Line> findLine();

    /** A path that can become part of the network, each under its own conditions. */
    sealed interface MayCarry extends SitePath {}

    /** Where new copper may run. {@code measured} replaces the drawn length of the whole line. */
    record CopperLine(String id, Line line, Optional<Length> measured) implements MayCarry {
        @Override
        public String medium() {
            return "copper";
        }

        @Override
        public Optional<Line> findLine() {
            return Optional.of(line);
        }
    }

    /** An installed grounding electrode conductor or bonding jumper: carries up to its own size, 250.53(C), 250.66. */
    record InstalledConductor(String id, Line line, WireSize size) implements MayCarry {
        @Override
        public String medium() {
            return "conductor";
        }

        @Override
        public Optional<Line> findLine() {
            return Optional.of(line);
        }
    }

    /** A beam between two places in plan. */
    record Beam(PlanPoint from, PlanPoint to) {}

    /**
     * The metal structural frame, 250.68(C)(2). Heights are above the floor of each of its levels.
     *
     * @param continuous the members drawn are joined by bolts, rivets or welds
     * @param mayCarry false: bonded, but carries nothing
     */
    record StructuralFrame(
            String id,
            List<String> levels,
            List<PlanPoint> columns,
            List<Beam> beams,
            Length bottom,
            Length top,
            Length beamHeight,
            boolean mayCarry,
            boolean continuous,
            boolean bondingRequired)
            implements MayCarry {
        public StructuralFrame {
            levels = List.copyOf(levels);
            columns = List.copyOf(columns);
            beams = List.copyOf(beams);
        }

        /** Whether the interconnection may run over it. */
        public boolean carries() {
            return continuous && mayCarry;
        }

        /** The same frame, with other leave to carry. */
        public StructuralFrame withMayCarry(boolean leave) {
            return new StructuralFrame(
                    id, levels, columns, beams, bottom, top, beamHeight, leave, continuous, bondingRequired);
        }

        @Override
        public String medium() {
            return "structural-frame";
        }

        @Override
        public Optional<Line> findLine() {
            return Optional.empty();
        }
    }

    /** Equipment in a pipe that breaks its continuity when taken out, with the jumper around it. */
    record Break(Length distance, String kind, Length jumper, boolean installed) {}

    /**
     * Interior water piping; the first vertex of its line is the point of entrance.
     *
     * @param electrode the water-pipe electrode that it continues
     * @param exposed for its whole length but short perpendicular passages through walls and floors
     */
    record WaterPiping(
            String id,
            Optional<String> electrode,
            Line line,
            boolean exposed,
            boolean metal,
            boolean bondingRequired,
            List<Break> breaks)
            implements MayCarry {
        public WaterPiping {
            breaks = List.copyOf(breaks);
        }

        @Override
        public String medium() {
            return "water-pipe";
        }

        @Override
        public Optional<Line> findLine() {
            return Optional.of(line);
        }
    }

    /** A ground ring as a path between its own connections. */
    record RingPath(String id, String electrode, Optional<Line> line, boolean mayInterconnect) implements MayCarry {
        /** The same ring, with other leave to join electrodes. */
        public RingPath withMayInterconnect(boolean leave) {
            return new RingPath(id, electrode, line, leave);
        }

        @Override
        public String medium() {
            return "ring";
        }

        @Override
        public Optional<Line> findLine() {
            return line;
        }
    }

    /** Footing rebar, gas pipe, roof deck and other metal: drawn, explained, never part of the tie. */
    record NeverCarries(String id, Medium kind, Line line) implements SitePath {
        @Override
        public String medium() {
            return kind.label();
        }

        @Override
        public Optional<Line> findLine() {
            return Optional.of(line);
        }
    }

    /** Media that never carry. */
    enum Medium {
        FOOTING_REBAR("footing-rebar"),
        GAS_PIPE("gas-pipe"),
        ROOF_DECK("roof-deck"),
        OTHER("other");

        private final String label;

        Medium(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }
}
