package org.bondspan.benchmark;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Runs the parts named on the command line, or all. The first argument is the folder for results, the second the most
 * seconds for one instance, where a part has such a limit.
 */
public final class Benchmarks {
    private Benchmarks() {}

    public static void main(String[] args) {
        Report report = new Report(Path.of(args[0]), System.out);
        int seconds = Integer.parseInt(args[1]);
        Map<String, Consumer<Report>> parts = new LinkedHashMap<>();
        parts.put("typical", TypicalBuilding::run);
        parts.put("footprint", LargeFootprint::runHundredThousand);
        parts.put("million", LargeFootprint::runMillion);
        parts.put("growth", LargeFootprint::runGrowth);
        parts.put("public", out -> PublicSets.runSmall(out, seconds));
        parts.put("many", out -> PublicSets.runMany(out, seconds));
        parts.put("integer-program", out -> IntegerProgramPeer.run(out, seconds));
        parts.put("approximation", ApproximationPeer::run);
        List<String> asked = args.length < 3 || args[2].equals("all")
                ? List.copyOf(parts.keySet())
                : List.of(args[2].split(",", -1));
        report.say(Machine.facts());
        for (String name : asked) {
            Consumer<Report> part = parts.get(name);
            if (part == null) {
                throw new IllegalArgumentException(
                        "no part " + name + "; there are " + String.join(", ", parts.keySet()));
            }
            part.accept(report);
        }
    }
}
