package org.bondspan.review;

import org.bondspan.code.Need;
import org.bondspan.code.Obligation;
import org.bondspan.code.Table25066;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;
import org.bondspan.site.Service;
import org.bondspan.units.WireSize;

/** A service and something that must be connected with it. */
record Pair(Service service, Obligation obligation) {
    /** The size that a conductor of that material needs toward the thing, from services with that area in all. */
    static WireSize need(Obligation obligation, Material ofService, long area, Material ofConductor) {
        if (ofConductor == Material.COPPER) {
            return obligation.need().size(ofService, area);
        }
        WireSize table = Table25066.rowFor(ofService, area).aluminum();
        // 250.66(A) limits aluminum to rods, pipes and plates too; (B) and (C) speak of copper only
        return obligation.need().equals(Need.DRIVEN) ? WireSize.smallerOf(WireSize.AWG_4, table) : table;
    }

    WireSize need(Material ofConductor) {
        return need(obligation, material(), service.ungrounded().area(), ofConductor);
    }

    private Material material() {
        return service.ungrounded().material();
    }

    boolean isServedBy(ProposedConductor conductor) {
        return conductor.size().isAtLeast(need(conductor.material()));
    }

    String describe() {
        return service.id() + " to " + obligation.name();
    }
}
