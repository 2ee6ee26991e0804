package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SamplesTest {
    static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(Run.SAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".site.json"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void thereAreAtLeastSix() throws IOException {
        assertThat(samples()).hasSizeGreaterThanOrEqualTo(6);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everySampleIsExplainedWithoutAViolation(Path sample) {
        Run run = Run.of("check", sample.toString());

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("No violation.", "Example jurisdiction", "SERVICES", "NOT CHECKED", "CAUTIONS");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everySampleHasAProvenLeastRoute(Path sample) {
        Run run = Run.of("route", sample.toString());

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Least copper, proven:", "CONDUCTORS", "Example jurisdiction", "CAUTIONS");
        assertThat(run.out()).doesNotContain("\r", "\u001b", "null", "Optional");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everySampleIsAsThePublishedSchemaOfSitesSays(Path sample) throws IOException {
        assertThat(faults("site", Files.readString(sample))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyResultIsAsThePublishedSchemaOfResultsSays(Path sample) {
        Run run = Run.of("route", "--json", sample.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(faults("result", run.out())).isEmpty();
    }

    @Test
    void theSchemaOfResultsRefusesWhatIsNoResult() {
        assertThat(faults("result", "{\"format\": \"bondspan-result/1\"}")).isNotEmpty();
    }

    static List<Error> faults(String schema, String document) {
        Run run = Run.of("schema", schema);
        assertThat(run.exit()).isZero();
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(run.out())
                .validate(document, InputFormat.JSON);
    }
}
