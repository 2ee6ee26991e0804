package org.bondspan.viewer.app;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/**
 * Starts the viewer. Not an {@link Application} itself: from a class path Java refuses to start one. Where there is no
 * display, or a library is missing, it says so in one line instead of a stack trace.
 */
public final class Launcher {
    /** Bad arguments or files. */
    static final int BAD_INPUT = 2;

    /** No display, or a library is missing ({@code EX_UNAVAILABLE} of sysexits.h). */
    static final int UNAVAILABLE = 69;

    private static final String HELP = """
            Usage: %s

            Shows the interconnection with the least copper of a site on its plan, and why it is the least.

              SITE                 the site file to open
              --level ID           show this level first
              --proposal FILE      review this proposal for the site
              --prices FILE        take prices from this book
              --snapshot FILE.png  write a picture of the window and end
              --help               print this and end

            Exit codes: 0 done; 2 bad arguments or files; 69 no display, or a library is missing.""".formatted(StartOptions.USAGE);

    /** Held, because loggers that nobody holds lose their level. It warns of starts from a class path, as ours is. */
    private static final Logger JAVAFX = Logger.getLogger("javafx");

    private Launcher() {}

    /** Returns or ends the process when the window is closed, at once where it cannot be opened. */
    public static void main(String[] arguments) {
        int code = start(List.of(arguments), System.out, System.err);
        if (code != 0) {
            System.exit(code);
        }
    }

    /** The exit code. */
    static int start(List<String> arguments, PrintStream out, PrintStream err) {
        if (arguments.contains("--help")) {
            out.println(HELP);
            return 0;
        }
        try {
            StartOptions.of(arguments);
        } catch (IllegalArgumentException e) {
            err.println("bondspan-viewer: " + e.getMessage());
            return BAD_INPUT;
        }
        // off-screen drawing only; the windows are JavaFX's
        System.setProperty("java.awt.headless", "true");
        JAVAFX.setLevel(Level.SEVERE);
        Optional<String> obstacle = Display.obstacle();
        if (obstacle.isPresent()) {
            err.println("bondspan-viewer: " + obstacle.get());
            return UNAVAILABLE;
        }
        Application.launch(BondspanViewer.class, arguments.toArray(String[]::new));
        BondspanViewer.trouble().forEach(line -> err.println("bondspan-viewer: " + line));
        return BondspanViewer.trouble().isEmpty() ? 0 : BAD_INPUT;
    }
}
