package org.bondspan.review;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.jgrapht.alg.util.UnionFind;

/** What hangs together by the ends of conductors and links alone, whatever joints list. */
final class JoinedByEnds {
    private final SiteMetal metal;
    private final CopperNodes copper;
    private final Set<Object> known = new HashSet<>();
    private final UnionFind<Object> joined = new UnionFind<>(Set.of());

    /** Apart from things, of which one may have the same id. */
    private record Copper(String id) {}

    JoinedByEnds(SiteMetal metal, CopperNodes copper, Proposal proposal) {
        this.metal = metal;
        this.copper = copper;
        for (ProposedConductor conductor : proposal.conductors()) {
            List.of(conductor.from(), conductor.to()).forEach(end -> join(new Copper(conductor.id()), key(end)));
        }
        proposal.links().forEach(link -> List.of(link.from(), link.to()).forEach(end -> join(link.path(), key(end))));
    }

    private Object key(End end) {
        if (end instanceof End.OnConductor on) {
            return new Copper(on.conductor());
        }
        return findThing(metal, end).<Object>map(thing -> thing).orElseGet(() -> copper.node(end));
    }

    /** The metal or service that an end lands on, an electrode as the path that it is part of; none at copper. */
    static Optional<String> findThing(SiteMetal metal, End end) {
        if (end instanceof End.AtElectrode at) {
            return metal.findPathOf(metal.electrode(at.electrode())).or(() -> Optional.of(at.electrode()));
        }
        if (end instanceof End.AtService at) {
            return Optional.of(at.service());
        }
        return end instanceof End.OnPath on ? Optional.of(on.path()) : Optional.empty();
    }

    private void join(Object a, Object b) {
        add(a);
        add(b);
        joined.union(a, b);
    }

    private void add(Object key) {
        if (known.add(key)) {
            joined.addElement(key);
        }
    }

    /** Whether a conductor, proposed or installed, hangs together with a joint. */
    boolean isJoined(String conductor, Node joint) {
        return isJoined((Object) new Copper(conductor), joint) || isJoined((Object) conductor, joint);
    }

    private boolean isJoined(Object a, Object b) {
        return known.contains(a) && known.contains(b) && joined.inSameSet(a, b);
    }
}
