package org.bondspan.network;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.code.Obligation;
import org.bondspan.code.Rule;
import org.bondspan.code.StretchNeed;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.End;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Piece;
import org.bondspan.layout.Protection;
import org.bondspan.layout.Role;
import org.bondspan.price.ConnectionKind;
import org.bondspan.site.Busbar;
import org.bondspan.site.Position;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * Names the conductors and joints of a tie and tells where each begins and ends, what it serves and why it has its
 * size.
 */
final class Conductors {
    private final RouteProblem problem;
    private final Tie tie;
    private final Meetings meetings;
    private final Places places;
    private final Optional<InstalledPrices> prices;
    private final PassedWalls walls;
    private final Map<Stretch, String> ids = new HashMap<>();
    private final Map<Meeting, String> joints = new HashMap<>();
    private final Set<TieEdge> toFirstElectrode = new HashSet<>();

    /** @param prices by which the way of tapping is chosen */
    Conductors(
            RouteProblem problem,
            Tie tie,
            Meetings meetings,
            Places places,
            Optional<InstalledPrices> prices,
            PassedWalls walls) {
        this.walls = walls;
        this.prices = prices;
        this.problem = problem;
        this.tie = tie;
        this.meetings = meetings;
        this.places = places;
        meetings.conductors().forEach(stretch -> ids.put(stretch, "C" + (ids.size() + 1)));
        meetings.all().stream()
                .filter(Meeting::isTap)
                .forEach(meeting -> joints.put(meeting, "J" + (joints.size() + 1)));
        for (int t = 0; t < problem.terminalCount(); t++) {
            if (problem.isService(t)) {
                toFirstElectrode.addAll(tie.groundingElectrodeConductor(t));
            }
        }
    }

    /** The id of a written stretch. */
    Optional<String> findId(Stretch stretch) {
        return Optional.ofNullable(ids.get(stretch));
    }

    List<Conductor> conductors() {
        return meetings.conductors().stream().map(this::conductor).toList();
    }

    private Conductor conductor(Stretch stretch) {
        BitSet beyond = tie.beyond(stretch.first());
        WireSize size = stretch.first().size();
        StretchNeed.Verdict verdict = problem.need().explain(beyond);
        Role role = role(stretch, beyond);
        boolean towardService = servesServicesOnly(beyond);
        End near = end(stretch, stretch.from());
        End far = end(stretch, stretch.to());
        List<Position> line = places.line(stretch);
        List<Piece> pieces = stretch.pieces();
        if (towardService) {
            line = reversed(line);
            pieces = reversed(pieces);
        }
        return new Conductor(
                id(stretch),
                size,
                role,
                Protection.of(size),
                towardService ? far : near,
                towardService ? near : far,
                line,
                stretch.copper(),
                serves(beyond),
                basis(role, beyond, verdict, size),
                size == verdict.size()
                        ? verdict.why()
                        : verdict.why() + "; " + size.label() + " is cheaper installed than "
                                + verdict.size().label(),
                pieces,
                towardService ? reversed(walls.of(stretch)) : walls.of(stretch));
    }

    private static <T> List<T> reversed(List<T> line) {
        List<T> reversed = new ArrayList<>(line);
        Collections.reverse(reversed);
        return reversed;
    }

    private String id(Stretch stretch) {
        return findId(stretch).orElseThrow();
    }

    private boolean servesServicesOnly(BitSet beyond) {
        return beyond.length() <= problem.services().size();
    }

    private List<String> serves(BitSet beyond) {
        List<String> served = new ArrayList<>();
        for (int t = 0; t < problem.terminalCount(); t++) {
            if (beyond.get(t)) {
                served.add(tie.chosenAttachment(t).landing().of());
            }
        }
        return served;
    }

    private Role role(Stretch stretch, BitSet beyond) {
        if (stretch.edges().stream().anyMatch(toFirstElectrode::contains)) {
            return Role.GROUNDING_ELECTRODE_CONDUCTOR;
        }
        boolean bondsOnly = listServed(beyond).stream().noneMatch(Conductors::isElectrode);
        return bondsOnly && !listServed(beyond).isEmpty() ? Role.BONDING_CONDUCTOR : Role.BONDING_JUMPER;
    }

    private static boolean isElectrode(Obligation obligation) {
        return obligation.kind() == Obligation.Kind.ELECTRODE || obligation.rule() == Rule.IN_GROUND_METAL;
    }

    private List<Obligation> listServed(BitSet beyond) {
        List<Obligation> served = new ArrayList<>();
        for (int t = problem.services().size(); t < problem.terminalCount(); t++) {
            if (beyond.get(t)) {
                served.add(problem.obligation(t));
            }
        }
        return served;
    }

    private List<String> basis(Role role, BitSet beyond, StretchNeed.Verdict verdict, WireSize size) {
        Set<Rule> rules = new LinkedHashSet<>();
        switch (role) {
            case GROUNDING_ELECTRODE_CONDUCTOR -> rules.add(Rule.SERVICE_CONNECTION);
            case BONDING_JUMPER -> rules.add(Rule.ELECTRODE_BONDING_JUMPER);
            case BONDING_CONDUCTOR -> listServed(beyond).forEach(served -> rules.add(served.rule()));
        }
        rules.add(verdict.rule());
        if (verdict.severalServices()) {
            rules.add(Rule.SEVERAL_DISCONNECTS);
        }
        if (size.needsRaceway()) {
            rules.add(Rule.PROTECTION);
        }
        return rules.stream().map(Rule::section).toList();
    }

    /** How the conductor names its end at that vertex. */
    private End end(Stretch stretch, int vertex) {
        if (Tie.isTerminal(vertex)) {
            return places.terminalEnd(Tie.terminal(vertex));
        }
        if (tie.isMetal(vertex)) {
            return places.onMetal(vertex, lastPlace(stretch));
        }
        Meeting meeting = meetings.at(vertex);
        if (!meeting.metals().isEmpty()) {
            return places.onMetal(meeting.metals().get(0), meeting.place());
        }
        if (!meeting.installed().isEmpty()) {
            return places.onInstalled(meeting.installed().get(0).first().carriedBy(), meeting.place());
        }
        return endAtCopper(stretch, meeting);
    }

    private End endAtCopper(Stretch stretch, Meeting meeting) {
        if (meeting.hanging().isEmpty()) {
            return new End.AtJoint(joint(meeting));
        }
        int place = meeting.conductors().indexOf(stretch);
        if (place < meeting.hanging().size()) {
            return places.landedOn(meeting.hanging().get(place), meeting.place());
        }
        Stretch tapped = meeting.conductors().get(0);
        boolean atStart = isAtStart(tapped, meeting);
        return new End.OnConductor(
                id(tapped), atStart ? Length.ZERO : tapped.copper().total());
    }

    /** Whether the meeting is at the end that the written conductor calls {@code from}. */
    private boolean isAtStart(Stretch stretch, Meeting meeting) {
        boolean near = !Tie.isTerminal(stretch.from())
                && !tie.isMetal(stretch.from())
                && meetings.at(stretch.from()).equals(meeting);
        return near != servesServicesOnly(tie.beyond(stretch.first()));
    }

    private String joint(Meeting meeting) {
        String id = joints.get(meeting);
        if (id == null) {
            throw new IllegalStateException("copper ends at a place where nothing joins: " + meeting.place());
        }
        return id;
    }

    /** The place of the network at which the stretch lands on metal. */
    private int lastPlace(Stretch stretch) {
        TieEdge landing =
                stretch.edges().get(tie.isMetal(stretch.to()) ? stretch.edges().size() - 1 : 0);
        return tie.isMetal(landing.a()) ? landing.b() : landing.a();
    }

    List<Joint> joints() {
        return meetings.all().stream()
                .filter(joints::containsKey)
                .map(meeting -> {
                    List<String> meeters = new ArrayList<>();
                    meeting.conductors().forEach(stretch -> meeters.add(id(stretch)));
                    meeting.installed()
                            .forEach(stretch -> meeters.add(stretch.first().carriedBy()));
                    return joint(meeting, meeters.stream().distinct().toList());
                })
                .toList();
    }

    private Joint joint(Meeting meeting, List<String> meeters) {
        Position place = problem.network().position(meeting.place());
        boolean onBusbar = problem.network().site().busbars().stream()
                .map(Busbar::position)
                .anyMatch(position -> places.isAt(position, meeting.place()));
        boolean byBusbar = onBusbar
                && prices.map(each -> each.prefersBusbar(meeters.size())).orElse(true);
        String tap = prices.map(InstalledPrices::tapKind)
                .filter(kind -> kind == ConnectionKind.IRREVERSIBLE_TAP)
                .map(kind -> "irreversible")
                .orElse("exothermic");
        return byBusbar
                ? new Joint(joint(meeting), place, meeters, "busbar", List.of(Rule.BUSBAR.section()))
                : new Joint(joint(meeting), place, meeters, tap, List.of(Rule.UNBROKEN.section()));
    }
}
