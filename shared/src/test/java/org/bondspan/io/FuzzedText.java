package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A good file, to be damaged at random and read. */
final class FuzzedText {
    private static final Pattern TOKEN = Pattern.compile("\"[^\"]*\"|-?[0-9.]+|true|false|[\\[\\]{},:]|\\s+");
    private static final Pattern WORD = Pattern.compile("\".*|-?[0-9.]+|true|false");
    private static final List<String> STRANGERS = List.of(
            "null",
            "true",
            "{}",
            "[]",
            "-1",
            "0",
            "1e400",
            "1e-400",
            "-0.0",
            "\"\"",
            "\"L1\"",
            "\"\\u0000\"",
            "1e8",
            "[[]]",
            ",",
            "NaN");
    private final List<String> good = new ArrayList<>();

    FuzzedText(String text) {
        Matcher matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            good.add(matcher.group());
        }
        assertThat(String.join("", good)).isEqualTo(text);
    }

    /** Twenty damaged texts, each of them accepted by its reader or refused with advice on lines that it has. */
    void isReadOrRefusedWithAdvice(SplittableRandom random, String file, Consumer<String> reader) {
        for (int round = 0; round < 20; round++) {
            String text = damaged(random);
            try {
                reader.accept(text);
            } catch (InputException e) {
                checkAdvice(e, file, (int) text.lines().count());
            }
        }
    }

    private static void checkAdvice(InputException refused, String file, int lines) {
        assertThat(refused.problems()).isNotEmpty().allSatisfy(problem -> {
            assertThat(problem.file()).isEqualTo(file);
            assertThat(problem.line()).isBetween(1, lines + 1);
            assertThat(problem.message()).isNotBlank();
            assertThat(problem.advice()).isNotBlank();
            assertThat(problem.toString()).doesNotContain("\n");
        });
        assertThat(refused.problems()).isSortedAccordingTo((a, b) -> Integer.compare(a.line(), b.line()));
    }

    /** One text in four is damaged anywhere, the others in their names and values, so that they mostly stay JSON. */
    private String damaged(SplittableRandom random) {
        List<String> tokens = new ArrayList<>(good);
        boolean anywhere = random.nextInt(4) == 0;
        int damages = 1 + random.nextInt(3);
        for (int i = 0; i < damages; i++) {
            int at = random.nextInt(tokens.size() - 1);
            if (anywhere) {
                damageAnywhere(tokens, at, random);
            } else {
                damageWord(tokens, at, random);
            }
        }
        String text = String.join("", tokens);
        return anywhere && random.nextInt(4) == 0 ? text.substring(0, random.nextInt(text.length())) : text;
    }

    private static void damageAnywhere(List<String> tokens, int at, SplittableRandom random) {
        switch (random.nextInt(3)) {
            case 0 -> tokens.remove(at);
            case 1 -> tokens.set(at, STRANGERS.get(random.nextInt(STRANGERS.size())));
            default -> tokens.set(at, tokens.get(random.nextInt(tokens.size())));
        }
    }

    private static void damageWord(List<String> tokens, int from, SplittableRandom random) {
        int at = from;
        while (!WORD.matcher(tokens.get(at)).matches()) {
            at = (at + 1) % tokens.size();
        }
        boolean isName = at + 1 < tokens.size() && tokens.get(at + 1).equals(":");
        switch (random.nextInt(isName ? 2 : 4)) {
            case 0 -> swapLikeTokens(tokens, at, random);
            case 1 -> tokens.set(at, tokens.get(at).replaceFirst("[a-z1]", "2"));
            case 2 -> tokens.set(at, STRANGERS.get(random.nextInt(STRANGERS.size())));
            default -> tokens.set(at, Character.isDigit(tokens.get(at).charAt(0)) ? "-" + tokens.get(at) : "\"E1\"");
        }
    }

    /** A text for a text, a number for a number. */
    private static void swapLikeTokens(List<String> tokens, int at, SplittableRandom random) {
        char kind = tokens.get(at).charAt(0);
        List<Integer> like = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            char other = tokens.get(i).charAt(0);
            if (other == kind || (Character.isDigit(other) && Character.isDigit(kind))) {
                like.add(i);
            }
        }
        int with = like.get(random.nextInt(like.size()));
        String kept = tokens.get(at);
        tokens.set(at, tokens.get(with));
        tokens.set(with, kept);
    }
}
