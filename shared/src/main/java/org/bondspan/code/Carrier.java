package org.bondspan.code;

import java.util.List;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;

/**
 * Metal that may carry the interconnection without new copper, with the conditions already judged. There is no carrier
 * of footing rebar, gas pipe or roof deck: the type has no place for one.
 */
public sealed interface Carrier {
    SitePath.MayCarry path();

    /**
     * A continuous frame, any length, any size, 250.68(C)(2).
     *
     * @param inGround connections of qualifying in-ground members: landing places of the frame
     */
    record Frame(StructuralFrame path, List<Connection> inGround) implements Carrier {
        public Frame {
            inGround = List.copyOf(inGround);
        }
    }

    /** A water pipe from its entrance to {@code usable} along it, 250.68(C)(1). */
    record Pipe(WaterPiping path, Length usable) implements Carrier {}

    /** A ring up to its own size, entered at its connections. */
    record Ring(RingPath path, GroundRing electrode) implements Carrier {}
}
