package org.bondspan.cli;

import org.bondspan.report.Ink;
import org.bondspan.report.Tone;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Ansi.IStyle;
import picocli.CommandLine.Help.Ansi.Style;

/** Colours for a terminal. */
enum TerminalInk implements Ink {
    COLOURED;

    /** Colour where standard output is a terminal that can, and NO_COLOR does not forbid it. */
    static Ink forStandardOutput() {
        boolean dumb = "dumb".equals(System.getenv("TERM"));
        return Ansi.AUTO.enabled() && !dumb ? COLOURED : Ink.PLAIN;
    }

    @Override
    public String paint(Tone tone, String text) {
        return text.isBlank() ? text : style(tone).on() + text + Style.reset.on();
    }

    private static IStyle style(Tone tone) {
        return switch (tone) {
            case TITLE -> Style.bold;
            case GOOD -> Style.fg_green;
            case BAD -> Style.fg_red;
            case WARNING -> Style.fg_yellow;
            case QUIET -> Style.faint;
        };
    }
}
