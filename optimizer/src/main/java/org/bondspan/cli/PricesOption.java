package org.bondspan.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.bondspan.io.PriceReader;
import org.bondspan.price.PriceBook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The price book that a command counts with. */
final class PricesOption {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--prices",
            paramLabel = "FILE",
            description = "price book (*.prices.json) in place of the prices of the site file")
    private @Nullable String file;

    /** Empty without the option; throws what the reader throws. */
    Optional<PriceBook> read() {
        if (file == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(PriceReader.read(Path.of(file)));
        } catch (InvalidPathException e) {
            throw new CommandLine.ParameterException(
                    command.commandLine(), "--prices is not the name of a file: " + file);
        }
    }
}
