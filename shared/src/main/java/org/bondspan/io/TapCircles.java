package org.bondspan.io;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal.ProposedConductor;

/**
 * Finds conductors that tap themselves, or one another in a circle: nothing says where those are. Walks from tapping to
 * tapped conductors in depth, linear time.
 */
final class TapCircles {
    private static final String ADVICE = "Let it end at a joint, a place, or what it lands on";

    private record Tap(Fields fields, String end, String tapped) {}

    private record Step(String conductor, Iterator<Tap> ahead) {}

    private final Map<String, List<Tap>> taps = new HashMap<>();
    private final List<Step> trail = new ArrayList<>();
    private final Set<String> onTrail = new HashSet<>();
    private final Set<String> done = new HashSet<>();

    private TapCircles() {}

    static void check(List<Bound<ProposedConductor>> conductors) {
        TapCircles circles = new TapCircles();
        conductors.forEach(circles::add);
        conductors.forEach(conductor -> circles.walkFrom(conductor.value().id()));
    }

    private void add(Bound<ProposedConductor> conductor) {
        List<Tap> own = taps.computeIfAbsent(conductor.value().id(), id -> new ArrayList<>());
        if (conductor.value().from() instanceof End.OnConductor tap) {
            own.add(new Tap(conductor.fields(), "from", tap.conductor()));
        }
        if (conductor.value().to() instanceof End.OnConductor tap) {
            own.add(new Tap(conductor.fields(), "to", tap.conductor()));
        }
    }

    private void walkFrom(String start) {
        push(start);
        while (!trail.isEmpty()) {
            Step last = trail.get(trail.size() - 1);
            if (last.ahead().hasNext()) {
                follow(last.ahead().next());
            } else {
                trail.remove(trail.size() - 1);
                onTrail.remove(last.conductor());
            }
        }
    }

    private void push(String conductor) {
        if (done.add(conductor)) {
            trail.add(
                    new Step(conductor, taps.getOrDefault(conductor, List.of()).iterator()));
            onTrail.add(conductor);
        }
    }

    private void follow(Tap tap) {
        if (onTrail.contains(tap.tapped())) {
            tap.fields().report(tap.end(), message(tap.tapped()), ADVICE);
        } else {
            push(tap.tapped());
        }
    }

    private String message(String tapped) {
        List<String> circle = trail.stream()
                .map(Step::conductor)
                .dropWhile(conductor -> !conductor.equals(tapped))
                .toList();
        return circle.size() == 1
                ? tapped + " taps itself"
                : "closes a circle of taps: "
                        + Stream.concat(circle.stream(), Stream.of(tapped)).collect(Collectors.joining(" on "));
    }
}
