package org.bondspan.network;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bondspan.code.Landing;
import org.bondspan.code.Obligation;
import org.bondspan.code.Rule;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.solve.Classes;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/** Why there is no interconnection: what cannot be reached from the first service, and where copper may run nearest. */
final class Reach {
    private final RouteProblem problem;
    private final Network network;
    private final Site site;
    /** By size, as far as it has been asked for: the nodes that copper of the size reaches from the first service. */
    private final Map<WireSize, BitSet> reachable = new HashMap<>();

    private final List<Integer> unreachable = new ArrayList<>();

    Reach(RouteProblem problem) {
        this.problem = problem;
        this.network = problem.network();
        this.site = network.site();
        for (int t = 0; t < problem.terminalCount(); t++) {
            if (!isReached(t, reachable(problem.need().across(alone(t))))) {
                unreachable.add(t);
            }
        }
    }

    private static BitSet alone(int terminal) {
        BitSet alone = new BitSet();
        alone.set(terminal);
        return alone;
    }

    private BitSet reachable(WireSize size) {
        return reachable.computeIfAbsent(size, this::findReachable);
    }

    private BitSet reachableAtAnySize() {
        return reachable(WireSize.AWG_14);
    }

    private BitSet findReachable(WireSize size) {
        NetworkArrays arrays = network.arrays();
        Classes parts = new Classes(network.nodeCount());
        for (int edge = 0; edge < arrays.edgeCount(); edge++) {
            if (arrays.largest(edge).map(most -> most.isAtLeast(size)).orElse(true)) {
                parts.join(arrays.from(edge), arrays.to(edge));
            }
        }
        BitSet from = new BitSet();
        problem.attachments(0).forEach(way -> from.set(parts.find(way.node())));
        BitSet reached = new BitSet();
        IntStream.range(0, network.nodeCount())
                .filter(node -> from.get(parts.find(node)))
                .forEach(reached::set);
        return reached;
    }

    private boolean isReached(int terminal, BitSet nodes) {
        if (terminal == 0) {
            return nodes.cardinality() > problem.attachments(0).size() || problem.terminalCount() == 1;
        }
        return problem.attachments(terminal).stream().anyMatch(way -> nodes.get(way.node()));
    }

    /** Ids of what cannot be reached, members of a choice one by one. */
    Set<String> unreached() {
        Set<String> ids = new LinkedHashSet<>();
        unreachable.stream()
                .filter(t -> !problem.isService(t))
                .forEach(t -> ids.addAll(problem.obligation(t).members()));
        return ids;
    }

    /** A violation for each thing that cannot be reached. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (int terminal : unreachable) {
            if (problem.isService(terminal)) {
                findings.add(
                        violation(Rule.COMMON_SYSTEM, problem.service(terminal).id(), terminal));
            } else {
                Obligation obligation = problem.obligation(terminal);
                obligation.members().forEach(id -> findings.add(violation(obligation.rule(), id, terminal)));
            }
        }
        if (findings.isEmpty()) {
            findings.add(new Finding(
                    Rule.SEVERAL_DISCONNECTS.section(),
                    Severity.VIOLATION,
                    site.services().get(0).id(),
                    "Each thing can be reached by itself, but what carries is too small for the sum of the services."));
        }
        return findings;
    }

    private Finding violation(Rule rule, String id, int terminal) {
        return new Finding(section(rule), Severity.VIOLATION, id, id + " cannot be reached: " + reason(id, terminal));
    }

    /** Frames that 250.52(A)(2) makes electrodes are missed as electrodes. */
    private static String section(Rule rule) {
        return rule == Rule.IN_GROUND_METAL ? Rule.ELECTRODE_SYSTEM.section() : rule.section();
    }

    private String reason(String id, int terminal) {
        if (isReached(terminal, reachableAtAnySize())) {
            return "what carries on the only way to it is smaller than the "
                    + problem.need().across(alone(terminal)).label() + " that it needs.";
        }
        Optional<Position> place = findPlace(id, terminal);
        if (place.isEmpty()) {
            return "no place is drawn at which a conductor may land on it.";
        }
        String from = terminal == 0 ? "no permitted place for copper meets " : "no permitted way for copper leads to ";
        String at = from + print(place.get()) + outside(place.get()) + ".";
        return terminal > 0 && !isReached(0, reachableAtAnySize())
                ? at + " " + problem.service(0).id() + ", from which one would lead there, is cut off itself."
                : at + nearest(place.get(), terminal);
    }

    private String outside(Position place) {
        List<PlanPoint> outline = site.level(place.level()).outline();
        PolygonBand rows = new PolygonBand(
                outline.stream().mapToLong(PlanPoint::x).toArray(),
                outline.stream().mapToLong(PlanPoint::y).toArray());
        long x = place.at().x();
        boolean inside = rows.closed(place.at().y()).stream().anyMatch(row -> row.from() <= x && x <= row.to());
        return inside ? "" : ", outside the outline of that level";
    }

    private Optional<Position> findPlace(String id, int terminal) {
        Optional<Position> connection = problem.attachments(terminal).stream()
                .map(Attachment::landing)
                .filter(landing -> landing.of().equals(id))
                .flatMap(landing -> landing instanceof Landing.AtConnection at
                        ? Stream.of(at.connection().position())
                        : Stream.empty())
                .findFirst();
        return connection.or(() -> site.paths().stream()
                .filter(path -> path.id().equals(id) || leadsTo(path, terminal))
                .flatMap(path -> firstPlace(path).stream())
                .findFirst());
    }

    private boolean leadsTo(SitePath path, int terminal) {
        return problem.attachments(terminal).stream()
                .anyMatch(way -> way.landing() instanceof Landing.WithCarrier with
                        && with.path().equals(path.id()));
    }

    private static Optional<Position> firstPlace(SitePath path) {
        if (path instanceof SitePath.StructuralFrame frame && !frame.columns().isEmpty()) {
            return Optional.of(
                    new Position(frame.levels().get(0), frame.columns().get(0), frame.bottom()));
        }
        if (path instanceof SitePath.WaterPiping pipe) {
            LineVertex entrance = pipe.line().vertices().get(0);
            return Optional.of(new Position(pipe.line().level(), entrance.at(), entrance.height()));
        }
        return Optional.empty();
    }

    private String nearest(Position from, int terminal) {
        long elevation = site.level(from.level()).floor().plus(from.height()).nanometres();
        BitSet own = new BitSet();
        problem.attachments(terminal).forEach(way -> own.set(way.node()));
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int node = 0; node < network.nodeCount(); node++) {
            boolean mayBe = terminal == 0
                    ? node < network.placeCount()
                    : reachableAtAnySize().get(node);
            if (mayBe && !network.isMetal(node) && !own.get(node) && squared(from, elevation, node) < least) {
                nearest = node;
                least = squared(from, elevation, node);
            }
        }
        return nearest < 0
                ? " Nothing on the site lets copper run from the first service."
                : " The nearest place where copper may run is " + print(network.position(nearest)) + ", "
                        + Numbers.print(distance(from, elevation, nearest), site.lengthUnit()) + " away.";
    }

    /** Precise enough to choose by: places that differ less than it tells are as near as each other to any reader. */
    private double squared(Position from, long elevation, int node) {
        NetworkArrays arrays = network.arrays();
        double x = arrays.at(node).x() - from.at().x();
        double y = arrays.at(node).y() - from.at().y();
        double z = arrays.elevation(node) - elevation;
        return x * x + y * y + z * z;
    }

    private Length distance(Position from, long elevation, int node) {
        NetworkArrays arrays = network.arrays();
        return Length.ofRun(
                arrays.at(node).x() - from.at().x(),
                arrays.at(node).y() - from.at().y(),
                arrays.elevation(node) - elevation);
    }

    private String print(Position position) {
        String x = Numbers.print(Length.ofNanometres(position.at().x()).in(site.lengthUnit()));
        String y = Numbers.print(Length.ofNanometres(position.at().y()).in(site.lengthUnit()));
        return "(" + x + ", " + y + ") on level " + position.level() + " at height "
                + Numbers.print(position.height(), site.lengthUnit());
    }
}
