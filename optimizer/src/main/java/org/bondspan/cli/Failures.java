package org.bondspan.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.bondspan.io.InputException;
import org.bondspan.price.MissingPriceException;
import org.bondspan.usecase.NothingFoundException;
import org.bondspan.usecase.TooFineException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns what went wrong into one message on standard error and an exit code. */
final class Failures implements IExecutionExceptionHandler, IParameterExceptionHandler {
    private final Streams streams;
    private final List<String> args;

    Failures(Streams streams, String... args) {
        this.streams = streams;
        this.args = List.of(args);
    }

    @Override
    public int handleParseException(ParameterException failure, String[] args) {
        return usage(failure);
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine commandLine, ParseResult parsed) {
        if (failure instanceof InputException input) {
            streams.tell(input.getMessage() + "\n");
            return Exit.BAD_INPUT;
        }
        if (failure instanceof MissingPriceException missing) {
            streams.tell(missing.getMessage() + "\n"
                    + "State them where the prices are, see schema prices, or route without --objective cost.\n");
            return Exit.BAD_INPUT;
        }
        if (failure instanceof TooFineException fine) {
            streams.tell(commandLine.getCommandName() + ": " + fine.getMessage() + "\n");
            return Exit.BAD_INPUT;
        }
        if (failure instanceof NothingFoundException nothing) {
            streams.tell(commandLine.getCommandName() + ": " + nothing.getMessage() + "\n");
            return Exit.FOUND;
        }
        if (failure instanceof ParameterException wrong) {
            return usage(wrong);
        }
        return failed(failure);
    }

    private int usage(ParameterException failure) {
        String command = failure.getCommandLine().getCommandSpec().qualifiedName();
        String message = failure instanceof UnmatchedArgumentException unmatched
                ? "\"" + unmatched.getUnmatched().get(0) + "\" is not known here"
                : String.valueOf(failure.getMessage()).lines().findFirst().orElse("");
        streams.tell(command + ": " + message + ". See " + command + " --help\n");
        return Exit.BAD_INPUT;
    }

    /** Where standard output leads, a full disk for one, is not the fault of the program. */
    private int unwritable(UnwritableException failure) {
        streams.tell("bondspan: the answer cannot be written to standard output: " + failure.getMessage() + ".\n");
        return Exit.BAD_INPUT;
    }

    /** A bug, or memory that does not suffice. */
    int failed(Throwable failure) {
        if (failure instanceof UnwritableException unwritable) {
            return unwritable(unwritable);
        }
        streams.tell("bondspan failed: " + describe(failure) + "\n");
        if (args.contains(Bondspan.TRACE)) {
            StringWriter stack = new StringWriter();
            failure.printStackTrace(new PrintWriter(stack));
            streams.tell(stack.toString());
        }
        return Exit.FAILED;
    }

    private static String describe(Throwable failure) {
        String what = failure.toString().lines().findFirst().orElse("");
        return failure instanceof OutOfMemoryError
                ? what + ". Give Java more memory, for example -Xmx4g."
                : what + ". This is not the fault of the site file; please report it.";
    }
}
