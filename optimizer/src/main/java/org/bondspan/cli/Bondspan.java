package org.bondspan.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.bondspan.site.CodeEdition;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program {@code bondspan}. */
@Command(
        name = "bondspan",
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "Interconnects the grounding electrodes and services of a building under NFPA 70 with the least copper.",
            ""
        },
        footer = {
            "",
            "Exit codes: 0 done; 1 impossible, or a violation remains; 2 bad input or usage; 70 bondspan failed.",
            "Example: bondspan route samples/hall-timber.site.json"
        },
        versionProvider = Bondspan.Version.class)
@SuppressWarnings("UnusedVariable") // the parser itself acts on help and version, Failures on trace
public final class Bondspan implements Runnable {
    static final String TRACE = "--trace";

    @Spec
    private CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "print this help")
    private boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "print the version")
    private boolean version;

    @Option(names = TRACE, scope = ScopeType.INHERIT, description = "print the stack trace if bondspan itself fails")
    private boolean trace;

    private Bondspan() {}

    public static void main(String... args) {
        Streams streams = new Streams(
                System.in,
                new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err),
                TerminalInk.forStandardOutput());
        Interrupt interrupt = Interrupt.watch();
        int exit = run(streams, Watch.onTerminal(interrupt), args);
        interrupt.finish(exit);
        System.exit(exit);
    }

    /** Runs one command that nobody watches, and gives its exit code. */
    static int run(Streams streams, String... args) {
        return run(streams, Watch.NOBODY, args);
    }

    /** Runs one command and gives its exit code. */
    static int run(Streams streams, Watch watch, String... args) {
        Failures failures = new Failures(streams, args);
        StringWriter help = new StringWriter();
        CommandLine commandLine = new CommandLine(new Bondspan())
                .addSubcommand(new CheckCommand(streams))
                .addSubcommand(new RouteCommand(streams, watch))
                .addSubcommand(new ReviewCommand(streams, watch))
                .addSubcommand(new TakeOffCommand(streams, watch))
                .addSubcommand(new SchemaCommand(streams))
                .setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setOut(new PrintWriter(help))
                .setParameterExceptionHandler(failures)
                .setExecutionExceptionHandler(failures)
                .setUsageHelpWidth(100);
        try {
            int exit = commandLine.execute(args);
            streams.answer(help.toString());
            return exit;
        } catch (VirtualMachineError | UnwritableException failure) {
            return failures.failed(failure);
        }
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Missing command: check, route, review, takeoff or schema");
    }

    /** The version that the jar was built as. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String editions = Arrays.stream(CodeEdition.values())
                    .map(edition -> String.valueOf(edition.year()))
                    .collect(Collectors.joining(", "));
            return new String[] {name(), "NFPA 70 editions " + editions};
        }

        /** Name and version, as files bear them. */
        static String name() {
            String version = Bondspan.class.getPackage().getImplementationVersion();
            return "Bondspan " + (version == null ? "(not packaged)" : version);
        }
    }
}
