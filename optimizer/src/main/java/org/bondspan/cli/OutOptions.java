package org.bondspan.cli;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bondspan.io.SiteFile;
import org.bondspan.layout.Layout;
import org.bondspan.sheet.SheetSize;
import org.bondspan.usecase.Countdown;
import org.bondspan.usecase.HandOut;
import org.jspecify.annotations.Nullable;
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
            description =
                    "also write the result, the take-off (CSV and workbook), a plan sheet of each level and the report into that directory")
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
            throw Usage.wrong(
                    command,
                    (force ? "--force" : "--sheet") + " says how to write files: name their directory with --out");
        }
        size();
        if (directory != null) {
            checkDirectory(path().toAbsolutePath().normalize());
        }
    }

    /** The directory, or the nearest above it that is there, must be one and be open to us. */
    private void checkDirectory(Path place) {
        Path there = place;
        while (!Files.exists(there)) {
            there = Optional.ofNullable(there.getParent()).orElseThrow();
        }
        if (!Files.isDirectory(there)) {
            throw Usage.wrong(
                    command,
                    "--out " + directory + (there.equals(place) ? "" : ": " + there) + " is a file, not a directory");
        }
        if (!Files.isWritable(there)) {
            throw Usage.wrong(
                    command, "--out " + directory + ": " + there + " may not be written to. Name another directory");
        }
    }

    /** Writes the files and tells which; what exclusions cost is computed in the time that is left. */
    void write(SiteFile file, String stem, Layout layout, Countdown countdown, Streams streams) {
        if (directory == null) {
            return;
        }
        HandOut files = HandOut.of(
                file,
                layout,
                new HandOut.Form(stem, size(), Bondspan.Version.name()),
                countdown.left().untold());
        List<Path> existing = files.listExisting(path());
        if (!force && !existing.isEmpty()) {
            throw Usage.wrong(
                    command,
                    existing.get(0) + " is there already"
                            + (existing.size() == 1 ? "" : ", with " + (existing.size() - 1) + " more of the files")
                            + ": write to another directory, or overwrite with --force");
        }
        try {
            files.write(path()).forEach(path -> streams.tell("wrote " + path + "\n"));
        } catch (IOException e) {
            throw Usage.wrong(
                    command,
                    "--out " + directory + ": cannot be written: " + reason(e)
                            + ". Name a directory that you may write to");
        }
    }

    /** What the file system says, with the file that it is about. */
    private static String reason(IOException failure) {
        return failure instanceof FileSystemException at ? at.getFile() + ": " + why(failure) : why(failure);
    }

    /** What the file system says. */
    static String why(IOException failure) {
        if (failure instanceof FileSystemException at) {
            return at.getReason() != null
                    ? at.getReason()
                    : failure.getClass()
                            .getSimpleName()
                            .replaceAll("Exception$", "")
                            .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                            .toLowerCase(Locale.ROOT);
        }
        return String.valueOf(failure.getMessage());
    }

    private SheetSize size() {
        if (sheet == null) {
            return SheetSize.ARCH_D;
        }
        return SheetSize.find(sheet)
                .orElseThrow(() -> Usage.wrong(
                        command,
                        "--sheet " + sheet + ": unknown. Write one of "
                                + Arrays.stream(SheetSize.values())
                                        .map(SheetSize::label)
                                        .collect(Collectors.joining(", "))));
    }

    private Path path() {
        return Usage.file(command, "--out", String.valueOf(directory));
    }
}
