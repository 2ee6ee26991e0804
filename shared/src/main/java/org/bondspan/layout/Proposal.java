package org.bondspan.layout;

import java.util.List;
import java.util.Optional;
import org.bondspan.site.Material;
import org.bondspan.site.Position;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * A route that somebody proposes for a site, to be verified. Ids are unique among the conductors; everything named
 * exists on the site: the reader has checked.
 *
 * @param otherSite name of the site that the file is a result of, where it is another than the one to review it for
 */
public record Proposal(
        List<ProposedConductor> conductors,
        List<ProposedLink> links,
        List<ProposedJoint> joints,
        Optional<String> otherSite) {
    public Proposal {
        conductors = List.copyOf(conductors);
        links = List.copyOf(links);
        joints = List.copyOf(joints);
    }

    /** For the site at hand. */
    public Proposal(List<ProposedConductor> conductors, List<ProposedLink> links, List<ProposedJoint> joints) {
        this(conductors, links, joints, Optional.empty());
    }

    /** How a conductor is protected. */
    public enum Enclosure {
        NONE,
        RACEWAY,
        FERROUS_RACEWAY,
        BURIED
    }

    /**
     * A conductor.
     *
     * @param line its run from {@code from} to {@code to}; may be empty
     * @param length stated length, make-up included
     * @param bothEndsBonded a ferrous raceway is bonded to the conductor at both ends
     */
    public record ProposedConductor(
            String id,
            WireSize size,
            Material material,
            End from,
            End to,
            List<Position> line,
            Optional<Length> length,
            Enclosure enclosure,
            boolean exposedToDamage,
            boolean outdoors,
            boolean bothEndsBonded) {
        public ProposedConductor {
            line = List.copyOf(line);
        }
    }

    /** A declared stretch of metal between two ends. */
    public record ProposedLink(String path, End from, End to) {}

    /**
     * A joint between conductors.
     *
     * @param id as ends name it
     * @param place where it is, if stated
     * @param conductors ids as written: of conductors, of installed ones, or of none that the proposal has
     */
    public record ProposedJoint(
            Optional<String> id, Optional<Position> place, List<String> conductors, JointMethod method) {
        public ProposedJoint {
            conductors = List.copyOf(conductors);
        }
    }

    /** How copper is joined to copper. */
    public enum JointMethod {
        EXOTHERMIC,
        IRREVERSIBLE,
        BUSBAR,
        MECHANICAL
    }
}
