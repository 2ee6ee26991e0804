package org.bondspan.network;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.GroundingElectrodeSystem.LeftOut;
import org.bondspan.code.Landing;
import org.bondspan.code.Obligation;
import org.bondspan.code.Obligation.Kind;
import org.bondspan.code.Qualification;
import org.bondspan.code.Rule;
import org.bondspan.code.StretchNeed;
import org.bondspan.code.Table25066;
import org.bondspan.layout.BondState;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.ServiceState;
import org.bondspan.layout.State;
import org.bondspan.site.Electrode;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.WireSize;

/**
 * What has become of everything on a site: of each service, electrode, frame and pipe, with the size that it calls for
 * and the way that joins it to the services.
 */
public final class States {
    private final Site site;
    private final GroundingElectrodeSystem system;
    private final StretchNeed need;
    private final Map<String, List<String>> ways;
    private final Set<String> unreached;

    /** Why what could be connected is not, where something else cannot be reached. */
    private static final String NOTHING_ROUTED =
            "Must be connected and can be reached; nothing is routed while something else cannot.";

    private static final String CUT_OFF = "Cannot be reached; the findings say why.";

    private States(Site site, GroundingElectrodeSystem system, Map<String, List<String>> ways, Set<String> unreached) {
        this.site = site;
        this.system = system;
        this.need = new StretchNeed(site.services(), system.obligations());
        this.ways = Map.copyOf(ways);
        this.unreached = Set.copyOf(unreached);
    }

    /** Before routing: what is to be connected counts as bonded. */
    public static States wanted(Site site, GroundingElectrodeSystem system) {
        return new States(site, system, Map.of(), Set.of());
    }

    /** When something cannot be reached. */
    static States unreached(Site site, GroundingElectrodeSystem system, Set<String> unreached) {
        return new States(site, system, Map.of(), unreached);
    }

    /** After routing: by the id of what is connected, the ids passed from the first service to it. */
    static States tied(Site site, GroundingElectrodeSystem system, Map<String, List<String>> ways) {
        return new States(site, system, ways, Set.of());
    }

    public List<ServiceState> services() {
        List<ServiceState> states = new ArrayList<>();
        for (Service service : site.services()) {
            long area = service.ungrounded().area();
            WireSize size = Table25066.copperFor(service.ungrounded().material(), area);
            states.add(new ServiceState(service.id(), service.supply(), area, size));
        }
        return states;
    }

    public List<ElectrodeState> electrodes() {
        return site.electrodes().stream().map(this::electrode).toList();
    }

    private ElectrodeState electrode(Electrode electrode) {
        String id = electrode.id();
        LeftOut left = system.leftOut().get(id);
        if (left != null) {
            State state = left.electrode() ? State.NOT_NEEDED : State.NOT_AN_ELECTRODE;
            List<String> basis = List.of(left.rule().section());
            return new ElectrodeState(id, electrode.type(), state, Optional.empty(), basis, left.reason(), List.of());
        }
        Obligation obligation = obligation(Kind.ELECTRODE, id);
        if (unreached.contains(id)) {
            return required(electrode, obligation, State.UNREACHED, CUT_OFF);
        }
        if (obligation.members().size() == 1) {
            String reason = unreached.isEmpty() ? "Qualifies, so it is connected." : NOTHING_ROUTED;
            return required(electrode, obligation, State.BONDED, reason);
        }
        if (!ways.isEmpty() && !ways.containsKey(id)) {
            Rule rule = Qualification.of(electrode).rule();
            String chosen = obligation.members().stream()
                    .filter(ways::containsKey)
                    .findFirst()
                    .orElse("another");
            String reason = "One of its kind is enough, and " + chosen + " takes the least copper.";
            return new ElectrodeState(
                    id,
                    electrode.type(),
                    State.NOT_NEEDED,
                    Optional.empty(),
                    List.of(rule.section()),
                    reason,
                    List.of());
        }
        return required(
                electrode,
                obligation,
                State.BONDED,
                "One of " + String.join(", ", obligation.members()) + " is enough.");
    }

    private ElectrodeState required(Electrode electrode, Obligation obligation, State state, String reason) {
        return new ElectrodeState(
                electrode.id(),
                electrode.type(),
                state,
                Optional.of(need.ofWhole(obligation.need())),
                basis(obligation),
                reason,
                ways.getOrDefault(electrode.id(), List.of()));
    }

    private List<String> basis(Obligation obligation) {
        return List.of(
                obligation.rule().section(),
                need.basisOfWhole(obligation.need()).section());
    }

    private Obligation obligation(Kind kind, String member) {
        return findObligation(kind, member)
                .orElseThrow(() -> new IllegalArgumentException("nothing is said of " + member));
    }

    private Optional<Obligation> findObligation(Kind kind, String member) {
        return system.obligations().stream()
                .filter(obligation ->
                        obligation.kind() == kind && obligation.members().contains(member))
                .findFirst();
    }

    /** Frames, and piping that is no electrode. */
    public List<BondState> bonds() {
        List<BondState> states = new ArrayList<>();
        site.listPaths(StructuralFrame.class).forEach(frame -> states.add(bond(Kind.FRAME, frame.id())));
        Set<String> electrodePipes = pipesOfElectrodes();
        site.listPaths(WaterPiping.class).stream()
                .map(WaterPiping::id)
                .filter(id -> !electrodePipes.contains(id))
                .forEach(id -> states.add(bond(Kind.PIPING, id)));
        system.obligations().stream()
                .filter(obligation -> obligation.kind() == Kind.PIPING)
                .map(obligation -> obligation.members().get(0))
                .filter(id -> site.electrodes().stream()
                        .anyMatch(electrode -> electrode.id().equals(id)))
                .forEach(id -> states.add(bond(Kind.PIPING, id)));
        return states;
    }

    private Set<String> pipesOfElectrodes() {
        Set<String> pipes = new HashSet<>();
        for (Obligation obligation : system.obligations()) {
            for (Landing landing : obligation.landings()) {
                if (landing instanceof Landing.WithCarrier with) {
                    pipes.add(with.path());
                }
            }
        }
        return pipes;
    }

    private static String required(Obligation obligation) {
        return obligation.kind() == Kind.FRAME && obligation.rule() == Rule.IN_GROUND_METAL
                ? "Required: under the 2014 text its in-ground member or its bolts to a footing make it an electrode."
                : "Required: " + obligation.rule().says() + ".";
    }

    private BondState bond(Kind kind, String id) {
        Optional<Obligation> obligation = findObligation(kind, id);
        List<String> way = ways.getOrDefault(id, List.of());
        if (obligation.isEmpty()) {
            LeftOut left = system.leftOut().getOrDefault(id, new LeftOut(false, "", Rule.FRAME_BOND));
            State state = way.isEmpty() ? State.NOT_NEEDED : State.BONDED;
            String reason = way.isEmpty() ? left.reason() : left.reason() + " The tie runs over it all the same.";
            return new BondState(
                    id, state, Optional.empty(), List.of(left.rule().section()), reason, way);
        }
        State state = unreached.contains(id) ? State.UNREACHED : State.BONDED;
        String reason =
                state == State.UNREACHED ? CUT_OFF : unreached.isEmpty() ? required(obligation.get()) : NOTHING_ROUTED;
        Optional<WireSize> size = Optional.of(need.ofWhole(obligation.get().need()));
        return new BondState(id, state, size, basis(obligation.get()), reason, way);
    }
}
