package org.bondspan.review;

import java.util.EnumSet;
import org.bondspan.code.Need;
import org.bondspan.code.Obligation;
import org.bondspan.code.Table25066;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;
import org.bondspan.site.Service;
import org.bondspan.units.WireSize;

/** A service and something that must be connected with it. */
final class Pair {
    private final Service service;
    private final Obligation obligation;
    private final WireSize copper;
    private final WireSize aluminum;

    Pair(Service service, Obligation obligation) {
        this.service = service;
        this.obligation = obligation;
        Material material = service.ungrounded().material();
        long area = service.ungrounded().area();
        this.copper = need(obligation, material, area, Material.COPPER);
        this.aluminum = need(obligation, material, area, Material.ALUMINUM);
    }

    /** The size that a conductor of that material needs toward the thing, from services with that area in all. */
    static WireSize need(Obligation obligation, Material ofService, long area, Material ofConductor) {
        if (ofConductor == Material.COPPER) {
            return obligation.need().size(ofService, area);
        }
        WireSize table = Table25066.rowFor(ofService, area).aluminum();
        // 250.66(A) limits aluminum to rods, pipes and plates too; (B) and (C) speak of copper only
        return obligation.need().equals(Need.DRIVEN) ? WireSize.smallerOf(WireSize.AWG_4, table) : table;
    }

    Service service() {
        return service;
    }

    Obligation obligation() {
        return obligation;
    }

    WireSize need(Material ofConductor) {
        return ofConductor == Material.COPPER ? copper : aluminum;
    }

    /** By how many sizes a conductor is too small for the pair; 0 where it is large enough. */
    int shortfall(ProposedConductor conductor) {
        return shortfall(conductor.size(), need(conductor.material()));
    }

    /** Likewise of metal with a capacity in copper. */
    int shortfall(WireSize capacity) {
        return shortfall(capacity, copper);
    }

    private static int shortfall(WireSize size, WireSize need) {
        return size.isAtLeast(need) ? 0 : EnumSet.range(size, need).size() - 1;
    }

    String describe() {
        return service.id() + " to " + obligation.name();
    }
}
