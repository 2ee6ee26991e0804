package org.bondspan.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.bondspan.code.Obligation;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;
import org.bondspan.site.Service;
import org.bondspan.units.WireSize;

/**
 * What each conductor needs: a stretch that all ways between some services of one supply and a thing share carries the
 * sum of those services, 250.64(D)(1).
 */
final class SharedStretches {
    private final TieAnalysis analysis;

    SharedStretches(TieAnalysis analysis) {
        this.analysis = analysis;
    }

    /**
     * A need with the services and the thing that call for it.
     *
     * @param copper the need as a copper size
     * @param own the need as a size of the conductor's own material
     */
    record Required(WireSize copper, WireSize own, String toward, int services) {}

    /** The largest need of a conductor; empty where every pair has another way. */
    Optional<Required> find(ProposedConductor conductor) {
        return find(span -> !TieAnalysis.isOf(span, conductor), conductor.material());
    }

    /** The largest need across a carrier: a ring or an installed conductor; empty where every pair has another way. */
    Optional<Required> findAcross(String vertex) {
        Predicate<Span> elsewhere =
                span -> !analysis.tie().graph().getEdgeSource(span).equals(vertex)
                        && !analysis.tie().graph().getEdgeTarget(span).equals(vertex);
        return find(elsewhere, Material.COPPER);
    }

    private Optional<Required> find(Predicate<Span> without, Material material) {
        Map<Group, List<Service>> sharing = new LinkedHashMap<>();
        for (Pair pair : analysis.ways().keySet()) {
            boolean shares = analysis.search()
                    .find(pair, analysis.goals(pair.obligation()), without)
                    .isEmpty();
            if (shares) {
                Group group = new Group(pair.service().supply(), pair.obligation());
                sharing.computeIfAbsent(group, ignored -> new ArrayList<>()).add(pair.service());
            }
        }
        return sharing.entrySet().stream()
                .map(entry -> required(entry.getKey(), entry.getValue(), material))
                .reduce((a, b) -> a.copper().isAtLeast(b.copper()) ? a : b);
    }

    private record Group(String supply, Obligation obligation) {}

    private static Required required(Group group, List<Service> services, Material material) {
        long area = services.stream()
                .mapToLong(service -> service.ungrounded().area())
                .sum();
        Material ofService = services.get(0).ungrounded().material();
        String names = String.join(" and ", services.stream().map(Service::id).toList());
        return new Required(
                Pair.need(group.obligation(), ofService, area, Material.COPPER),
                Pair.need(group.obligation(), ofService, area, material),
                names + " to " + group.obligation().name(),
                services.size());
    }
}
