package org.bondspan.report.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import org.bondspan.layout.ExclusionCost;
import org.bondspan.sheet.SheetContent;
import org.bondspan.sheet.SheetSize;
import org.bondspan.site.Level;
import org.bondspan.takeoff.TakeOff;

/**
 * A site with its answer, and how its files are to be called and drawn.
 *
 * @param name begins the name of every file
 * @param costs what each path that may not carry costs in copper
 * @param takeOff of the answer, at the prices of the site
 */
public record RoutedSite(
        String name, SheetContent content, SheetSize sheet, List<ExclusionCost> costs, TakeOff takeOff) {
    /** Each gives some of the files; whoever has more to hand out adds a writer here. */
    private static final List<Function<RoutedSite, List<OutputFile>>> WRITERS =
            List.of(ResultFiles::of, TakeOffFiles::of, SheetFiles::of, ReportFiles::of);

    public RoutedSite {
        costs = List.copyOf(costs);
    }

    /** All files, with names that differ also where case does not count. */
    public List<OutputFile> files() {
        return WRITERS.stream().flatMap(writer -> writer.apply(this).stream()).toList();
    }

    OutputFile file(String ending, Supplier<byte[]> bytes) {
        return new OutputFile(name + "." + ending, bytes);
    }

    /** A word for each level that file names may hold. */
    Map<Level, String> levelWords() {
        Map<Level, String> words = new LinkedHashMap<>();
        Set<String> taken = new TreeSet<>();
        for (Level level : content.site().levels()) {
            String plain = level.id().replaceAll("[^A-Za-z0-9_-]", "-");
            String stem = plain.substring(0, Math.min(40, plain.length()));
            String word = stem;
            for (int i = 2; !taken.add(word.toLowerCase(Locale.ROOT)); i++) {
                word = stem + "~" + i;
            }
            words.put(level, word);
        }
        return words;
    }
}
