package org.bondspan.layout;

import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Evidence;
import org.bondspan.site.Material;
import org.bondspan.units.LengthUnit;

/**
 * What a review says of a proposal.
 *
 * @param complies whether no finding is a violation
 * @param copper all copper of the proposal; empty when the length of some conductor is not known
 * @param least what the least-copper interconnection of the site weighs, as far as it was searched for
 * @param conductors in the order of the proposal
 * @param ways one for each pair of a service and something that must be connected
 * @param site name of the site
 * @param adoption jurisdiction and local amendments, as the site states them
 * @param assumed facts of the site marked as assumed
 */
public record ReviewOutcome(
        boolean complies,
        List<Finding> findings,
        List<String> notChecked,
        Optional<Copper> copper,
        LeastCopper least,
        LengthUnit lengthUnit,
        List<JudgedConductor> conductors,
        List<JudgedWay> ways,
        List<String> cautions,
        String site,
        String adoption,
        CodeEdition codeEdition,
        List<Evidence> assumed) {
    public ReviewOutcome {
        findings = List.copyOf(findings);
        notChecked = List.copyOf(notChecked);
        conductors = List.copyOf(conductors);
        ways = List.copyOf(ways);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
        if (complies == Finding.anyViolation(findings)) {
            throw new IllegalArgumentException("complies: " + complies + ", findings: " + findings);
        }
    }

    /** Ids of the copper conductors that state neither length nor line: they count as straight from end to end. */
    public List<String> reckonedStraight() {
        return listReckoned(LengthFrom.ENDS);
    }

    /** Ids of the copper conductors that state less than they need: they count with what they need. */
    public List<String> reckonedAsNeeded() {
        return listReckoned(LengthFrom.NEEDED);
    }

    /** Ids of the copper conductors whose length nothing tells: without it the copper is not known. */
    public List<String> unknownLengths() {
        return listReckoned(LengthFrom.NOTHING);
    }

    private List<String> listReckoned(LengthFrom from) {
        return conductors.stream()
                .filter(conductor -> conductor.lengthFrom() == from)
                .filter(conductor -> conductor.material() == Material.COPPER)
                .map(JudgedConductor::id)
                .toList();
    }
}
