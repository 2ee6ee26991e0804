package org.bondspan.report.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A directory that files go to: first all of them beside their places, then each to its place by renaming. */
public final class OutputDirectory {
    private final Path directory;

    public OutputDirectory(Path directory) {
        this.directory = directory;
    }

    /** Those of the files that are there already. */
    public List<Path> listExisting(List<OutputFile> files) {
        return files.stream()
                .map(file -> directory.resolve(file.name()))
                .filter(Files::exists)
                .toList();
    }

    /**
     * Writes all files and gives their paths. Files of the same names are replaced. Until all are written whole beside
     * their places, nothing is replaced; when that fails, as on a full disk, nothing is left behind, nor a directory
     * that was made for them.
     */
    public List<Path> write(List<OutputFile> files) throws IOException {
        List<Path> made = missingDirectories();
        boolean isDone = false;
        try {
            Files.createDirectories(directory);
            List<Path> written = writeInto(files);
            isDone = true;
            return written;
        } finally {
            if (!isDone) {
                removeEmpty(made);
            }
        }
    }

    /** Up to the first that others have put something into meanwhile. */
    private static void removeEmpty(List<Path> directories) throws IOException {
        try {
            for (Path each : directories) {
                Files.deleteIfExists(each);
            }
        } catch (DirectoryNotEmptyException e) {
            // Not ours alone any more: it stays, and so do those above it.
        }
    }

    /** The directory and those above it as far as they are not there yet, the deepest first. */
    private List<Path> missingDirectories() {
        return Stream.iterate(
                        directory.toAbsolutePath().normalize(),
                        path -> path != null && Files.notExists(path),
                        Path::getParent)
                .toList();
    }

    private List<Path> writeInto(List<OutputFile> files) throws IOException {
        for (OutputFile file : files) {
            if (Files.isDirectory(directory.resolve(file.name()))) {
                throw new FileSystemException(file.name(), null, "is a directory");
            }
        }
        List<Path> beside = new ArrayList<>();
        try {
            for (OutputFile file : files) {
                Path path = directory.resolve(
                        "." + file.name() + "." + ProcessHandle.current().pid() + ".part");
                beside.add(path);
                Files.write(path, file.content().get(), StandardOpenOption.CREATE_NEW);
            }
            List<Path> written = new ArrayList<>();
            for (int i = 0; i < files.size(); i++) {
                Path place = directory.resolve(files.get(i).name());
                rename(beside.get(i), place);
                written.add(place);
            }
            return written;
        } finally {
            for (Path path : beside) {
                Files.deleteIfExists(path);
            }
        }
    }

    private static void rename(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
