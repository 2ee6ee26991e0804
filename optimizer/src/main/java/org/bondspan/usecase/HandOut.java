package org.bondspan.usecase;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.ExclusionCost;
import org.bondspan.layout.Layout;
import org.bondspan.report.files.OutputDirectory;
import org.bondspan.report.files.OutputFile;
import org.bondspan.report.files.RoutedSite;
import org.bondspan.sheet.SheetContent;
import org.bondspan.sheet.SheetSize;

/** All files of an answer, for whoever builds, buys or signs: result, take-off, plan sheets and report. */
public final class HandOut {
    private final List<OutputFile> files;
    private final List<String> notComputed;

    private HandOut(List<OutputFile> files, List<String> notComputed) {
        this.files = files;
        this.notComputed = notComputed;
    }

    /**
     * How files are called and drawn.
     *
     * @param stem begins the name of every file
     * @param program name and version of the program
     */
    public record Form(String stem, SheetSize sheet, String program) {}

    /** The files of an answer for that site. What each exclusion costs is computed here, within the limits. */
    public static HandOut of(SiteFile file, Layout layout, Form form, RouteLimits limits) {
        SheetContent content = new SheetContent(file.site(), layout, file.digest(), form.program());
        List<ExclusionCost> costs = WhatExclusionsCost.of(file.site(), limits);
        List<String> notComputed = costs.stream()
                .filter(cost -> cost.outcome() == ExclusionCost.Outcome.NOT_COMPUTED)
                .map(ExclusionCost::path)
                .toList();
        return new HandOut(new RoutedSite(form.stem(), content, form.sheet(), costs).files(), notComputed);
    }

    /** The same files, for one who may give up: asked before each is made; on true nothing is written at all. */
    public HandOut unless(BooleanSupplier givenUp) {
        List<OutputFile> heeding = files.stream()
                .map(file -> new OutputFile(file.name(), () -> {
                    if (givenUp.getAsBoolean()) {
                        throw new CancellationException("given up before " + file.name());
                    }
                    return file.content().get();
                }))
                .toList();
        return new HandOut(heeding, notComputed);
    }

    /** Paths for which the report cannot say what their exclusion costs. */
    public List<String> notComputed() {
        return notComputed;
    }

    /** Those of the files that are in the directory already. */
    public List<Path> listExisting(Path directory) {
        return new OutputDirectory(directory).listExisting(files);
    }

    /**
     * Writes all files into the directory, over those of the same names, and gives their paths.
     *
     * @throws IOException when one cannot be written; then none of them is
     * @throws CancellationException when it is given up; then none of them is written either
     */
    public List<Path> write(Path directory) throws IOException {
        return new OutputDirectory(directory).write(files);
    }
}
