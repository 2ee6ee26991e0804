package org.bondspan.io;

import java.util.List;
import java.util.Optional;
import org.bondspan.site.Connection;
import org.bondspan.site.Material;
import org.bondspan.site.PhaseConductors;
import org.bondspan.site.Service;
import org.bondspan.units.WireSize;

/** Reads services. */
final class ServiceReader {
    private static final int MAX_SETS = 1000;
    private static final String PHASE =
            "Give material, size and sets of the ungrounded conductors of one phase; Table 250.66 needs them";

    private ServiceReader() {}

    static Service service(Fields fields) {
        String id = fields.id(Kind.SERVICE);
        Optional<String> supply = fields.has("supply")
                ? Optional.of(fields.name("supply", "Give the id of the service drop or lateral"))
                : Optional.empty();
        fields.find("supply");
        fields.require("ungrounded", PHASE);
        PhaseConductors phase = fields.findObject("ungrounded", "phase conductors", ServiceReader::phase)
                .orElse(new PhaseConductors(Material.COPPER, WireSize.AWG_8, 1));
        List<Connection> connections = ConnectionReader.read(fields);
        if (fields.isWithout("connections")) {
            fields.reportNone(
                    "connections", "Give at least one accessible point on the grounded service conductor, 250.24(A)");
        }
        return new Service(id, supply.orElse(id), phase, connections);
    }

    private static PhaseConductors phase(Fields fields) {
        return new PhaseConductors(
                fields.requireWord("material", Material.class, "Write \"copper\" or \"aluminum\"")
                        .orElse(Material.COPPER),
                fields.size("size", "Give the size of one conductor, such as \"500 kcmil\""),
                sets(fields));
    }

    private static int sets(Fields fields) {
        Optional<Integer> sets = fields.require("sets", "Give the number of conductors in parallel per phase, mostly 1")
                .flatMap(node -> fields.scope().values().whole(node, fields.path("sets")));
        if (sets.isPresent() && (sets.get() < 1 || sets.get() > MAX_SETS)) {
            fields.report(
                    "sets", "must be from 1 to " + MAX_SETS, "Give the number of conductors in parallel per phase");
        }
        return sets.filter(count -> count >= 1 && count <= MAX_SETS).orElse(1);
    }
}
