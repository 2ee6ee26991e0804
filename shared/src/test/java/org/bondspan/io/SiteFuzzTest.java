package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever happens to a good file, the reader gives a site, which the published schema accepts too, or says what is
 * wrong, on lines that the file has.
 */
class SiteFuzzTest {
    private static final FuzzedText GOOD = new FuzzedText(Fixtures.text("full.site.json"));

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("org.bondspan.Seeds#seeds")
    void damagedSiteIsReadOrRefusedWithAdvice(long seed) {
        GOOD.isReadOrRefusedWithAdvice(new SplittableRandom(seed), "fuzz.site.json", text -> {
            assertThat(SiteReader.parse(text, "fuzz.site.json")).isNotNull();
            assertThat(SchemaTest.errors("site", text)).as(text).isEmpty();
        });
    }
}
