package org.bondspan.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bondspan.code.Obligation;
import org.bondspan.site.Service;

/** How a proposal joins every service with everything that must be connected. */
final class PairVerdicts {
    private final ProposedTie tie;
    private final List<PairVerdict> all = new ArrayList<>();
    private final Map<String, List<PairVerdict>> byConductor = new HashMap<>();

    PairVerdicts(SiteMetal metal, ProposedTie tie) {
        this.tie = tie;
        for (Obligation obligation : metal.system().obligations()) {
            Set<Node> goals = tie.goals(obligation);
            for (Service service : metal.site().services()) {
                add(new PairVerdict(new Pair(service, obligation), tie.service(service.id()), goals));
            }
        }
    }

    private void add(PairVerdict verdict) {
        all.add(verdict);
        verdict.best()
                .ifPresent(way -> way.conductors()
                        .forEach(conductor -> byConductor
                                .computeIfAbsent(conductor.id(), ignored -> new ArrayList<>())
                                .add(verdict)));
    }

    /** Those whose best way runs along that conductor. */
    List<PairVerdict> along(String conductor) {
        return byConductor.getOrDefault(conductor, List.of());
    }

    /** One for each pair, in the order of the site. */
    List<PairVerdict> all() {
        return all;
    }

    ProposedTie tie() {
        return tie;
    }

    /** Everything unlawful on which some pair has to rely, sizes aside. */
    Set<Offence> unlawful() {
        Set<Offence> unlawful = new LinkedHashSet<>();
        all.forEach(verdict -> unlawful.addAll(verdict.unlawful()));
        return unlawful;
    }

    /** Stretches that ways run along. */
    Set<Span> used() {
        Set<Span> used = new LinkedHashSet<>();
        all.forEach(verdict -> verdict.best().ifPresent(way -> used.addAll(way.spans())));
        return used;
    }

    /** Vertices that ways pass. */
    Set<Node> passed() {
        Set<Node> passed = new LinkedHashSet<>();
        all.forEach(verdict -> verdict.best().ifPresent(way -> passed.addAll(way.passed())));
        return passed;
    }
}
