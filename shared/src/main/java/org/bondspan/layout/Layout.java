package org.bondspan.layout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Evidence;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Weight;

/**
 * The answer for one site: the interconnection with the least copper or the least cost, or why there is none.
 *
 * @param copper empty when impossible
 * @param lowerBound proven: no lawful interconnection on this site weighs less; empty when impossible
 * @param gapPercent 0 when proven least
 * @param cost at the prices given; empty without prices or when impossible
 * @param assumed facts of the site marked as assumed
 */
public record Layout(
        String site,
        String adoption,
        CodeEdition codeEdition,
        LengthUnit lengthUnit,
        Status status,
        Optional<Copper> copper,
        List<SizeTotal> sizes,
        Optional<Weight> lowerBound,
        BigDecimal gapPercent,
        List<Conductor> conductors,
        List<Link> links,
        List<Joint> joints,
        List<ServiceState> services,
        List<ElectrodeState> electrodes,
        List<BondState> bonds,
        List<Excluded> excluded,
        List<Finding> findings,
        List<Evidence> assumed,
        List<String> notChecked,
        List<String> cautions,
        Objective objective,
        Optional<Cost> cost)
        implements SiteStates {
    public Layout {
        sizes = List.copyOf(sizes);
        conductors = List.copyOf(conductors);
        links = List.copyOf(links);
        joints = List.copyOf(joints);
        services = List.copyOf(services);
        electrodes = List.copyOf(electrodes);
        bonds = List.copyOf(bonds);
        excluded = List.copyOf(excluded);
        findings = List.copyOf(findings);
        assumed = List.copyOf(assumed);
        notChecked = List.copyOf(notChecked);
        cautions = List.copyOf(cautions);
    }

    /** The same route as the answer to what costs least, with what is found then. */
    public Layout withCost(Status newStatus, BigDecimal gap, Cost newCost, List<Finding> newFindings) {
        return new Layout(
                site,
                adoption,
                codeEdition,
                lengthUnit,
                newStatus,
                copper,
                sizes,
                lowerBound,
                gap,
                conductors,
                links,
                joints,
                services,
                electrodes,
                bonds,
                excluded,
                newFindings,
                assumed,
                notChecked,
                cautions,
                Objective.COST,
                Optional.of(newCost));
    }
}
