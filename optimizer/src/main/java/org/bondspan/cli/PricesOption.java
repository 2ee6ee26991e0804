package org.bondspan.cli;

import java.util.Optional;
import org.bondspan.io.PriceReader;
import org.bondspan.price.PriceBook;
import org.jspecify.annotations.Nullable;
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
        return Optional.ofNullable(file).map(name -> PriceReader.read(Usage.file(command, "--prices", name)));
    }
}
