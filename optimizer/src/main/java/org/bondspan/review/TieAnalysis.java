package org.bondspan.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.Obligation;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Service;
import org.bondspan.site.Site;

/**
 * How a proposal joins every service with everything that must be connected: the best way of each pair, and the pairs
 * that nothing joins.
 */
final class TieAnalysis {
    private final Site site;
    private final Metal metal;
    private final ProposedTie tie;
    private final WaySearch search;
    private final Map<Pair, Way> ways = new LinkedHashMap<>();
    private final List<Pair> apart = new ArrayList<>();

    TieAnalysis(Site site, GroundingElectrodeSystem system, Metal metal, ProposedTie tie) {
        this.site = site;
        this.metal = metal;
        this.tie = tie;
        this.search = new WaySearch(tie);
        for (Obligation obligation : system.obligations()) {
            for (Service service : site.services()) {
                Pair pair = new Pair(service, obligation);
                search.find(pair, goals(obligation)).ifPresentOrElse(way -> ways.put(pair, way), () -> apart.add(pair));
            }
        }
    }

    /** The vertices at which an obligation is met. */
    Set<String> goals(Obligation obligation) {
        Set<String> goals = new HashSet<>();
        for (String member : obligation.members()) {
            boolean electrode = site.electrodes().stream()
                    .anyMatch(candidate -> candidate.id().equals(member));
            goals.add(
                    electrode
                            ? metal.electrode(member).key()
                            : metal.path(member, Optional.empty()).key());
        }
        return goals;
    }

    ProposedTie tie() {
        return tie;
    }

    WaySearch search() {
        return search;
    }

    /** The best way of every pair that anything joins. */
    Map<Pair, Way> ways() {
        return ways;
    }

    /** Pairs that nothing joins, lawful or not. */
    List<Pair> apart() {
        return apart;
    }

    /** Everything unlawful on which some pair relies, sizes included. */
    Set<Offence> reliedOn() {
        Set<Offence> relied = new LinkedHashSet<>();
        ways.forEach((pair, way) -> way.offences().forEach(offence -> relied.add(named(offence, pair, way))));
        return relied;
    }

    /** A conductor too small is named side by side where another lawful way leads round it. */
    private Offence named(Offence offence, Pair pair, Way way) {
        if (offence.check() != CheckedRule.CONDUCTOR_TOO_SMALL) {
            return offence;
        }
        ProposedConductor small = way.conductors().stream()
                .filter(conductor -> conductor.id().equals(offence.subject()))
                .findFirst()
                .orElseThrow();
        boolean roundIt = search.find(pair, goals(pair.obligation()), span -> !isOf(span, small))
                .map(other ->
                        other.offences().stream().allMatch(found -> found.check() == CheckedRule.CONDUCTOR_TOO_SMALL))
                .orElse(false);
        return roundIt ? SizeOffence.sideBySide(small, pair.need(small.material()), pair.describe()) : offence;
    }

    static boolean isOf(Span span, ProposedConductor conductor) {
        return span.conductor().map(own -> own.id().equals(conductor.id())).orElse(false);
    }
}
