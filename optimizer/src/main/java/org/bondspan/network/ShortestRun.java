package org.bondspan.network;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.layout.MeasuredWay;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Riser;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.WeightedPseudograph;

/** The shortest run of new copper between two places of a plan, for whoever measures on it. */
public final class ShortestRun {
    private static final Set<EdgeKind> COPPER =
            EnumSet.of(EdgeKind.FLOOR, EdgeKind.LINE, EdgeKind.VERTICAL, EdgeKind.CROSSING);

    private final Network network;
    private final WeightedPseudograph<Integer, DefaultWeightedEdge> runs =
            new WeightedPseudograph<>(DefaultWeightedEdge.class);

    private ShortestRun(Network network) {
        this.network = network;
        NetworkArrays arrays = network.arrays();
        for (int edge = 0; edge < arrays.edgeCount(); edge++) {
            if (COPPER.contains(arrays.kind(edge))) {
                runs.addVertex(arrays.from(edge));
                runs.addVertex(arrays.to(edge));
                DefaultWeightedEdge run = runs.addEdge(arrays.from(edge), arrays.to(edge));
                // Lengths below 2^53 nm, 9,000 km, are exact as doubles; the sum is taken anew from integers.
                runs.setEdgeWeight(run, (double) arrays.length(edge));
            }
        }
    }

    /**
     * Between two places of levels, each told by its level and plan place. Where copper may not run at a place, the
     * nearest junction of permitted runs on its level stands for it. Empty when no copper may run on one of the levels,
     * or none from one place to the other.
     *
     * @throws IllegalArgumentException when the site has no such level
     */
    public static Optional<MeasuredWay> between(Site site, String level, PlanPoint from, String toLevel, PlanPoint to) {
        // A riser of one level joins nothing; it only draws grid lines through the place.
        List<Riser> risers = Stream.concat(
                        site.risers().stream(),
                        Stream.of(new Riser("from", from, List.of(level)), new Riser("to", to, List.of(toLevel))))
                .toList();
        Site measured = site.withRisers(risers);
        Network network =
                NetworkBuilder.build(measured, GroundingElectrodeSystem.of(measured), MediaThatMayCarry.of(measured));
        ShortestRun shortest = new ShortestRun(network);
        int start = shortest.nearest(level, from);
        int end = shortest.nearest(toLevel, to);
        return start < 0 || end < 0 ? Optional.empty() : shortest.way(start, end);
    }

    /** The nearest node on a level that copper reaches, the first of several; -1 where there is none. */
    private int nearest(String level, PlanPoint at) {
        NetworkArrays arrays = network.arrays();
        int index = network.site().levels().indexOf(network.site().level(level));
        int best = -1;
        Length least = Length.ZERO;
        for (int node = 0; node < network.placeCount(); node++) {
            if (arrays.level(node) == index && runs.containsVertex(node)) {
                Length distance = Length.ofRun(arrays.x(node) - at.x(), arrays.y(node) - at.y(), 0);
                if (best < 0 || distance.isLessThan(least)) {
                    best = node;
                    least = distance;
                }
            }
        }
        return best;
    }

    private Optional<MeasuredWay> way(int start, int end) {
        return Optional.ofNullable(new DijkstraShortestPath<>(runs).getPath(start, end))
                .map(this::measure);
    }

    private MeasuredWay measure(GraphPath<Integer, DefaultWeightedEdge> path) {
        List<Position> line = new ArrayList<>();
        for (int node : path.getVertexList()) {
            Position position = network.position(node);
            if (line.isEmpty() || !line.get(line.size() - 1).equals(position)) {
                line.add(position);
            }
        }
        long length = path.getEdgeList().stream()
                .mapToLong(run -> (long) runs.getEdgeWeight(run))
                .sum();
        return new MeasuredWay(line, Length.ofNanometres(length));
    }
}
