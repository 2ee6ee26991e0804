package org.bondspan.code;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Connection;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;

/** Where the ends of proposed conductors lie, as far as the proposal and the site tell. */
public final class EndPlaces {
    /** Whoever asks wants the place, or a place: more than two say no more than two. */
    private static final int SEVERAL = 2;

    private final Site site;
    private final SitePlaces places;
    private final Map<String, ProposedConductor> conductors = new LinkedHashMap<>();
    private final Map<String, Position> joints = new HashMap<>();
    private final Map<String, List<List<Position>>> runs = new HashMap<>();

    /** Conductors that may run anywhere: neither drawn nor to be taken as straight. */
    private final Set<String> astray = new HashSet<>();

    public EndPlaces(Site site, SitePlaces places, Proposal proposal) {
        this.site = site;
        this.places = places;
        proposal.conductors().forEach(conductor -> conductors.putIfAbsent(conductor.id(), conductor));
        proposal.joints()
                .forEach(joint ->
                        joint.id().ifPresent(id -> joint.place().ifPresent(place -> joints.putIfAbsent(id, place))));
        proposal.conductors().forEach(this::noteDrawnJoints);
        Set<String> opened = new HashSet<>();
        conductors.values().forEach(conductor -> supposeRuns(conductor, opened));
    }

    /** A joint without a place lies where the first line that is drawn to it ends. */
    private void noteDrawnJoints(ProposedConductor conductor) {
        List<Position> line = conductor.line();
        if (!line.isEmpty() && conductor.from() instanceof End.AtJoint at) {
            joints.putIfAbsent(at.joint(), line.get(0));
        }
        if (!line.isEmpty() && conductor.to() instanceof End.AtJoint at) {
            joints.putIfAbsent(at.joint(), line.get(line.size() - 1));
        }
    }

    /** What it taps first, on a stack of our own: nothing limits how long a chain of taps is. */
    private void supposeRuns(ProposedConductor conductor, Set<String> opened) {
        Deque<ProposedConductor> open = new ArrayDeque<>(List.of(conductor));
        while (!open.isEmpty()) {
            ProposedConductor next = open.peek();
            if (opened.add(next.id())) {
                Stream.of(next.from(), next.to())
                        .flatMap(end -> findTapped(end).stream())
                        .filter(tapped -> !opened.contains(tapped.id()))
                        .forEach(open::push);
            } else {
                open.pop();
                suppose(next);
            }
        }
    }

    private void suppose(ProposedConductor conductor) {
        runs.computeIfAbsent(conductor.id(), id -> listRuns(conductor));
        boolean tapsAstray = Stream.of(conductor.from(), conductor.to())
                .anyMatch(end -> end instanceof End.OnConductor on && astray.contains(on.conductor()));
        if (conductor.line().isEmpty() && (conductor.length().isPresent() || tapsAstray)) {
            astray.add(conductor.id());
        }
    }

    private Optional<ProposedConductor> findTapped(End end) {
        return end instanceof End.OnConductor on
                ? Optional.ofNullable(conductors.get(on.conductor()))
                : Optional.empty();
    }

    private List<List<Position>> listRuns(ProposedConductor conductor) {
        if (!conductor.line().isEmpty()) {
            return List.of(conductor.line());
        }
        return list(conductor.from()).stream()
                .flatMap(from -> list(conductor.to()).stream().map(to -> List.of(from, to)))
                .limit(SEVERAL)
                .toList();
    }

    /**
     * The places that an end can mean, the likeliest first; none where nothing tells. A conductor without a line is
     * taken to run straight from end to end, and what taps it to lie there.
     */
    public List<Position> list(End end) {
        if (end instanceof End.AtService at) {
            return listConnections(at.service(), at.connection());
        }
        if (end instanceof End.AtElectrode at) {
            return places.findEntrance(at.electrode())
                    .map(List::of)
                    .orElseGet(() -> listConnections(at.electrode(), at.connection()));
        }
        if (end instanceof End.OnPath on) {
            return on.distance()
                    .flatMap(distance -> places.findPlace(on.path(), distance))
                    .map(List::of)
                    .orElse(List.of());
        }
        if (end instanceof End.OnConductor on) {
            return runs.getOrDefault(on.conductor(), List.of()).stream()
                    .map(run -> along(run, on.at()))
                    .toList();
        }
        if (end instanceof End.AtJoint at) {
            return Optional.ofNullable(joints.get(at.joint())).map(List::of).orElse(List.of());
        }
        return List.of(((End.AtPlace) end).place());
    }

    private List<Position> listConnections(String of, Optional<String> named) {
        return places.connections(of, named).stream().map(Connection::position).toList();
    }

    /** The place of an end, where there is one and no other; none of a tap on what is not drawn. */
    public Optional<Position> find(End end) {
        boolean isDrawn =
                findTapped(end).map(tapped -> !tapped.line().isEmpty()).orElse(true);
        return isDrawn ? findOnly(end) : Optional.empty();
    }

    /**
     * Likewise, and of a tap on what runs straight for all that is told. What states a length may run anywhere; so may
     * what taps it, and what is tapped further on than its ends lie apart.
     */
    public Optional<Position> findIfStraight(End end) {
        boolean mayBeStraight = !(end instanceof End.OnConductor on)
                || (!astray.contains(on.conductor())
                        && runs.getOrDefault(on.conductor(), List.of()).stream()
                                .allMatch(run -> !site.length(run).isLessThan(on.at())));
        return mayBeStraight ? findOnly(end) : Optional.empty();
    }

    private Optional<Position> findOnly(End end) {
        List<Position> all = list(end);
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** So far along a run, heights included, rounded to the base unit; its last place where it is shorter. */
    private Position along(List<Position> run, Length distance) {
        Length rest = distance;
        for (int i = 1; i < run.size(); i++) {
            Length piece = site.distance(run.get(i - 1), run.get(i));
            if (!piece.isZero() && !piece.isLessThan(rest)) {
                return between(run.get(i - 1), run.get(i), rest.nanometres(), piece.nanometres());
            }
            rest = rest.minus(piece);
        }
        return run.get(run.size() - 1);
    }

    /** Above the floor of the first. */
    private Position between(Position a, Position b, long part, long whole) {
        Length rise = site.elevation(b).minus(site.elevation(a));
        return new Position(
                a.level(),
                new PlanPoint(
                        a.at().x() + LineLengths.share(b.at().x() - a.at().x(), part, whole),
                        a.at().y() + LineLengths.share(b.at().y() - a.at().y(), part, whole)),
                a.height().plus(Length.ofNanometres(LineLengths.share(rise.nanometres(), part, whole))));
    }
}
