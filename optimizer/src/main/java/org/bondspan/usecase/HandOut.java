package org.bondspan.usecase;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.Layout;
import org.bondspan.report.files.OutputDirectory;
import org.bondspan.report.files.OutputFile;
import org.bondspan.report.files.RoutedSite;
import org.bondspan.sheet.SheetContent;
import org.bondspan.sheet.SheetSize;

/** All files of an answer, for whoever builds, buys or signs: result, take-off, plan sheets and report. */
public final class HandOut {
    private final List<OutputFile> files;

    private HandOut(List<OutputFile> files) {
        this.files = files;
    }

    /**
     * How files are called and drawn.
     *
     * @param stem begins the name of every file
     * @param program name and version of the program
     */
    public record Form(String stem, SheetSize sheet, String program) {}

    /** As {@link #of(SiteFile, Layout, Form, RouteLimits)}, without limits. */
    public static HandOut of(SiteFile file, Layout layout, Form form) {
        return of(file, layout, form, RouteLimits.none());
    }

    /** The files of an answer for that site. What each exclusion costs is computed here, within the limits. */
    public static HandOut of(SiteFile file, Layout layout, Form form, RouteLimits limits) {
        SheetContent content = new SheetContent(file.site(), layout, file.digest(), form.program());
        RoutedSite routed = new RoutedSite(
                form.stem(),
                content,
                form.sheet(),
                WhatExclusionsCost.of(file.site(), limits),
                TakeOffSite.of(file.site(), layout));
        return new HandOut(routed.files());
    }

    /** Those of the files that are in the directory already. */
    public List<Path> listExisting(Path directory) {
        return new OutputDirectory(directory).listExisting(files);
    }

    /**
     * Writes all files into the directory, over those of the same names, and gives their paths.
     *
     * @throws IOException when one cannot be written; then none of them is
     */
    public List<Path> write(Path directory) throws IOException {
        return new OutputDirectory(directory).write(files);
    }
}
