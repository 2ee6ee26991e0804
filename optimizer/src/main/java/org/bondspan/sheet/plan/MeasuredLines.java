package org.bondspan.sheet.plan;

import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.site.SitePath;
import org.bondspan.units.Length;

/**
 * Lines for copper whose length was measured: where the drawing differs, the plan names them and a schedule states it.
 */
public final class MeasuredLines {
    private MeasuredLines() {}

    /** The measured length of the line; empty where that of the drawing holds. */
    public static Optional<Length> findLength(SitePath.CopperLine copper) {
        return copper.measured().filter(length -> !length.equals(LineLengths.of(copper.line())));
    }
}
