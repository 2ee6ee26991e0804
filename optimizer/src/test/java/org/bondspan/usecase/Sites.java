package org.bondspan.usecase;

import java.util.List;
import java.util.Map;

/**
 * Site files with little writing: the text of a test says what matters, words beginning with {@code $} stand for the
 * rest.
 */
public final class Sites {
    private static final Map<String, String> WORDS = Map.of(
            "$rod", "\"type\": \"rod\", \"rodLength\": 8, \"diameter\": 0.625",
            "$water", "\"type\": \"water-pipe\", \"earthContact\": 10",
            "$footing",
                    "\"type\": \"concrete-encased\", \"conductor\": \"rebar\", \"diameter\": 0.5, \"conductorLength\": 20, \"cover\": 2",
            "$ring2", "\"type\": \"ring\", \"conductorSize\": \"2 AWG\", \"conductorLength\": 60, \"depth\": 2.5",
            "$ring4/0", "\"type\": \"ring\", \"conductorSize\": \"4/0 AWG\", \"conductorLength\": 60, \"depth\": 2.5",
            "$inGround", "\"type\": \"in-ground-metal\", \"earthContact\": 10");

    private Sites() {}

    /** One level of that width and depth, its floor open at height 0. */
    public static String openFloor(int width, int depth, String body) {
        return site(
                "{\"id\": \"L1\", \"outline\": %s, \"open\": {\"height\": 0}}".formatted(rectangle(width, depth)),
                body);
    }

    /** One level of that width and depth where copper may run along drawn lines only. */
    public static String linesOnly(int width, int depth, String body) {
        return site("{\"id\": \"L1\", \"outline\": %s}".formatted(rectangle(width, depth)), body);
    }

    /** A site with these levels. */
    public static String site(String levels, String body) {
        return expand("{\"format\": \"bondspan-site/1\", \"levels\": [%s], %s}".formatted(levels, body));
    }

    public static String rectangle(int width, int depth) {
        return List.of(List.of(0, 0), List.of(width, 0), List.of(width, depth), List.of(0, depth))
                .toString();
    }

    /**
     * Replaces {@code $rod}, {@code $water} and the like by the facts of one that qualifies, {@code $at(x, y)} by a
     * connection there, {@code $copper(500 kcmil)} by service conductors of one set, {@code $copper(500 kcmil, 2)} by
     * two.
     */
    private static String expand(String text) {
        String expanded = text.replaceAll("\\$at\\(([^)]*)\\)", "\"connections\": [{\"at\": [$1]}]")
                .replaceAll(
                        "\\$(copper|aluminum)\\(([^,)]*)\\)",
                        "\"ungrounded\": {\"material\": \"$1\", \"size\": \"$2\", \"sets\": 1}")
                .replaceAll(
                        "\\$(copper|aluminum)\\(([^,)]*), ([^)]*)\\)",
                        "\"ungrounded\": {\"material\": \"$1\", \"size\": \"$2\", \"sets\": $3}");
        for (Map.Entry<String, String> word : WORDS.entrySet()) {
            expanded = expanded.replace(word.getKey() + ",", word.getValue() + ",");
        }
        return expanded;
    }
}
