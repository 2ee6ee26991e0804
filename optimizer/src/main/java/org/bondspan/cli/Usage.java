package org.bondspan.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What is wrong with how a command was called. */
final class Usage {
    private Usage() {}

    /** To be thrown: the command ends with that message, and where to read more. */
    static ParameterException wrong(CommandSpec command, String message) {
        return new ParameterException(command.commandLine(), message);
    }

    /** The file or directory that an option or argument names; throws where none can be called so. */
    static Path file(CommandSpec command, String argument, String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw wrong(command, argument + " is no name of a file or directory: " + name);
        }
    }
}
