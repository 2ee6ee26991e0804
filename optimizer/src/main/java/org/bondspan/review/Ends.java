package org.bondspan.review;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.code.EndPlaces;
import org.bondspan.code.LineLengths;
import org.bondspan.code.MeasuredLines;
import org.bondspan.code.SamePlace;
import org.bondspan.code.SitePlaces;
import org.bondspan.layout.End;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/** Where the ends of proposed conductors are and how long these are, as far as the proposal and the site tell. */
final class Ends {
    private final SiteMetal metal;
    private final SitePlaces places;
    private final EndPlaces endPlaces;
    private final MeasuredLines measuredLines;
    private final Map<String, Length> furthestTaps = new HashMap<>();

    /** Tapped conductors whose drawn run is measured otherwise than drawn: distances along it tell no place. */
    private final Set<String> outOfScale = new HashSet<>();

    Ends(SiteMetal metal, Proposal proposal) {
        this.metal = metal;
        this.places = metal.places();
        this.endPlaces = new EndPlaces(metal.site(), places, proposal);
        this.measuredLines = metal.measuredLines();
        proposal.conductors().stream()
                .flatMap(conductor -> Stream.of(conductor.from(), conductor.to()))
                .forEach(this::noteTap);
        proposal.conductors().stream()
                .filter(conductor -> furthestTaps.containsKey(conductor.id()))
                .filter(conductor -> !measured(conductor).equals(metal.site().length(conductor.line())))
                .forEach(conductor -> outOfScale.add(conductor.id()));
    }

    private void noteTap(End end) {
        if (end instanceof End.OnConductor on) {
            furthestTaps.merge(on.conductor(), on.at(), (a, b) -> a.isLessThan(b) ? b : a);
        }
    }

    /** Where an end of the conductor is: as drawn, else as named. */
    Optional<Position> find(ProposedConductor conductor, End end) {
        List<Position> line = conductor.line();
        if (line.isEmpty()) {
            return locate(end);
        }
        return Optional.of(end == conductor.from() ? line.get(0) : line.get(line.size() - 1));
    }

    /** The place of an end; empty where it has several, is nowhere stated, or only supposed. */
    Optional<Position> locate(End end) {
        return endPlaces.find(end).filter(place -> isInScale(end));
    }

    /** The places that an end of the conductor can mean: as drawn, else as named; none where it is only supposed. */
    List<Position> list(ProposedConductor conductor, End end) {
        boolean isSure = !conductor.line().isEmpty() || end instanceof End.OnConductor;
        return isSure ? find(conductor, end).map(List::of).orElse(List.of()) : endPlaces.list(end);
    }

    private boolean isInScale(End end) {
        return !(end instanceof End.OnConductor on && outOfScale.contains(on.conductor()));
    }

    /** Whether an end on some thing can be at a place: at one of its connections, or somewhere on its metal. */
    boolean liesAt(End end, Position at) {
        if (end instanceof End.AtService service) {
            return anyAt(places.connections(service.service(), service.connection()), at);
        }
        if (end instanceof End.AtElectrode electrode) {
            return places.findEntrance(electrode.electrode())
                    .map(entrance -> SamePlace.isSame(entrance, at))
                    .orElseGet(() -> anyAt(places.connections(electrode.electrode(), electrode.connection()), at));
        }
        return end instanceof End.OnPath on
                && on.distance()
                        .flatMap(distance -> places.findPlace(on.path(), distance))
                        .map(landed -> SamePlace.isSame(landed, at))
                        .orElseGet(() -> metal.shape(on.path()).isAt(at) || isAtMemberOf(on.path(), at));
    }

    /** In-ground members are landing places of their frame, whether or not it carries. */
    private boolean isAtMemberOf(String frame, Position at) {
        return metal.site().listElectrodes(InGroundMetal.class).stream()
                .filter(member -> member.frame().equals(Optional.of(frame)))
                .anyMatch(member -> anyAt(member.connections(), at));
    }

    private static boolean anyAt(List<Connection> connections, Position at) {
        return connections.stream().anyMatch(connection -> SamePlace.isSame(connection.position(), at));
    }

    /** How far along a pipe or line the conductor lands: as stated, else where its drawn line ends. */
    Optional<Length> findDistance(ProposedConductor conductor, End.OnPath end) {
        return end.distance().or(() -> find(conductor, end).flatMap(place -> places.findDistance(end.path(), place)));
    }

    /** Straight distance between the two ends, where both are known. */
    Optional<Length> straightDistance(ProposedConductor conductor) {
        return locate(conductor.from())
                .flatMap(a -> locate(conductor.to()).map(b -> metal.site().distance(a, b)));
    }

    /** Likewise, supposing that what it taps runs straight too where nothing else is told of it. */
    private Optional<Length> distanceIfStraight(ProposedConductor conductor) {
        return locateIfStraight(conductor.from())
                .flatMap(a ->
                        locateIfStraight(conductor.to()).map(b -> metal.site().distance(a, b)));
    }

    private Optional<Position> locateIfStraight(End end) {
        return endPlaces.findIfStraight(end).filter(place -> isInScale(end));
    }

    /** Length of the stated line; along measured lines as measured. */
    Length measured(ProposedConductor conductor) {
        return measuredLines.of(conductor.line());
    }

    /** The tap on a conductor that lies furthest from its start; 0 where there is none. */
    Length furthestTap(ProposedConductor conductor) {
        return furthestTaps.getOrDefault(conductor.id(), Length.ZERO);
    }

    /** How far along its drawn line the conductor passes a place; empty where it does not, or has no line. */
    private Optional<Length> findAlong(ProposedConductor conductor, Position place) {
        Length before = Length.ZERO;
        for (int i = 1; i < conductor.line().size(); i++) {
            Position a = conductor.line().get(i - 1);
            Position b = conductor.line().get(i);
            Optional<Length> along = LineLengths.findDistance(a, b, place);
            if (along.isPresent()) {
                return along.map(before::plus);
            }
            before = before.plus(metal.site().distance(a, b));
        }
        return Optional.empty();
    }

    /** How far along its drawn line the conductor passes a place short of both its ends. */
    Optional<Length> findBetween(ProposedConductor conductor, Position place) {
        List<Position> line = conductor.line();
        boolean atEnd = line.isEmpty()
                || SamePlace.isSame(line.get(0), place)
                || SamePlace.isSame(line.get(line.size() - 1), place);
        return atEnd ? Optional.empty() : findAlong(conductor, place);
    }

    /** The length to reckon with: stated, else measured with make-up, else the straight distance with make-up. */
    Optional<Length> length(ProposedConductor conductor) {
        return conductor.length().or(() -> unstatedLength(conductor));
    }

    /** Whatever it states: as measured with make-up, else the straight distance with make-up. */
    Optional<Length> unstatedLength(ProposedConductor conductor) {
        Optional<Length> run =
                conductor.line().size() > 1 ? Optional.of(measured(conductor)) : distanceIfStraight(conductor);
        return run.map(length -> length.plus(makeUp(conductor)));
    }

    /** What tells that length. */
    LengthFrom lengthFrom(ProposedConductor conductor) {
        if (conductor.length().isPresent()) {
            return LengthFrom.STATED;
        }
        if (conductor.line().size() > 1) {
            return LengthFrom.LINE;
        }
        return distanceIfStraight(conductor).isPresent() ? LengthFrom.ENDS : LengthFrom.NOTHING;
    }

    private Length makeUp(ProposedConductor conductor) {
        Length sum = Length.ZERO;
        for (End end : List.of(conductor.from(), conductor.to())) {
            boolean lands = end instanceof End.AtService || end instanceof End.AtElectrode || end instanceof End.OnPath;
            sum = lands ? sum.plus(metal.site().makeUpPerEnd()) : sum;
        }
        return sum;
    }
}
