package org.bondspan.io;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bondspan.layout.End;

/** Ends that name a joint: it has that id, or another end names it too. */
final class JointNames {
    private record Use(Fields fields, String end, String joint) {}

    private final Set<String> declared;
    private final List<Use> uses = new ArrayList<>();
    private final Map<String, Integer> counts = new HashMap<>();

    /** @param declared ids of the joints that are listed */
    JointNames(Set<String> declared) {
        this.declared = Set.copyOf(declared);
    }

    void note(Fields fields, String name, End end) {
        if (end instanceof End.AtJoint at && !at.joint().isEmpty()) {
            uses.add(new Use(fields, name, at.joint()));
            counts.merge(at.joint(), 1, Integer::sum);
        }
    }

    /** After the last end. */
    void check() {
        for (Use use : uses) {
            if (!declared.contains(use.joint()) && counts.getOrDefault(use.joint(), 0) < 2) {
                use.fields()
                        .report(
                                use.end(),
                                "no joint has the id \"" + use.joint() + "\", and no other end names it",
                                Nearest.advice(
                                        use.joint(),
                                        others(use),
                                        "List the joint, or let the end that it meets name it too"));
            }
        }
    }

    private Set<String> others(Use use) {
        Set<String> others = new LinkedHashSet<>(declared);
        uses.stream().map(Use::joint).filter(name -> !name.equals(use.joint())).forEach(others::add);
        return others;
    }
}
