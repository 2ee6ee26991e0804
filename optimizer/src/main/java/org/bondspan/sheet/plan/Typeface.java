package org.bondspan.sheet.plan;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The one face of all drawings, Liberation Sans, whose widths are those of the usual sans serif faces. Lengths in
 * points.
 */
public final class Typeface {
    /** Name of the family. */
    public static final String FAMILY = "Liberation Sans";

    /** What to say where {@link #lacksSomeOf} something. */
    public static final String LACKING = "Characters that the typeface lacks stand as question marks.";

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\u0080-\\u009f\\p{Cf}]");
    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final float EM = 1000f;
    private static final int KEPT = 0x250;
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final Font FONT = load();
    private static final double[] WIDTHS = widths();

    private Typeface() {}

    /** The font file, for embedding; the caller closes it. */
    public static InputStream open() {
        InputStream in = PDDocument.class.getResourceAsStream(FILE);
        if (in == null) {
            throw new IllegalStateException("no font file " + FILE);
        }
        return in;
    }

    private static Font load() {
        try (InputStream in = open()) {
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(EM);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the font file cannot be read", e);
        }
    }

    private static double[] widths() {
        double[] widths = new double[KEPT];
        for (char c = ' '; c < KEPT; c++) {
            widths[c] = measure(String.valueOf(c));
        }
        return widths;
    }

    private static double measure(String text) {
        return FONT.createGlyphVector(CONTEXT, text).getLogicalBounds().getWidth() / EM;
    }

    /** On one line; control characters and what the face lacks become {@code ?}. */
    public static String printable(String words) {
        if (isPlain(words)) {
            return words;
        }
        String plain =
                CONTROL.matcher(SPACE.matcher(words.strip()).replaceAll(" ")).replaceAll("?");
        StringBuilder text = new StringBuilder();
        plain.codePoints().forEach(c -> text.appendCodePoint(FONT.canDisplay(c) && c < 0x10000 ? c : '?'));
        return text.toString();
    }

    /** Whether some character of the words will stand as {@code ?}. */
    public static boolean lacksSomeOf(String words) {
        return countQuestions(printable(words)) > countQuestions(words);
    }

    private static long countQuestions(String words) {
        return words.chars().filter(c -> c == '?').count();
    }

    /** Most words are: letters of ASCII, with single blanks between them. */
    private static boolean isPlain(String words) {
        boolean afterBlank = true;
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            if (c < ' ' || c > '~' || (c == ' ' && afterBlank)) {
                return false;
            }
            afterBlank = c == ' ';
        }
        return words.isEmpty() || !afterBlank;
    }

    /** Width of a printable text. */
    public static double width(String text, double size) {
        double width = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            width += c < KEPT ? WIDTHS[c] : measure(String.valueOf(c));
        }
        return width * size;
    }

    /** Height of a capital letter. */
    public static double capital(double size) {
        return 0.69 * size;
    }

    /** From one line of text to the next. */
    public static double leading(double size) {
        return 1.18 * size;
    }

    /** Draws a text from its left end on its base line. */
    public static void draw(Graphics2D g, String text, double x, double y, double size) {
        if (!text.isEmpty()) {
            g.setFont(FONT.deriveFont((float) size));
            g.drawString(text, (float) x, (float) y);
        }
    }

    /** The text, or its beginning with three dots where it is wider. */
    public static String fitted(String text, double size, double width) {
        return width(text, size) <= width ? text : cut(text, size, width);
    }

    /** As much of the beginning of the text as there is room for before three dots. */
    public static String cut(String text, double size, double width) {
        int end = text.length();
        while (end > 1 && width(text.substring(0, end) + "...", size) > width) {
            end--;
        }
        return text.substring(0, end) + "...";
    }
}
