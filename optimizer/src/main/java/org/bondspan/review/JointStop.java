package org.bondspan.review;

import org.bondspan.units.Length;

/**
 * Where a joint takes in a conductor that does not name it.
 *
 * @param node of the joint
 * @param at how far along the conductor, where it is tapped as it runs by
 */
record JointStop(Node node, Where where, Length at) {
    /** Which part of the conductor. */
    enum Where {
        /** Its copper, short of what its {@code from} end lands on. */
        AT_FROM,
        /** Its copper, short of what its {@code to} end lands on. */
        AT_TO,
        /** What its {@code from} end lands on, and another conductor of the joint too. */
        ON_FROM,
        /** What its {@code to} end lands on, and another conductor of the joint too. */
        ON_TO,
        /** Where it runs by. */
        BETWEEN
    }
}
