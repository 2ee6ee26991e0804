package org.bondspan.layout;

import java.util.Optional;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/** Where a conductor or a link begins or ends. */
public sealed interface End {
    record AtService(String service, Optional<String> connection) implements End {}

    record AtElectrode(String electrode, Optional<String> connection) implements End {}

    /** On a frame, pipe, ring or installed conductor; {@code distance} along its line where it has one. */
    record OnPath(String path, Optional<Length> distance) implements End {}

    /** A tap on another conductor, {@code at} measured from that conductor's {@code from} end. */
    record OnConductor(String conductor, Length at) implements End {}

    record AtJoint(String joint) implements End {}

    record AtPlace(Position place) implements End {}
}
