package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.util.ArithmeticUtils;
import org.bondspan.code.Landing;
import org.bondspan.code.Obligation;
import org.bondspan.code.StretchNeed;
import org.bondspan.site.Connection;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.solve.CutNeed;
import org.bondspan.solve.RoutingProblem;
import org.bondspan.units.WireSize;

/**
 * The routing problem of a site in integers: sizes become ranks, services and obligations terminals, in this order;
 * lengths are divided by their greatest common divisor, so that weights stay exact and small.
 */
final class RouteProblem {
    private final Network network;
    private final List<Service> services;
    private final List<Obligation> obligations;
    private final StretchNeed need;
    private final List<WireSize> sizes;
    private final long lengthUnit;
    private final List<List<Attachment>> attachments = new ArrayList<>();

    /** @param sizes that may be bought, smallest first, those needed among them */
    RouteProblem(Network network, List<Obligation> obligations, StretchNeed need, List<WireSize> sizes) {
        this.network = network;
        this.services = network.site().services();
        this.obligations = List.copyOf(obligations);
        this.need = need;
        this.sizes = List.copyOf(sizes);
        this.lengthUnit = commonLength();
        services.forEach(service -> attachments.add(attach(service)));
        obligations.forEach(obligation -> attachments.add(attach(obligation)));
    }

    private List<Attachment> attach(Service service) {
        return service.connections().stream()
                .flatMap(connection ->
                        atConnection(new Landing.AtConnection(service.id(), connection), connection).stream())
                .toList();
    }

    private List<Attachment> attach(Obligation obligation) {
        List<Attachment> ways = new ArrayList<>();
        for (Landing landing : obligation.landings()) {
            if (landing instanceof Landing.AtConnection at) {
                ways.addAll(atConnection(at, at.connection()));
            } else if (landing instanceof Landing.WithCarrier with) {
                ways.add(new Attachment(landing, network.metalNode(with.path()), 0, Optional.empty()));
            } else {
                network.landingPlaces(landing.of()).forEach(node -> ways.add(fromPlace(landing, node)));
            }
        }
        return ways;
    }

    private List<Attachment> atConnection(Landing landing, Connection connection) {
        return network.faces(network.connectionNode(connection.position())).stream()
                .map(node -> fromPlace(landing, node))
                .toList();
    }

    private Attachment fromPlace(Landing landing, int node) {
        Site site = network.site();
        return new Attachment(
                landing,
                node,
                site.makeUpPerEnd().nanometres(),
                network.findInstalledAt(node).map(InstalledAt::size));
    }

    /**
     * The problem in integers; terminal {@code i} is service or obligation {@code i} as {@link #attachments} has it.
     */
    RoutingProblem toIntegers() {
        NetworkArrays arrays = network.arrays();
        RoutingProblem.Builder builder = RoutingProblem.builder(sizes.size());
        Tariffs tariffs = new Tariffs(builder, sizes);
        builder.addPlaces(network.placeCount());
        network.metalNodes().values().forEach(ignored -> builder.addMetal());
        for (int edge = 0; edge < arrays.edgeCount(); edge++) {
            builder.addEdge(
                    arrays.from(edge),
                    arrays.to(edge),
                    arrays.length(edge) / lengthUnit,
                    tariffs.of(arrays.freeUpTo(edge), arrays.largest(edge)));
        }
        for (List<Attachment> ways : attachments) {
            int terminal = builder.addTerminal();
            for (Attachment way : ways) {
                int tariff = tariffs.of(way.landed(), Optional.empty());
                builder.attach(terminal, way.node(), way.makeUp() / lengthUnit, tariff);
            }
        }
        return builder.build(cutNeed());
    }

    private long commonLength() {
        NetworkArrays arrays = network.arrays();
        long unit = network.site().makeUpPerEnd().nanometres();
        for (int edge = 0; edge < arrays.edgeCount() && unit != 1; edge++) {
            unit = ArithmeticUtils.gcd(unit, arrays.length(edge));
        }
        return Math.max(unit, 1);
    }

    /** Nanometres that every length of the problem is a multiple of. */
    long lengthUnit() {
        return lengthUnit;
    }

    CutNeed cutNeed() {
        int[][] ranks = new int[attachments.size()][attachments.size()];
        for (int s = 0; s < services.size(); s++) {
            for (int j = 0; j < obligations.size(); j++) {
                int rank = sizes.indexOf(need.ofPair(services.get(s), obligations.get(j)));
                ranks[s][services.size() + j] = rank;
                ranks[services.size() + j][s] = rank;
            }
        }
        return need.isByPairs() ? CutNeed.ofPairs(ranks) : CutNeed.of(ranks, side -> sizes.indexOf(need.across(side)));
    }

    Network network() {
        return network;
    }

    List<Obligation> obligations() {
        return obligations;
    }

    StretchNeed need() {
        return need;
    }

    /** Sizes by rank. */
    List<WireSize> sizes() {
        return sizes;
    }

    /** The size of a rank. */
    WireSize size(int rank) {
        return sizes.get(rank);
    }

    int rank(WireSize size) {
        return sizes.indexOf(size);
    }

    int terminalCount() {
        return attachments.size();
    }

    List<Service> services() {
        return services;
    }

    boolean isService(int terminal) {
        return terminal < services.size();
    }

    Service service(int terminal) {
        return services.get(terminal);
    }

    Obligation obligation(int terminal) {
        return obligations.get(terminal - services.size());
    }

    List<Attachment> attachments(int terminal) {
        return attachments.get(terminal);
    }
}
