package org.bondspan.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.Obligation;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.site.Service;
import org.bondspan.site.Site;

/**
 * 250.50, 250.104, 250.58: everything that must be connected has some way to every service. A thing that no service
 * reaches is named; a service that misses what others reach is named.
 */
final class ConnectionCheck {
    private final Site site;
    private final GroundingElectrodeSystem system;
    private final Map<Obligation, Set<Service>> reachedBy = new LinkedHashMap<>();

    ConnectionCheck(Site site, GroundingElectrodeSystem system, TieAnalysis analysis) {
        this.site = site;
        this.system = system;
        analysis.ways().forEach((pair, way) -> {
            boolean byRing =
                    way.offences().stream().anyMatch(offence -> offence.check() == CheckedRule.RING_WITHOUT_LEAVE);
            if (!byRing) {
                reachedBy
                        .computeIfAbsent(pair.obligation(), ignored -> new LinkedHashSet<>())
                        .add(pair.service());
            }
        });
    }

    List<Finding> find() {
        List<Finding> findings = new ArrayList<>();
        Set<Service> missing = new LinkedHashSet<>();
        for (Obligation obligation : system.obligations()) {
            Set<Service> services = reachedBy.getOrDefault(obligation, Set.of());
            if (services.isEmpty()) {
                findings.add(notConnected(obligation));
            } else {
                site.services().stream()
                        .filter(service -> !services.contains(service))
                        .forEach(missing::add);
            }
        }
        missing.forEach(service -> findings.add(new Finding(
                CheckedRule.SEVERAL_SYSTEMS.rule().section(),
                Severity.VIOLATION,
                service.id(),
                service.id() + " is not tied to the grounding electrode system of the other services."
                        + " Tie it to any part of that system at full size.")));
        return findings;
    }

    private static Finding notConnected(Obligation obligation) {
        CheckedRule check = switch (obligation.kind()) {
            case ELECTRODE -> CheckedRule.NOT_CONNECTED;
            case FRAME -> CheckedRule.FRAME_NOT_BONDED;
            case PIPING -> CheckedRule.PIPING_NOT_BONDED;
        };
        return new Finding(
                check.rule().section(),
                Severity.VIOLATION,
                obligation.members().get(0),
                "No lawful way joins " + obligation.name() + " with a service. Land a conductor on it.");
    }
}
