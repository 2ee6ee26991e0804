package org.bondspan.sheet;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bondspan.sheet.plan.ElectrodeLetters;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.LinePainter;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Pen;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.Symbol;
import org.bondspan.sheet.plan.SymbolPainter;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.plan.Typeface;
import org.bondspan.sheet.table.Band;
import org.bondspan.sheet.table.Block;
import org.bondspan.sheet.table.Painted;
import org.bondspan.sheet.table.SchedulePainter;

/** Explains the lines and symbols that occur in a picture, and no others. */
final class Legend {
    private static final double SAMPLE = 54;

    private final double size;

    private Legend(double size) {
        this.size = size;
    }

    static Block of(Picture picture, SchedulePainter painter) {
        Legend legend = new Legend(painter.size());
        return new Block(List.of(painter.title("Legend")), legend.rows(picture));
    }

    private List<Band> rows(Picture picture) {
        Map<LineKind, Pen> lines = new LinkedHashMap<>();
        Set<Symbol> symbols = EnumSet.noneOf(Symbol.class);
        Set<ElectrodeLetters> letters = new TreeSet<>();
        for (LineKind kind : kinds()) {
            picture.items().stream()
                    .filter(item -> item instanceof Item.Run run && run.kind() == kind)
                    .findFirst()
                    .ifPresent(item -> lines.put(kind, ((Item.Run) item).pen()));
        }
        for (Item item : picture.items()) {
            if (item instanceof Item.Mark mark) {
                symbols.add(mark.symbol());
                if (!mark.letters().isEmpty()) {
                    letters.add(ElectrodeLetters.valueOf(mark.letters()));
                }
            }
        }
        List<Band> rows = new ArrayList<>();
        lines.forEach((kind, pen) -> rows.add(line(kind, pen)));
        symbols.forEach(symbol -> rows.add(symbol(symbol, "", symbol.words())));
        letters.forEach(letter -> rows.add(symbol(Symbol.ELECTRODE, letter.name(), letter.words())));
        return rows;
    }

    /** Conductors first: they are what the sheet is about. */
    private static List<LineKind> kinds() {
        return Stream.of(LineKind.values())
                .sorted(Comparator.comparing(kind -> kind.compareTo(LineKind.GROUNDING_ELECTRODE_CONDUCTOR) < 0))
                .toList();
    }

    private Band line(LineKind kind, Pen pen) {
        return row(
                kind.words(),
                0,
                (g, x, y) -> new LinePainter(g, Palette.LIGHT, size)
                        .paint(
                                pen,
                                List.of(new Point2D.Double(x, y), new Point2D.Double(x + SAMPLE, y)),
                                new Rectangle2D.Double(x, y - 10, SAMPLE, 20)));
    }

    private Band symbol(Symbol symbol, String letters, String words) {
        return row(
                words,
                symbol.size() * Symbol.scale(size),
                (g, x, y) -> new SymbolPainter(g, Palette.LIGHT, size)
                        .paint(symbol, letters, new Point2D.Double(x + SAMPLE / 2, y)));
    }

    private Band row(String words, double largest, Painted.Painter sample) {
        double height = Math.max(1.7 * size, largest + 1);
        return new Painted(height, (g, x, y) -> {
            sample.paint(g, x, y + height / 2);
            g.setColor(Palette.LIGHT.of(Tint.INK));
            Typeface.draw(g, words, x + SAMPLE + 10, y + height / 2 + Typeface.capital(size) / 2, size);
        });
    }
}
