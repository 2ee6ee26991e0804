package org.bondspan.layout;

import java.util.List;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/**
 * The shortest run of new copper between two places, as permitted by the site.
 *
 * @param line its positions in order, at least one; its ends may lie beside the places asked for, where copper may run
 * @param length along it, measured lines at their stated lengths, without make-up
 */
public record MeasuredWay(List<Position> line, Length length) {
    public MeasuredWay {
        line = List.copyOf(line);
    }
}
