package org.bondspan.report.files;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bondspan.io.LayoutWriter;

/** The result for other programs. */
final class ResultFiles {
    private ResultFiles() {}

    static List<OutputFile> of(RoutedSite routed) {
        return List.of(routed.file(
                "result.json",
                () -> LayoutWriter.toJson(routed.content().layout()).getBytes(StandardCharsets.UTF_8)));
    }
}
