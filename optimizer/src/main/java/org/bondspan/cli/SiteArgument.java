package org.bondspan.cli;

import java.nio.file.Path;
import org.bondspan.io.SiteFile;
import org.bondspan.site.Site;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The site file that a command works on. */
final class SiteArgument {
    static final String STANDARD_INPUT = "-";

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Parameters(index = "0", paramLabel = "SITE", description = "site file (*.site.json), or - for standard input")
    private String site;

    boolean isStandardInput() {
        return site.equals(STANDARD_INPUT);
    }

    /** Throws what the reader throws. */
    Site read(Streams streams) {
        return readFile(streams).site();
    }

    /** The site with the fingerprint of its text. Throws what the reader throws. */
    SiteFile readFile(Streams streams) {
        return isStandardInput()
                ? SiteFile.read(streams.in(), "standard input")
                : SiteFile.read(Usage.file(command, "SITE", site));
    }

    /** The name of the file without its endings, for naming others after it; {@code site} for standard input. */
    String stem() {
        Path name = Path.of(site).getFileName();
        String stem = isStandardInput() || name == null ? "" : name.toString().replaceFirst("(\\.site)?\\.json$", "");
        return stem.isEmpty() ? "site" : stem;
    }
}
