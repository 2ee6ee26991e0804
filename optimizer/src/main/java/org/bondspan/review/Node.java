package org.bondspan.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.bondspan.units.WireSize;

/**
 * A vertex of the proposed tie: a service, metal, or a place where copper joins copper. Compared by identity; spans are
 * added while the tie is built.
 */
final class Node {
    /** What a vertex is. */
    enum Kind {
        SERVICE,
        ELECTRODE,
        PATH,
        COPPER
    }

    private final Kind kind;
    private final String id;
    private final Optional<WireSize> capacity;
    private final List<Offence> offences;
    private final List<Span> spans = new ArrayList<>();

    /**
     * @param id of the service, electrode, path, joint, or conductor that is tapped
     * @param capacity the largest copper need that may pass, on rings
     * @param offences what is unlawful about passing it; none about ending there
     */
    Node(Kind kind, String id, Optional<WireSize> capacity, List<Offence> offences) {
        this.kind = kind;
        this.id = id;
        this.capacity = capacity;
        this.offences = List.copyOf(offences);
    }

    static Node open(Kind kind, String id) {
        return new Node(kind, id, Optional.empty(), List.of());
    }

    Kind kind() {
        return kind;
    }

    String id() {
        return id;
    }

    Optional<WireSize> capacity() {
        return capacity;
    }

    List<Offence> offences() {
        return offences;
    }

    void add(Span span) {
        spans.add(span);
    }

    List<Span> spans() {
        return Collections.unmodifiableList(spans);
    }

    /** How many other vertices the conductors that land on it lead to. */
    long neighbours() {
        return spans.stream()
                .filter(span -> span.conductor().isPresent())
                .map(span -> span.other(this))
                .filter(other -> other != this)
                .distinct()
                .count();
    }
}
