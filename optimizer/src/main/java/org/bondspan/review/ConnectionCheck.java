package org.bondspan.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.Obligation;
import org.bondspan.code.Rule;
import org.bondspan.code.StretchNeed;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.units.WireSize;

/**
 * 250.50, 250.104, 250.58: everything that must be connected has some way to every service. A thing that no service
 * reaches is named; a service that misses what others reach is named.
 */
final class ConnectionCheck {
    private final Site site;
    private final GroundingElectrodeSystem system;
    private final Map<String, Set<String>> reachedBy = new LinkedHashMap<>();

    /** Sizes that the things call for toward all services. */
    private final StretchNeed sizes;

    ConnectionCheck(SiteMetal metal, PairVerdicts verdicts) {
        this.site = metal.site();
        this.system = metal.system();
        this.sizes = new StretchNeed(site.services(), system.obligations());
        verdicts.all().stream()
                .filter(PairVerdict::isJoined)
                .map(PairVerdict::pair)
                .forEach(pair -> reachedBy
                        .computeIfAbsent(pair.obligation().name(), ignored -> new LinkedHashSet<>())
                        .add(pair.service().id()));
    }

    List<Offence> find() {
        List<Offence> offences = new ArrayList<>();
        Set<String> missing = new LinkedHashSet<>();
        for (Obligation obligation : system.obligations()) {
            Set<String> services = reachedBy.getOrDefault(obligation.name(), Set.of());
            if (services.isEmpty()) {
                offences.add(notConnected(obligation));
            } else {
                site.services().stream()
                        .map(Service::id)
                        .filter(service -> !services.contains(service))
                        .forEach(missing::add);
            }
        }
        missing.forEach(service -> offences.add(new Offence(
                CheckedRule.SEVERAL_SYSTEMS,
                service,
                service + " is not tied to the grounding electrode system of the other services.",
                "Tie it to any part of that system at full size.")));
        return offences;
    }

    private Offence notConnected(Obligation obligation) {
        WireSize need = sizes.ofWhole(obligation.need());
        return new Offence(
                check(obligation),
                obligation.members().get(0),
                "No way joins " + obligation.name() + " with a service; it needs one of " + need.label() + " copper.",
                "Land a conductor on it.");
    }

    /** A frame that is itself an electrode under the 2014 text is missed as one. */
    private static CheckedRule check(Obligation obligation) {
        return switch (obligation.kind()) {
            case ELECTRODE -> CheckedRule.NOT_CONNECTED;
            case FRAME ->
                obligation.rule() == Rule.FRAME_BOND ? CheckedRule.FRAME_NOT_BONDED : CheckedRule.NOT_CONNECTED;
            case PIPING -> CheckedRule.PIPING_NOT_BONDED;
        };
    }
}
