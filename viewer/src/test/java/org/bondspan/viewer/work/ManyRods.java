package org.bondspan.viewer.work;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A site that takes long to solve. */
public final class ManyRods {
    private ManyRods() {}

    /** The text of a file: a floor of 400 by 400 ft, a service in the middle, and so many rods here and there. */
    public static String site(int count) {
        String rods = IntStream.range(0, count)
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "{\"id\": \"rod-%d\", \"type\": \"rod\", \"rodLength\": 10, \"diameter\": 0.75,"
                                + " \"connections\": [{\"at\": [%d, %d]}]}",
                        i,
                        7 + (i * 137) % 389,
                        5 + (i * 211) % 391))
                .collect(Collectors.joining(", "));
        return String.join(
                "\n",
                "{\"format\": \"bondspan-site/1\", \"name\": \"Many rods\",",
                "\"levels\": [{\"id\": \"L1\", \"outline\": [[0, 0], [400, 0], [400, 400], [0, 400]],",
                "\"open\": {\"height\": 0}}],",
                "\"services\": [{\"id\": \"service\", \"ungrounded\": {\"material\": \"copper\",",
                "\"size\": \"500 kcmil\", \"sets\": 2}, \"connections\": [{\"at\": [200, 200]}]}],",
                "\"electrodes\": [" + rods + "], \"paths\": []}");
    }
}
