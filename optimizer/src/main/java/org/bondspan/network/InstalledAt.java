package org.bondspan.network;

import org.bondspan.units.WireSize;

/** An installed conductor that lies at a place. */
record InstalledAt(String path, WireSize size) {
    static InstalledAt largerOf(InstalledAt a, InstalledAt b) {
        return a.size().isAtLeast(b.size()) ? a : b;
    }
}
