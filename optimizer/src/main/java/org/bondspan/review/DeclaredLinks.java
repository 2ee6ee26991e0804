package org.bondspan.review;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal.ProposedLink;
import org.bondspan.site.Connection;
import org.bondspan.site.SitePath.InstalledConductor;

/** Links that a proposal declares: metal that it takes to join what they name. */
final class DeclaredLinks {
    private final ProposedTie tie;
    private final SiteMetal metal;
    private final Ends ends;
    private final List<Offence> offences = new ArrayList<>();

    DeclaredLinks(ProposedTie tie, SiteMetal metal, Ends ends) {
        this.tie = tie;
        this.metal = metal;
        this.ends = ends;
    }

    /** Along an installed conductor nothing is to be joined that does not land on it already. */
    void add(ProposedLink link) {
        if (metal.path(link.path()) instanceof InstalledConductor) {
            addAlongInstalled(link);
            return;
        }
        Node through = tie.nodes().path(link.path());
        offences.addAll(through.offences());
        for (End end : List.of(link.from(), link.to())) {
            Node node = tie.node(end);
            if (isJoined(node, through)) {
                continue;
            }
            if (!through.offences().isEmpty() || isOn(link.path(), end)) {
                Span.touch(node, through, List.of());
            } else {
                offences.add(elsewhere(link.path(), end));
            }
        }
    }

    private void addAlongInstalled(ProposedLink link) {
        for (End end : List.of(link.from(), link.to())) {
            boolean own = end instanceof End.OnPath on && on.path().equals(link.path());
            if (!own && !isOn(link.path(), end)) {
                offences.add(elsewhere(link.path(), end));
            }
        }
    }

    private static boolean isJoined(Node node, Node through) {
        return node == through || through.spans().stream().anyMatch(span -> span.other(through) == node);
    }

    /** What lies on the metal may be landed on it without any length of copper. */
    private boolean isOn(String path, End end) {
        if (end instanceof End.AtService at) {
            return anyOn(path, metal.places().connections(at.service(), at.connection()));
        }
        if (end instanceof End.AtElectrode at
                && anyOn(path, metal.places().connections(at.electrode(), at.connection()))) {
            return true;
        }
        if (end instanceof End.OnPath on && on.distance().isEmpty()) {
            return !metal.shape(path).meet(metal.shape(on.path())).isEmpty();
        }
        return ends.locate(end).map(place -> metal.shape(path).isAt(place)).orElse(false);
    }

    private boolean anyOn(String path, List<Connection> connections) {
        return connections.stream().anyMatch(connection -> metal.shape(path).isAt(connection.position()));
    }

    private static Offence elsewhere(String path, End end) {
        String what = end instanceof End.AtElectrode at ? at.electrode() : path;
        return new Offence(
                CheckedRule.LINK_ELSEWHERE,
                what,
                "The link through " + path
                        + " names an end that is neither part of it nor lies on it, so it does not count.",
                "Land a conductor on both.");
    }

    /** What is unlawful or idle about them. */
    List<Offence> offences() {
        return offences;
    }
}
