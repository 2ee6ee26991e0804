package org.bondspan.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.Layout;
import org.bondspan.report.files.OutputDirectory;
import org.bondspan.report.files.OutputFile;
import org.bondspan.report.files.RoutedSite;
import org.bondspan.sheet.SheetContent;
import org.bondspan.sheet.SheetSize;
import org.bondspan.usecase.WhatExclusionsCost;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the files of an answer into a directory, where one is asked for. */
final class OutOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "also write the result, a plan sheet of each level and the report into that directory")
    private @Nullable String directory;

    @Option(
            names = "--sheet",
            paramLabel = "arch-d|ansi-b|letter",
            description = "size of the plan sheets; arch-d where it is left out")
    private @Nullable String sheet;

    @Option(names = "--force", description = "overwrite files that are there already")
    private boolean force;

    /** Whatever is wrong with the options, before anything is computed. */
    void check() {
        if (directory == null && (sheet != null || force)) {
            throw usage((force ? "--force" : "--sheet") + " says how to write files: name their directory with --out");
        }
        size();
        if (directory != null && Files.exists(path()) && !Files.isDirectory(path())) {
            throw usage("--out " + directory + " is a file, not a directory");
        }
    }

    /** Writes the files and tells which. */
    void write(SiteFile file, String stem, Layout layout, Streams streams) {
        if (directory == null) {
            return;
        }
        SheetContent content = new SheetContent(file.site(), layout, file.digest(), Bondspan.Version.name());
        RoutedSite routed = new RoutedSite(stem, content, size(), WhatExclusionsCost.of(file.site()));
        OutputDirectory out = new OutputDirectory(path());
        List<OutputFile> files = routed.files();
        List<Path> existing = out.listExisting(files);
        if (!force && !existing.isEmpty()) {
            throw usage(existing.get(0) + " is there already"
                    + (existing.size() == 1 ? "" : ", with " + (existing.size() - 1) + " more of the files")
                    + ": write to another directory, or overwrite with --force");
        }
        try {
            out.write(files).forEach(path -> streams.tell("wrote " + path + "\n"));
        } catch (IOException e) {
            throw new UnwritableException(e);
        }
    }

    private SheetSize size() {
        if (sheet == null) {
            return SheetSize.ARCH_D;
        }
        return SheetSize.find(sheet)
                .orElseThrow(() -> usage("--sheet " + sheet + ": unknown. Write one of "
                        + Arrays.stream(SheetSize.values())
                                .map(SheetSize::label)
                                .collect(Collectors.joining(", "))));
    }

    private Path path() {
        try {
            return Path.of(String.valueOf(directory));
        } catch (InvalidPathException e) {
            throw usage("--out is not the name of a directory: " + directory);
        }
    }

    private CommandLine.ParameterException usage(String message) {
        return new CommandLine.ParameterException(command.commandLine(), message);
    }
}
