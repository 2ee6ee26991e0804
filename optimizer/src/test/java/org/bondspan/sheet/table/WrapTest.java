package org.bondspan.sheet.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.bondspan.sheet.plan.Typeface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WrapTest {
    static LongStream seeds() {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, 60) : LongStream.of(only);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noLineIsTooWideAndNoLetterIsLost(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String words = IntStream.range(0, random.nextInt(1, 30))
                .mapToObj(i -> IntStream.range(0, random.nextInt(1, 25))
                        .mapToObj(j -> String.valueOf((char) random.nextInt('!', '~')))
                        .collect(Collectors.joining()))
                .collect(Collectors.joining(" "));
        double width = random.nextDouble(20, 200);

        assertThat(Wrap.lines(words, 8, width))
                .allSatisfy(line -> assertThat(Typeface.width(line, 8)).isLessThanOrEqualTo(width));
        assertThat(String.join("", Wrap.lines(words, 8, width)).replace(" ", ""))
                .isEqualTo(words.replace(" ", ""));
    }

    @Test
    void whatTakesMoreLinesIsCutWithDotsThatFit() {
        assertThat(Wrap.lines("one two three", 8, 200, 2)).isEqualTo(List.of("one two three"));
        assertThat(Wrap.lines("aaaa ".repeat(40).strip(), 8, 60, 2))
                .hasSize(2)
                .allSatisfy(line -> assertThat(Typeface.width(line, 8)).isLessThanOrEqualTo(60))
                .satisfies(lines -> assertThat(lines.get(1)).endsWith("a..."));
    }
}
