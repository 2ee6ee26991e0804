package org.bondspan.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
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
    private final PairVerdicts verdicts;
    private final Set<String> reached;

    /** Sizes that the things call for toward all services. */
    private final StretchNeed sizes;

    ConnectionCheck(SiteMetal metal, PairVerdicts verdicts) {
        this.site = metal.site();
        this.system = metal.system();
        this.verdicts = verdicts;
        this.sizes = new StretchNeed(site.services(), system.obligations());
        this.reached = verdicts.all().stream()
                .filter(PairVerdict::isJoined)
                .map(ConnectionCheck::thing)
                .collect(Collectors.toSet());
    }

    private static String thing(PairVerdict verdict) {
        return verdict.pair().obligation().name();
    }

    List<Offence> find() {
        List<Offence> offences = new ArrayList<>();
        system.obligations().stream()
                .filter(obligation -> !reached.contains(obligation.name()))
                .forEach(obligation -> offences.add(notConnected(obligation)));
        site.services().forEach(service -> findApart(service.id()).ifPresent(offences::add));
        return offences;
    }

    /** A service that misses what others reach. */
    private Optional<Offence> findApart(String service) {
        List<PairVerdict> missed = verdicts.all().stream()
                .filter(verdict -> verdict.pair().service().id().equals(service) && !verdict.isJoined())
                .filter(verdict -> reached.contains(thing(verdict)))
                .toList();
        if (missed.isEmpty()) {
            return Optional.empty();
        }
        String apart = things(missed, Optional.empty());
        List<String> gaps = new ArrayList<>();
        if (!apart.isEmpty()) {
            gaps.add("nothing joins it with " + apart);
        }
        Set<String> buses =
                missed.stream().flatMap(verdict -> verdict.findBus().stream()).collect(Collectors.toSet());
        site.services().stream()
                .map(Service::id)
                .filter(buses::contains)
                .forEach(bus -> gaps.add("its only way to " + things(missed, Optional.of(bus)) + " passes the bus of "
                        + bus + ", where ways may only end"));
        return Optional.of(new Offence(
                CheckedRule.SEVERAL_SYSTEMS,
                service,
                service + " does not share one grounding electrode system with the other services: "
                        + String.join("; ", gaps) + ".",
                apart.isEmpty()
                        ? "Run copper of full size past that bus and land a conductor of its own on it."
                        : "Tie it to any part of that system at full size, past the buses of other services."));
    }

    private static String things(List<PairVerdict> missed, Optional<String> bus) {
        return missed.stream()
                .filter(verdict -> verdict.findBus().equals(bus))
                .map(ConnectionCheck::thing)
                .collect(Collectors.joining(", "));
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
