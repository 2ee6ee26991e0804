package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;

/**
 * An edge of the proposed tie: a stretch of a proposed or an installed conductor, or a touch of metal. Compared by
 * identity, since two conductors may run between the same two ends.
 */
final class Span {
    private static final Optional<Length> NONE = Optional.of(Length.ZERO);

    private final Node from;
    private final Node to;
    private final Optional<ProposedConductor> conductor;
    private final Optional<InstalledConductor> installed;
    private final Optional<Length> length;
    private final List<Offence> offences;

    private Span(
            Node from,
            Node to,
            Optional<ProposedConductor> conductor,
            Optional<InstalledConductor> installed,
            Optional<Length> length,
            List<Offence> offences) {
        this.from = from;
        this.to = to;
        this.conductor = conductor;
        this.installed = installed;
        this.length = length;
        this.offences = List.copyOf(offences);
    }

    /** A stretch of a conductor; the offences are those of the conductor whatever its size. */
    static void run(Node from, Node to, ProposedConductor conductor, Optional<Length> length, List<Offence> offences) {
        addToBoth(new Span(from, to, Optional.of(conductor), Optional.empty(), length, offences));
    }

    /** A stretch of an installed conductor. */
    static void installed(Node from, Node to, InstalledConductor conductor) {
        addToBoth(new Span(from, to, Optional.empty(), Optional.of(conductor), NONE, List.of()));
    }

    private static void addToBoth(Span span) {
        span.from.add(span);
        span.to.add(span);
    }

    /** Metal touches metal. */
    static void touch(Node a, Node b, List<Offence> offences) {
        if (a != b) {
            addToBoth(new Span(a, b, Optional.empty(), Optional.empty(), NONE, offences));
        }
    }

    /** Metal from which something hangs that leads no further. */
    static void hang(Node from, Node hanging) {
        from.add(new Span(from, hanging, Optional.empty(), Optional.empty(), NONE, List.of()));
    }

    Node other(Node end) {
        return end == from ? to : from;
    }

    /** The installed conductor, where it is a stretch of one. */
    Optional<InstalledConductor> installed() {
        return installed;
    }

    /** The proposed conductor, where it is a stretch of one. */
    Optional<ProposedConductor> conductor() {
        return conductor;
    }

    /** Id of the conductor that it is a stretch of, proposed or installed. */
    Optional<String> findCopper() {
        return conductor.map(ProposedConductor::id).or(() -> installed.map(InstalledConductor::id));
    }

    /** Of a stretch of a proposed conductor, if it is known; 0 for anything else. */
    Optional<Length> findLength() {
        return length;
    }

    boolean isOf(String conductorId) {
        return conductor.isPresent() && conductor.get().id().equals(conductorId);
    }

    boolean isOfAny(Set<String> conductorIds) {
        return conductor.isPresent() && conductorIds.contains(conductor.get().id());
    }

    List<Offence> offences() {
        return offences;
    }
}
