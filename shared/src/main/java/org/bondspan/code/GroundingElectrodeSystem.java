package org.bondspan.code;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.code.Obligation.Kind;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.Driven;
import org.bondspan.site.Electrode.FrameTie;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.OtherUndergroundMetal;
import org.bondspan.site.Electrode.TieMeans;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;

/**
 * What NFPA 70 wants connected on a site, 250.50, 250.104: every obligation with its ways to land, and why the rest is
 * left out.
 *
 * @param obligations electrodes, those of which one is enough after the others, then frames, then piping; each kind in
 *     file order
 * @param leftOut why an electrode, frame or piping is not to be connected, by id
 */
public record GroundingElectrodeSystem(List<Obligation> obligations, Map<String, LeftOut> leftOut) {
    public GroundingElectrodeSystem {
        obligations = List.copyOf(obligations);
        leftOut = Map.copyOf(leftOut);
    }

    /** Why something drawn need not, or must not, be connected. */
    public record LeftOut(boolean electrode, String reason, Rule rule) {}

    public static GroundingElectrodeSystem of(Site site) {
        Builder builder = new Builder(site);
        builder.addElectrodes();
        builder.addFrames();
        builder.addPiping();
        return new GroundingElectrodeSystem(builder.obligations, builder.leftOut);
    }

    /** The frame is itself an electrode under the 2014 text: in-ground member, or bolted to a qualifying footing. */
    public static boolean isElectrodeFrame(StructuralFrame frame, Site site) {
        if (site.codeEdition() != CodeEdition.NEC_2014) {
            return false;
        }
        return site.electrodes().stream()
                .filter(electrode -> Qualification.of(electrode).qualifies())
                .anyMatch(electrode -> isPartOf(electrode, frame));
    }

    private static boolean isPartOf(Electrode electrode, StructuralFrame frame) {
        if (electrode instanceof InGroundMetal metal) {
            return metal.frame().equals(Optional.of(frame.id()));
        }
        return electrode instanceof ConcreteEncased encased && findTie(encased).equals(Optional.of(frame.id()));
    }

    /** The frame to whose hold-down bolts the bars are tied; bolts set into wet concrete do not count. */
    private static Optional<String> findTie(ConcreteEncased encased) {
        return encased.tiedToFrame()
                .filter(tie -> tie.means() != TieMeans.WET_SET)
                .map(FrameTie::frame);
    }

    /** Goes through the site once, in file order. */
    private static final class Builder {
        private final Site site;
        private final MediaThatMayCarry media;
        private final List<Obligation> obligations = new ArrayList<>();
        private final Map<String, LeftOut> leftOut = new LinkedHashMap<>();
        private final List<ConcreteEncased> encased = new ArrayList<>();
        private final List<InGroundMetal> inGround = new ArrayList<>();

        Builder(Site site) {
            this.site = site;
            this.media = MediaThatMayCarry.of(site);
        }

        void addElectrodes() {
            for (Electrode electrode : site.electrodes()) {
                Qualification verdict = Qualification.of(electrode);
                if (electrode instanceof WaterPipeElectrode pipe && MediaThatMayCarry.isBondOnly(pipe, site)) {
                    addFireMain(pipe);
                } else if (!verdict.qualifies()) {
                    String lacks = String.join("; ", verdict.shortfalls());
                    leftOut.put(electrode.id(), new LeftOut(false, "Does not qualify: " + lacks + ".", verdict.rule()));
                } else {
                    addQualified(electrode, verdict.rule());
                }
            }
            addOneOfEncased();
            addOneOfInGround();
        }

        private void addFireMain(WaterPipeElectrode pipe) {
            leftOut.put(
                    pipe.id(),
                    new LeftOut(
                            false, "Fire main, bonded as piping only, by the site file's choice.", Rule.PIPING_BOND));
            if (MediaThatMayCarry.findPiping(pipe, site).isEmpty()) {
                addObligation(Kind.PIPING, pipe.id(), Rule.PIPING_BOND, Need.TABLE, atConnections(pipe));
            }
        }

        private void addQualified(Electrode electrode, Rule rule) {
            if (electrode instanceof ConcreteEncased bars) {
                if (!bars.reachable() && site.existingBuilding()) {
                    String reason = "Existing building: its bars cannot be reached without disturbing concrete.";
                    leftOut.put(bars.id(), new LeftOut(true, reason, Rule.ELECTRODE_SYSTEM));
                } else {
                    encased.add(bars);
                }
            } else if (electrode instanceof InGroundMetal metal) {
                inGround.add(metal);
            } else if (electrode instanceof OtherUndergroundMetal other && !other.use()) {
                leftOut.put(
                        other.id(), new LeftOut(true, "Need not be used; the site file does not ask for it.", rule));
            } else {
                addObligation(
                        Kind.ELECTRODE, electrode.id(), Rule.ELECTRODE_SYSTEM, need(electrode), landings(electrode));
            }
        }

        private static Need need(Electrode electrode) {
            if (electrode instanceof GroundRing ring) {
                return Need.ring(ring.conductorSize());
            }
            return electrode instanceof Driven ? Need.DRIVEN : Need.TABLE;
        }

        private List<Landing> landings(Electrode electrode) {
            if (electrode instanceof GroundRing ring) {
                return findInterconnectingRing(ring)
                        .<List<Landing>>map(path -> List.of(new Landing.WithCarrier(ring.id(), path)))
                        .orElseGet(() -> atConnections(ring));
            }
            if (electrode instanceof WaterPipeElectrode pipe) {
                return MediaThatMayCarry.findPiping(pipe, site)
                        .<List<Landing>>map(path -> List.of(new Landing.WithCarrier(pipe.id(), path.id())))
                        .orElseGet(() -> nearEntrance(pipe));
            }
            return atConnections(electrode);
        }

        private Optional<String> findInterconnectingRing(GroundRing ring) {
            return site.listPaths(RingPath.class).stream()
                    .filter(path -> path.electrode().equals(ring.id()) && path.mayInterconnect())
                    .map(RingPath::id)
                    .findFirst();
        }

        private static List<Landing> nearEntrance(WaterPipeElectrode pipe) {
            return pipe.connections().stream()
                    .filter(connection -> !MediaThatMayCarry.FIVE_FEET.isLessThan(
                            connection.fromEntrance().orElseThrow()))
                    .<Landing>map(connection -> new Landing.AtConnection(pipe.id(), connection))
                    .toList();
        }

        /** One concrete-encased electrode is enough, unless the site wants particular ones used. */
        private void addOneOfEncased() {
            List<ConcreteEncased> wanted =
                    encased.stream().filter(ConcreteEncased::use).toList();
            for (ConcreteEncased bars : wanted) {
                addObligation(Kind.ELECTRODE, bars.id(), Rule.ELECTRODE_SYSTEM, Need.ENCASED, encasedLandings(bars));
            }
            if (wanted.isEmpty()) {
                addOneOf(
                        encased,
                        Need.ENCASED,
                        encased.stream()
                                .flatMap(bars -> encasedLandings(bars).stream())
                                .toList());
                return;
            }
            encased.stream()
                    .filter(bars -> !bars.use())
                    .forEach(bars -> leftOut.put(
                            bars.id(),
                            new LeftOut(true, "The site file names the ones to use.", Rule.CONCRETE_ENCASED)));
        }

        private List<Landing> encasedLandings(ConcreteEncased bars) {
            List<Landing> landings = new ArrayList<>(atConnections(bars));
            findTie(bars)
                    .filter(frame -> media.find(frame).isPresent())
                    .ifPresent(frame -> landings.add(0, new Landing.WithCarrier(bars.id(), frame)));
            return landings;
        }

        private void addOneOfInGround() {
            addOneOf(
                    inGround,
                    Need.TABLE,
                    inGround.stream()
                            .flatMap(metal -> inGroundLandings(metal).stream())
                            .toList());
        }

        private List<Landing> inGroundLandings(InGroundMetal metal) {
            return metal.frame()
                    .filter(frame -> media.find(frame).isPresent())
                    .<List<Landing>>map(frame -> List.of(new Landing.WithCarrier(metal.id(), frame)))
                    .orElseGet(() -> atConnections(metal));
        }

        private void addOneOf(List<? extends Electrode> several, Need need, List<Landing> landings) {
            if (!several.isEmpty()) {
                List<String> ids = several.stream().map(Electrode::id).toList();
                obligations.add(new Obligation(Kind.ELECTRODE, ids, Rule.ELECTRODE_SYSTEM, need, landings));
            }
        }

        void addFrames() {
            for (StructuralFrame frame : site.listPaths(StructuralFrame.class)) {
                boolean electrode = isElectrodeFrame(frame, site);
                Rule rule = electrode ? Rule.IN_GROUND_METAL : Rule.FRAME_BOND;
                if (!frame.continuous()) {
                    String reason = "Not one continuous frame, so not connected as a whole: draw its parts as frames.";
                    leftOut.put(frame.id(), new LeftOut(false, reason, Rule.FRAME_BOND));
                } else if (!frame.bondingRequired() && !electrode) {
                    leftOut.put(frame.id(), new LeftOut(false, "The site file asks for no bond.", Rule.FRAME_BOND));
                } else {
                    Landing landing = frame.carries()
                            ? new Landing.WithCarrier(frame.id(), frame.id())
                            : new Landing.AlongPath(frame.id(), MediaThatMayCarry.inGroundConnections(frame, site));
                    addObligation(Kind.FRAME, frame.id(), rule, Need.TABLE, List.of(landing));
                }
            }
        }

        void addPiping() {
            for (WaterPiping pipe : site.listPaths(WaterPiping.class)) {
                if (media.find(pipe.id()).isPresent()) {
                    continue;
                }
                if (!pipe.metal()) {
                    leftOut.put(pipe.id(), new LeftOut(false, "Not metal: no bond.", Rule.PIPING_BOND));
                } else if (!pipe.bondingRequired()) {
                    leftOut.put(pipe.id(), new LeftOut(false, "The site file asks for no bond.", Rule.PIPING_BOND));
                } else {
                    List<Landing> anywhere = List.of(new Landing.AlongPath(pipe.id(), List.of()));
                    addObligation(Kind.PIPING, pipe.id(), Rule.PIPING_BOND, Need.TABLE, anywhere);
                }
            }
        }

        private void addObligation(Kind kind, String id, Rule rule, Need need, List<Landing> landings) {
            obligations.add(new Obligation(kind, List.of(id), rule, need, landings));
        }

        private static List<Landing> atConnections(Electrode electrode) {
            List<Landing> landings = new ArrayList<>();
            for (Connection connection : electrode.connections()) {
                landings.add(new Landing.AtConnection(electrode.id(), connection));
            }
            return landings;
        }
    }
}
