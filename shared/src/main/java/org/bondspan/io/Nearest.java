package org.bondspan.io;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a misspelt word probably means. */
final class Nearest {
    private Nearest() {}

    /** The candidate that differs in the fewest letters, in no more than a third of them, and not in all. */
    static Optional<String> find(String word, Collection<String> candidates) {
        return candidates.stream()
                .filter(candidate -> distance(word, candidate) <= Math.max(1, candidate.length() / 3))
                .filter(candidate -> distance(word, candidate) < Math.max(word.length(), candidate.length()))
                .min(Comparator.comparingInt(candidate -> distance(word, candidate)));
    }

    /** {@code Perhaps "rodLength" is meant. Known here: id, type}. */
    static String advice(String word, Collection<String> candidates) {
        return advice(word, candidates, "There is none here: add it, or leave this out");
    }

    /** @param withoutAny what to do where there is no candidate at all */
    static String advice(String word, Collection<String> candidates, String withoutAny) {
        String known = candidates.isEmpty() ? withoutAny : "Known here: " + list(candidates);
        return find(word, candidates)
                .map(near -> "Perhaps \"" + near + "\" is meant. " + known)
                .orElse(known);
    }

    private static String list(Collection<String> words) {
        int most = 40;
        String text = words.stream().limit(most).collect(Collectors.joining(", "));
        return words.size() > most ? text + " and " + (words.size() - most) + " more" : text;
    }

    /** Letters to insert, leave out, replace or swap with their neighbour, in any case of letters. */
    private static int distance(String from, String to) {
        String a = from.toLowerCase(Locale.ROOT);
        String b = to.toLowerCase(Locale.ROOT);
        if (Math.abs(a.length() - b.length()) > b.length() / 3 + 1) {
            return Integer.MAX_VALUE;
        }
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int step(int[][] cost, String a, String b, int i, int j) {
        int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(cost[i - 1][j - 1] + same, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
    }
}
