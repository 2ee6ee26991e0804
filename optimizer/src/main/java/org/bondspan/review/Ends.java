package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.code.LineLengths;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Connection;
import org.bondspan.site.LineVertex;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;

/** Where the ends of proposed conductors are, as far as the proposal and the site tell. */
final class Ends {
    private final Site site;
    private final Proposal proposal;

    Ends(Site site, Proposal proposal) {
        this.site = site;
        this.proposal = proposal;
    }

    Optional<Position> start(ProposedConductor conductor) {
        return conductor.line().stream().findFirst().or(() -> locate(conductor.from()));
    }

    Optional<Position> finish(ProposedConductor conductor) {
        List<Position> line = conductor.line();
        return line.isEmpty() ? locate(conductor.to()) : Optional.of(line.get(line.size() - 1));
    }

    /** The place of an end; empty where it has several or is nowhere stated. */
    Optional<Position> locate(End end) {
        if (end instanceof End.AtService at) {
            return only(
                    site.services().stream()
                            .filter(service -> service.id().equals(at.service()))
                            .flatMap(service -> service.connections().stream()),
                    at.connection());
        }
        if (end instanceof End.AtElectrode at) {
            return only(
                    site.electrodes().stream()
                            .filter(electrode -> electrode.id().equals(at.electrode()))
                            .flatMap(electrode -> electrode.connections().stream()),
                    at.connection());
        }
        if (end instanceof End.AtPlace at) {
            return Optional.of(at.place());
        }
        if (end instanceof End.AtJoint at) {
            return proposal.joints().stream()
                    .filter(joint -> joint.id().equals(Optional.of(at.joint())))
                    .flatMap(joint -> joint.place().stream())
                    .findFirst();
        }
        return end instanceof End.OnPath on && on.distance().isPresent()
                ? onPipe(on.path(), on.distance().get())
                : Optional.empty();
    }

    private static Optional<Position> only(Stream<Connection> connections, Optional<String> wanted) {
        List<Position> places = connections
                .filter(connection -> wanted.isEmpty() || connection.id().equals(wanted))
                .map(Connection::position)
                .toList();
        return places.size() == 1 ? Optional.of(places.get(0)) : Optional.empty();
    }

    private Optional<Position> onPipe(String path, Length distance) {
        return site.listPaths(WaterPiping.class).stream()
                .filter(pipe -> pipe.id().equals(path))
                .map(pipe -> {
                    LineVertex place = LineLengths.placeAt(pipe.line(), distance);
                    return new Position(pipe.line().level(), place.at(), place.height());
                })
                .findFirst();
    }

    /** Straight distance between the two ends, where both are known; no lawful run is shorter. */
    Optional<Length> straightDistance(ProposedConductor conductor) {
        Optional<Position> a = locate(conductor.from());
        Optional<Position> b = locate(conductor.to());
        return a.isPresent() && b.isPresent() ? Optional.of(distance(a.get(), b.get())) : Optional.empty();
    }

    /** Length of the stated line. */
    Length measured(ProposedConductor conductor) {
        Length sum = Length.ZERO;
        for (int i = 1; i < conductor.line().size(); i++) {
            sum = sum.plus(
                    distance(conductor.line().get(i - 1), conductor.line().get(i)));
        }
        return sum;
    }

    private Length distance(Position a, Position b) {
        return Length.ofRun(
                b.at().x() - a.at().x(),
                b.at().y() - a.at().y(),
                elevation(b).minus(elevation(a)).nanometres());
    }

    private Length elevation(Position position) {
        return site.level(position.level()).floor().plus(position.height());
    }

    /** The length to reckon with: stated, else measured with make-up, else the straight distance with make-up. */
    Optional<Length> length(ProposedConductor conductor) {
        if (conductor.length().isPresent()) {
            return conductor.length();
        }
        Optional<Length> run =
                conductor.line().size() > 1 ? Optional.of(measured(conductor)) : straightDistance(conductor);
        return run.map(length -> length.plus(makeUp(conductor)));
    }

    private Length makeUp(ProposedConductor conductor) {
        Length sum = Length.ZERO;
        for (End end : List.of(conductor.from(), conductor.to())) {
            boolean lands = end instanceof End.AtService || end instanceof End.AtElectrode || end instanceof End.OnPath;
            sum = lands ? sum.plus(site.makeUpPerEnd()) : sum;
        }
        return sum;
    }
}
