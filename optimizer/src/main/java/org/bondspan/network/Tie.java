package org.bondspan.network;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.code.Landing;
import org.bondspan.layout.Piece;
import org.bondspan.layout.RunLength;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;
import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.AsWeightedGraph;
import org.jgrapht.graph.SimpleGraph;
import org.jgrapht.traverse.BreadthFirstIterator;

/** The interconnection as a tree, seen from the first service. */
final class Tie {
    private final RouteProblem problem;
    private final Heights heights;
    private final Graph<Integer, TieEdge> graph = new SimpleGraph<>(TieEdge.class);
    private final List<Integer> attachments;
    private final Map<Integer, TieEdge> parents = new HashMap<>();
    private final Map<TieEdge, BitSet> beyond = new HashMap<>();
    private final List<Integer> outward = new ArrayList<>();

    Tie(RouteProblem problem, ChosenTree chosen) {
        this.problem = problem;
        this.heights = new Heights(problem.network());
        this.attachments = chosen.attachments();
        chosen.ranks().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> add(edge(entry.getKey(), problem.size(entry.getValue()))));
        for (int t = 0; t < problem.terminalCount(); t++) {
            if (chosen.attachments().get(t) >= 0) {
                add(attachment(t, problem.size(chosen.attachmentRanks().get(t))));
            }
        }
        root();
    }

    private void add(TieEdge edge) {
        graph.addVertex(edge.a());
        graph.addVertex(edge.b());
        graph.addEdge(edge.a(), edge.b(), edge);
    }

    private TieEdge edge(int index, WireSize size) {
        NetworkArrays arrays = problem.network().arrays();
        EdgeKind kind = arrays.kind(index);
        boolean free = isFree(arrays.freeUpTo(index), size);
        String carriedBy = "";
        if (kind == EdgeKind.INSTALLED) {
            carriedBy = arrays.path(index);
        } else if (free) {
            carriedBy = installedAt(arrays.from(index));
        }
        RunLength copper = free ? RunLength.ZERO : run(kind, arrays.direction(index), arrays.length(index));
        int from = arrays.from(index);
        int to = arrays.to(index);
        boolean landing = kind == EdgeKind.LANDING;
        Piece piece =
                landing ? heights.at(Math.min(from, to), copper.total()) : heights.between(from, to, copper.total());
        return new TieEdge(
                from,
                to,
                size,
                copper,
                List.of(piece),
                problem.network().walls(index),
                carriedBy,
                arrays.direction(index));
    }

    private static RunLength run(EdgeKind kind, int direction, long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        Length none = Length.ZERO;
        if (kind == EdgeKind.LANDING) {
            return new RunLength(none, none, length, none);
        }
        return direction == Direction.VERTICAL
                ? new RunLength(none, length, none, none)
                : new RunLength(length, none, none, none);
    }

    private TieEdge attachment(int terminal, WireSize size) {
        Attachment way = chosenAttachment(terminal);
        boolean free = isFree(way.landed(), size);
        String carriedBy = "";
        if (way.landing() instanceof Landing.WithCarrier with) {
            carriedBy = with.path();
        } else if (free) {
            carriedBy = installedAt(way.node());
        }
        RunLength copper = carriedBy.isEmpty() ? run(EdgeKind.LANDING, Direction.NONE, way.makeUp()) : RunLength.ZERO;
        List<Piece> pieces =
                problem.network().isMetal(way.node()) ? List.of() : List.of(heights.at(way.node(), copper.total()));
        return new TieEdge(way.node(), vertex(terminal), size, copper, pieces, List.of(), carriedBy, Direction.NONE);
    }

    private String installedAt(int node) {
        return problem.network().findInstalledAt(node).map(InstalledAt::path).orElse("");
    }

    private static boolean isFree(Optional<WireSize> freeUpTo, WireSize size) {
        return freeUpTo.map(most -> most.isAtLeast(size)).orElse(false);
    }

    private void root() {
        int root = vertex(0);
        if (!graph.containsVertex(root)) {
            return;
        }
        BreadthFirstIterator<Integer, TieEdge> walk = new BreadthFirstIterator<>(graph, root);
        walk.forEachRemaining(vertex -> {
            outward.add(vertex);
            Optional.ofNullable(walk.getSpanningTreeEdge(vertex)).ifPresent(edge -> parents.put(vertex, edge));
        });
        for (int i = outward.size() - 1; i > 0; i--) {
            int vertex = outward.get(i);
            TieEdge up = parent(vertex);
            BitSet served = new BitSet();
            if (isTerminal(vertex)) {
                served.set(terminal(vertex));
            }
            children(vertex).forEach(edge -> served.or(beyond(edge)));
            beyond.put(up, served);
        }
    }

    /** The edge toward the first service; throws for the root. */
    TieEdge parent(int vertex) {
        TieEdge up = parents.get(vertex);
        if (up == null) {
            throw new IllegalArgumentException("no way back from vertex " + vertex);
        }
        return up;
    }

    boolean isRoot(int vertex) {
        return vertex == vertex(0);
    }

    /** Edges away from the first service. */
    List<TieEdge> children(int vertex) {
        return graph.edgesOf(vertex).stream()
                .filter(edge -> !edge.equals(parents.get(vertex)))
                .sorted(Comparator.comparingInt(edge -> edge.other(vertex)))
                .toList();
    }

    /** Terminals on the far side of an edge, as a bit set; not to be changed. */
    BitSet beyond(TieEdge edge) {
        return beyond.getOrDefault(edge, new BitSet());
    }

    int degree(int vertex) {
        return graph.degreeOf(vertex);
    }

    /** All vertices, nearest to the first service first; empty when there is nothing to tie. */
    List<Integer> outward() {
        return outward;
    }

    static int vertex(int terminal) {
        return -1 - terminal;
    }

    static boolean isTerminal(int vertex) {
        return vertex < 0;
    }

    static int terminal(int vertex) {
        return -1 - vertex;
    }

    boolean isMetal(int vertex) {
        return !isTerminal(vertex) && problem.network().isMetal(vertex);
    }

    /** Whether metal carries at that size: a ring does up to its own, a frame or pipe always. */
    boolean carries(int metal, WireSize size) {
        Site site = problem.network().site();
        return site.listPaths(RingPath.class).stream()
                .filter(ring -> ring.id().equals(problem.network().metalPath(metal)))
                .flatMap(ring -> site.listElectrodes(GroundRing.class).stream()
                        .filter(electrode -> electrode.id().equals(ring.electrode())))
                .allMatch(ring -> ring.conductorSize().isAtLeast(size));
    }

    Attachment chosenAttachment(int terminal) {
        return problem.attachments(terminal).get(attachments.get(terminal));
    }

    /** Edges from a service to the nearest electrode, frame or pipe by copper: its grounding electrode conductor. */
    List<TieEdge> groundingElectrodeConductor(int service) {
        int from = vertex(service);
        if (!graph.containsVertex(from)) {
            return List.of();
        }
        Graph<Integer, TieEdge> byCopper = new AsWeightedGraph<>(
                graph, edge -> (double) edge.copper().total().nanometres(), false, false);
        DijkstraShortestPath<Integer, TieEdge> paths = new DijkstraShortestPath<>(byCopper);
        var tree = paths.getPaths(from);
        return outward.stream()
                .filter(vertex -> isMetal(vertex) || (isTerminal(vertex) && !problem.isService(terminal(vertex))))
                .min(Comparator.comparingDouble(tree::getWeight))
                .map(vertex -> tree.getPath(vertex).getEdgeList())
                .orElse(List.of());
    }
}
