package org.bondspan.code;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Excluded;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Electrode.WaterUse;
import org.bondspan.site.FireLine;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.NeverCarries;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;

/**
 * Which drawn metal may serve as conductor between electrodes, and why the rest may not: 250.68(C), 250.53(C),
 * 250.52(B).
 */
public record MediaThatMayCarry(List<Carrier> carriers, List<Excluded> excluded) {
    /** How far in a water pipe may carry, 250.68(C)(1). */
    public static final Length FIVE_FEET = Length.ofFeet(5);

    public MediaThatMayCarry {
        carriers = List.copyOf(carriers);
        excluded = List.copyOf(excluded);
    }

    /** The carrier of that path, if it carries. */
    public Optional<Carrier> find(String path) {
        return carriers.stream()
                .filter(carrier -> carrier.path().id().equals(path))
                .findFirst();
    }

    public static MediaThatMayCarry of(Site site) {
        Judge judge = new Judge(site);
        site.paths().forEach(judge::judge);
        return new MediaThatMayCarry(judge.carriers, judge.excluded);
    }

    /** Whether that is a fire main which the project only bonds, instead of taking it for an electrode. */
    static boolean isBondOnly(WaterPipeElectrode pipe, Site site) {
        return pipe.use() == WaterUse.FIRE && site.fireLine().equals(Optional.of(FireLine.BOND_ONLY));
    }

    /** Connections of a frame's qualifying in-ground members: landing places of the frame. */
    static List<Connection> inGroundConnections(StructuralFrame frame, Site site) {
        return site.listElectrodes(InGroundMetal.class).stream()
                .filter(metal -> metal.frame().equals(Optional.of(frame.id())))
                .filter(metal -> Qualification.of(metal).qualifies())
                .flatMap(metal -> metal.connections().stream())
                .toList();
    }

    /** Collects the verdicts, path by path. */
    private static final class Judge {
        private final Site site;
        private final List<Carrier> carriers = new ArrayList<>();
        private final List<Excluded> excluded = new ArrayList<>();

        Judge(Site site) {
            this.site = site;
        }

        void judge(SitePath path) {
            if (path instanceof NeverCarries never) {
                exclude(never, reasonNever(never), basisNever(never));
            } else if (path instanceof StructuralFrame frame) {
                judgeFrame(frame);
            } else if (path instanceof WaterPiping pipe) {
                judgePipe(pipe);
            } else if (path instanceof RingPath ring) {
                judgeRing(ring);
            }
        }

        private String reasonNever(NeverCarries never) {
            return switch (never.kind()) {
                case FOOTING_REBAR ->
                    "Footing rebar never serves as a conductor between electrodes."
                            + Rule.ELECTRODE_BONDING_JUMPER
                                    .findEditionNote(site.codeEdition())
                                    .map(note -> " " + note)
                                    .orElse("");
                case GAS_PIPE -> "Gas pipe is no electrode and is not among the metal that may carry.";
                case ROOF_DECK -> "Roof deck is not the structural frame and is not among the metal that may carry.";
                case OTHER -> "Other metal is not among the metal that may carry.";
            };
        }

        private static List<Rule> basisNever(NeverCarries never) {
            return switch (never.kind()) {
                case FOOTING_REBAR -> List.of(Rule.ELECTRODE_BONDING_JUMPER, Rule.REBAR_STUB);
                case GAS_PIPE -> List.of(Rule.NOT_AN_ELECTRODE, Rule.FRAME_AND_PIPE);
                case ROOF_DECK, OTHER -> List.of(Rule.FRAME_AND_PIPE);
            };
        }

        private void judgeFrame(StructuralFrame frame) {
            if (!frame.continuous()) {
                exclude(frame, "The members drawn are not joined to one continuous frame.", Rule.STRUCTURAL_FRAME);
            } else if (!frame.mayCarry()) {
                exclude(frame, "The site file keeps this frame from carrying.", Rule.STRUCTURAL_FRAME);
            } else {
                carriers.add(new Carrier.Frame(frame, inGroundConnections(frame, site)));
            }
        }

        private void judgePipe(WaterPiping pipe) {
            Optional<WaterPipeElectrode> electrode = findElectrode(pipe);
            if (!pipe.metal()) {
                exclude(pipe, "The piping is not metal.", Rule.WATER_PIPE_FIVE_FEET);
            } else if (electrode.isEmpty()) {
                exclude(pipe, "The piping continues no water-pipe electrode.", Rule.WATER_PIPE_FIVE_FEET);
            } else if (isBondOnly(electrode.get(), site)) {
                exclude(pipe, "The fire main is bonded only, by the site file's choice.", Rule.WATER_PIPE_FIVE_FEET);
            } else if (!Qualification.of(electrode.get()).qualifies()) {
                String id = electrode.get().id();
                exclude(pipe, "Its electrode " + id + " does not qualify.", Rule.WATER_PIPE_FIVE_FEET);
            } else {
                addPipe(pipe);
            }
        }

        private Optional<WaterPipeElectrode> findElectrode(WaterPiping pipe) {
            return site.listElectrodes(WaterPipeElectrode.class).stream()
                    .filter(electrode -> pipe.electrode().equals(Optional.of(electrode.id())))
                    .findFirst();
        }

        private void addPipe(WaterPiping pipe) {
            Length whole = LineLengths.of(pipe.line());
            boolean furtherIn = site.qualifiedPersonsOnly() && pipe.exposed();
            Length usable = furtherIn || !FIVE_FEET.isLessThan(whole) ? whole : FIVE_FEET;
            carriers.add(new Carrier.Pipe(pipe, usable));
            if (usable.isLessThan(whole)) {
                String why = site.qualifiedPersonsOnly()
                        ? "it is not exposed for its whole length"
                        : "the site has no assured qualified supervision";
                exclude(
                        pipe,
                        "Beyond " + Numbers.print(usable, site.lengthUnit())
                                + " from the point of entrance the pipe may not carry: " + why + ".",
                        Rule.WATER_PIPE_FIVE_FEET);
            }
        }

        private void judgeRing(RingPath path) {
            GroundRing ring = site.listElectrodes(GroundRing.class).stream()
                    .filter(electrode -> electrode.id().equals(path.electrode()))
                    .findFirst()
                    .orElseThrow();
            if (!path.mayInterconnect()) {
                exclude(path, "The site file does not let the ring join other electrodes.", Rule.CONDUCTOR_SIZE);
            } else if (!Qualification.of(ring).qualifies()) {
                exclude(path, "The ring does not qualify as an electrode.", Rule.GROUND_RING);
            } else {
                carriers.add(new Carrier.Ring(path, ring));
            }
        }

        private void exclude(SitePath path, String reason, Rule rule) {
            exclude(path, reason, List.of(rule));
        }

        private void exclude(SitePath path, String reason, List<Rule> basis) {
            excluded.add(new Excluded(
                    path.id(),
                    path.medium(),
                    reason,
                    basis.stream().map(Rule::section).toList()));
        }
    }

    /** The metal path that continues that electrode inside the building. */
    static Optional<WaterPiping> findPiping(Electrode electrode, Site site) {
        return site.listPaths(WaterPiping.class).stream()
                .filter(WaterPiping::metal)
                .filter(pipe -> pipe.electrode().equals(Optional.of(electrode.id())))
                .findFirst();
    }
}
