package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.node.ObjectNode;

class ReviewCommandTest {
    private static final String SITE = Run.sample("hall-timber");

    private static String proposal(String name) {
        return Run.SAMPLES.resolve("hall-timber." + name + ".proposal.json").toString();
    }

    static Stream<Path> samples() throws IOException {
        return SamplesTest.samples().stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyAnswerOfRouteComplies(Path sample, @TempDir Path directory) throws IOException {
        Path result = directory.resolve("answer.result.json");
        Files.writeString(result, Run.of("route", "--json", sample.toString()).out());
        Run review = Run.of("review", sample.toString(), result.toString());

        assertThat(review.err()).isEmpty();
        assertThat(review.out()).contains("Complies.", "difference").doesNotContain("CAUTION length", "geometry");
        assertThat(review.exit()).isZero();
    }

    /** The building may have been renamed: its result is reviewed all the same. */
    @Test
    void aResultThatNamesAnotherSiteIsReviewedWithACaution(@TempDir Path directory) throws IOException {
        Path result = directory.resolve("answer.result.json");
        Files.writeString(result, Run.of("route", "--json", SITE).out());
        String renamed = Files.readString(Path.of(SITE)).replaceFirst("\"name\": \"[^\"]*\"", "\"name\": \"Hall B\"");
        Run review = Run.withInput(renamed, "review", "-", result.toString());

        assertThat(review.exit()).isZero();
        assertThat(review.out())
                .contains("Complies.", "CAUTION site Hall B: The result names another site, \"Quillmarsh Depot,");
    }

    /** Its ids are others: one message, not one for each. */
    @Test
    void aResultOfAnotherSiteThatDoesNotFitIsOneMessage(@TempDir Path directory) throws IOException {
        Path result = directory.resolve("answer.result.json");
        Files.writeString(
                result, Run.of("route", "--json", Run.sample("plant-block")).out());
        Run review = Run.of("review", Run.sample("hall-steel"), result.toString());

        assertThat(review.exit()).isEqualTo(2);
        assertThat(review.out()).isEmpty();
        assertThat(review.err()).hasLineCount(1).contains(":3: site: the result is of another site, ");
    }

    /** 1031 ft of 3/0, 45.5 ft of 6 AWG and 25 ft of 4 AWG at the weights of ASTM B8: 541.07 lb. */
    @Test
    void theSoundProposalCompliesWithALittleMoreCopperThanTheLeast() {
        Run review = Run.of("review", SITE, proposal("sound"));

        assertThat(review.exit()).isZero();
        assertThat(review.out())
                .contains("Complies. No finding is a violation. It takes 541.07 lb of copper; the least is 538.98 lb.")
                .contains("2.09 lb (0.39 %)");
    }

    /** By hand the least weighs 538.98 lb, see {@link #theSoundProposalCompliesWithALittleMoreCopperThanTheLeast}. */
    @ParameterizedTest
    @ValueSource(strings = {"sound", "faulty"})
    void aStopEndsTheSearchForTheLeastAndChangesNothingElse(String name) throws IOException {
        ObjectNode whole = review(Watch.NOBODY, name);
        ObjectNode stopped = review(new Watch(false, () -> true), name);

        assertThat(whole.get("leastStatus").asString()).isEqualTo("least");
        assertThat(whole.get("lowerBound").asDouble()).isEqualTo(538.98);
        assertThat(whole.get("gapPercent").asDouble()).isZero();
        assertThat(stopped.get("leastStatus").asString()).isEqualTo("best-found");
        assertThat(stopped.get("least").asDouble()).isGreaterThanOrEqualTo(538.98);
        assertThat(stopped.get("lowerBound").asDouble()).isLessThan(538.98);
        assertThat(stopped.get("gapPercent").asDouble()).isPositive();
        assertThat(faults("review", stopped.toString())).isEmpty();
        List<String> ofTheSearch = List.of("least", "leastStatus", "lowerBound", "gapPercent");
        assertThat(stopped.remove(ofTheSearch)).isEqualTo(whole.remove(ofTheSearch));
    }

    private static ObjectNode review(Watch watch, String name) {
        return (ObjectNode) new ObjectMapper()
                .readTree(Run.watched(watch, "review", "--json", SITE, proposal(name))
                        .out());
    }

    @Test
    void theFaultyProposalHasTenFaults() {
        Run review = Run.of("review", SITE, proposal("faulty"));

        assertThat(review.exit()).isEqualTo(1);
        List<String> findings = review.out()
                .lines()
                .filter(line -> line.startsWith("  VIOLATION ") || line.startsWith("  CAUTION "))
                .map(line -> line.strip().replaceAll(":.*", ""))
                .toList();
        assertThat(findings)
                .containsExactlyInAnyOrder(
                        "VIOLATION 250.64(A) near",
                        "VIOLATION 250.53(C) perimeter-footing",
                        "VIOLATION 250.53(C) footing-northeast",
                        "VIOLATION 250.68(C)(1) water-main",
                        "VIOLATION 310.10(G) far-1",
                        "VIOLATION 250.64(B) rod-feed",
                        "VIOLATION 250.66 rod-feed",
                        "VIOLATION 250.64(C) rod-feed",
                        "VIOLATION 250.64(E) rod-tail",
                        "CAUTION length near");
    }

    @ParameterizedTest
    @ValueSource(strings = {"sound", "faulty"})
    void proposalsAndReviewsAreAsTheirPublishedSchemasSay(String name) throws IOException {
        assertThat(faults("proposal", Files.readString(Path.of(proposal(name)))))
                .isEmpty();
        Run review = Run.of("review", "--json", SITE, proposal(name));

        assertThat(review.err()).isEmpty();
        assertThat(faults("review", review.out())).isEmpty();
        assertThat(review.out()).contains("\"verdict\": \"" + (review.exit() == 0 ? "complies" : "violates") + "\"");
        assertThat(review.out()).contains("\"least\": 538.98,");
    }

    private static List<com.networknt.schema.Error> faults(String schema, String document) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Run.of("schema", schema).out())
                .validate(document, InputFormat.JSON);
    }

    @Test
    void whatIsCheckedIsListedWithoutAnyFile() {
        Run list = Run.of("review", "--list");

        assertThat(list.exit()).isZero();
        assertThat(list.out()).contains("310.10(G)", "250.53(C)", "footing rebar joins nothing to anything");
    }

    @Test
    void anUnknownThingInTheProposalIsBadInput(@TempDir Path directory) throws IOException {
        Path proposal = directory.resolve("unknown.proposal.json");
        Files.writeString(proposal, Files.readString(Path.of(proposal("sound"))).replace("\"rod-2\"", "\"rod-9\""));
        Run review = Run.of("review", SITE, proposal.toString());

        assertThat(review.exit()).isEqualTo(2);
        assertThat(review.out()).isEmpty();
        assertThat(review.err()).contains("unknown.proposal.json:", "rod-9");
    }

    @Test
    void withoutAProposalTheUsageIsTold() {
        assertThat(Run.of("review", SITE).exit()).isEqualTo(2);
        assertThat(Run.of("review", SITE).err()).contains("PROPOSAL", "See bondspan review --help");
    }

    @Test
    void theProposalMayComeFromStandardInput() throws IOException {
        String text = Files.readString(Path.of(proposal("sound")));
        Run piped = Run.withInput(text, "review", SITE, "-");

        assertThat(piped.out())
                .isEqualTo(Run.of("review", SITE, proposal("sound")).out());
        assertThat(piped.exit()).isZero();
        assertThat(Run.withInput("{", "review", SITE, "-").err()).startsWith("standard input:1: ");
    }

    @Test
    void siteAndProposalCannotBothComeFromStandardInput() {
        Run both = Run.withInput("{}", "review", "-", "-");

        assertThat(both.exit()).isEqualTo(2);
        assertThat(both.out()).isEmpty();
        assertThat(both.err()).contains("SITE and PROPOSAL cannot both be standard input");
    }

    @Test
    void usageTellsBothWaysToCallIt() {
        assertThat(Run.of("review", "--help").out()).startsWith("""
                        Usage: bondspan review [-h] [--json] [--progress] [--trace] [--time-limit=SECONDS] SITE PROPOSAL
                               bondspan review --list
                        """).contains("or - for standard input");
    }
}
