package org.bondspan.network;

import java.util.Optional;
import org.bondspan.code.Landing;
import org.bondspan.units.WireSize;

/**
 * One way to land a conductor on a service or on what must be connected.
 *
 * @param node where the copper comes from, or the metal that brings the connection along
 * @param makeUp in nanometres
 * @param landed size of the installed conductor that already lies there
 */
record Attachment(Landing landing, int node, long makeUp, Optional<WireSize> landed) {}
