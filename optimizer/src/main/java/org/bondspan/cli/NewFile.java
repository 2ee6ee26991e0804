package org.bondspan.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A file that a command writes: beside its place first, then renamed, so that it is there whole or not at all. */
record NewFile(CommandSpec command, String option, Path path) {

    static NewFile of(CommandSpec command, String option, String name) {
        if (name.equals(SiteArgument.STANDARD_INPUT)) {
            throw Usage.wrong(command, option + " -: standard output has the answer. Name a file");
        }
        return new NewFile(command, option, Usage.file(command, option, name));
    }

    /** Refuses a file that is there already, or has no directory. */
    void checkIsNew() {
        checkDirectory();
        if (Files.exists(path)) {
            throw refused("exists already. Name another file, or add --force");
        }
    }

    void checkDirectory() {
        if (Files.isDirectory(path)) {
            throw refused("is a directory. Name a file in it");
        }
        if (!Files.isDirectory(directory())) {
            throw refused("lies in a directory that does not exist. Make it first");
        }
        if (!Files.isWritable(directory())) {
            throw refused("lies in a directory that may not be written to. Name a file in another");
        }
    }

    boolean isAt(NewFile other) {
        return path.toAbsolutePath()
                .normalize()
                .equals(other.path.toAbsolutePath().normalize());
    }

    private Path directory() {
        return Optional.ofNullable(path.toAbsolutePath().getParent()).orElse(path.toAbsolutePath());
    }

    void write(byte[] content) {
        try {
            Path beside = Files.createTempFile(directory(), ".bondspan", ".part");
            try {
                Files.write(beside, content);
                Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw refused("cannot be written: " + OutOptions.why(e) + ". Name a file elsewhere");
        }
    }

    private ParameterException refused(String message) {
        return Usage.wrong(command, option + " " + path + ": " + message);
    }
}
