package org.bondspan.cli;

import java.util.concurrent.Callable;
import org.bondspan.io.Schemas;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code schema site|result|proposal|review|prices}. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema (2020-12) of site files, results, proposals, reviews or price books.")
final class SchemaCommand implements Callable<Integer> {
    private final Streams streams;

    @Spec
    private CommandSpec command;

    @Parameters(paramLabel = "FORMAT", description = "site, result, proposal, review or prices")
    private String format;

    SchemaCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        streams.answer(Schemas.find(format).orElseThrow(this::unknown));
        return Exit.CLEAN;
    }

    private ParameterException unknown() {
        return Usage.wrong(
                command,
                "there is no schema of \"" + format + "\": write one of " + String.join(", ", Schemas.names()));
    }
}
