package org.bondspan.io;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bondspan.io.json.Spot;

/**
 * The ids of a file, or of a proposal and its site, and what refers to them. Checked at the end, because a file may
 * name things before it draws them.
 */
final class Ids {
    private record Use(Kind kind, String id, Spot spot, String field) {
        Name name() {
            return new Name(kind.space(), id);
        }
    }

    private record Name(Kind.Space space, String id) {}

    private final List<Use> declared = new ArrayList<>();
    private final List<Use> references = new ArrayList<>();

    void declare(Kind kind, String id, Spot spot, String field) {
        declared.add(new Use(kind, id, spot, field));
    }

    void refer(Kind kind, String id, Spot spot, String field) {
        references.add(new Use(kind, id, spot, field));
    }

    void check(Problems problems) {
        declared.sort(Comparator.comparing(Use::spot));
        Map<Name, List<Use>> byName = new LinkedHashMap<>();
        for (Use use : declared) {
            List<Use> earlier = byName.computeIfAbsent(use.name(), name -> new ArrayList<>());
            if (!earlier.isEmpty()) {
                reportTwice(use, earlier.get(0), problems);
            }
            earlier.add(use);
        }
        Map<Kind, Set<String>> known = new EnumMap<>(Kind.class);
        byName.values()
                .forEach(uses -> uses.forEach(use -> known.computeIfAbsent(use.kind(), kind -> new LinkedHashSet<>())
                        .add(use.id())));
        for (Use reference : references) {
            List<Use> found = byName.getOrDefault(reference.name(), List.of());
            check(reference, found, known.getOrDefault(reference.kind(), Set.of()), problems);
        }
    }

    private static void reportTwice(Use second, Use first, Problems problems) {
        problems.report(
                second.spot(),
                second.field(),
                "the id \"" + second.id() + "\" is used twice: " + first.field() + " on line "
                        + first.spot().line() + " has it too",
                "Give one of them another id");
    }

    private static void check(Use reference, List<Use> found, Set<String> known, Problems problems) {
        Kind wanted = reference.kind();
        if (found.stream().anyMatch(use -> use.kind().fits(wanted))) {
            return;
        }
        if (wanted == Kind.LEVEL && known.isEmpty()) {
            return; // that there are no levels is one problem, not one for each thing on them
        }
        String message = found.isEmpty()
                ? "nothing in " + wanted.space().words() + " has the id \"" + reference.id() + "\"; " + wanted.words()
                        + " is wanted"
                : "\"" + reference.id() + "\" is " + found.get(0).kind().words() + ", not " + wanted.words();
        problems.report(reference.spot(), reference.field(), message, Nearest.advice(reference.id(), known));
    }
}
