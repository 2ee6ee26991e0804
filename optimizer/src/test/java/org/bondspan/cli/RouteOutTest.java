package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RouteOutTest {
    @TempDir
    private Path directory;

    static List<Path> samples() throws IOException {
        return SamplesTest.samples();
    }

    private Run route(String sample, String... more) {
        return Run.of(
                Stream.concat(Stream.of("route", Run.sample(sample), "--out", directory.toString()), Stream.of(more))
                        .toArray(String[]::new));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void allFilesAreWrittenAndNamedOnStandardError() throws IOException {
        Run run = route("plant-block", "--sheet", "letter");

        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .isEqualTo(Run.of("route", Run.sample("plant-block")).out());
        assertThat(names())
                .contains(
                        "plant-block.result.json",
                        "plant-block.plan-ground.pdf",
                        "plant-block.plan-ground.svg",
                        "plant-block.plan-upper.pdf",
                        "plant-block.plan-upper.svg",
                        "plant-block.report.html",
                        "plant-block.report.pdf")
                .allSatisfy(name -> assertThat(run.err()).contains("wrote " + directory.resolve(name) + "\n"));
    }

    @Test
    void theResultIsThatOfTheCommandItself() {
        Run run = route("hall-joint", "--json");

        assertThat(directory.resolve("hall-joint.result.json")).content().isEqualTo(run.out());
        assertThat(run.out())
                .isEqualTo(Run.of("route", Run.sample("hall-joint"), "--json").out());
    }

    @Test
    void whatIsThereIsOverwrittenOnlyByForce() throws IOException {
        Files.writeString(directory.resolve("pump-house.report.html"), "mine");

        Run refused = route("pump-house");
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains("pump-house.report.html is there already", "--force");
        assertThat(names()).containsExactly("pump-house.report.html");
        assertThat(directory.resolve("pump-house.report.html")).hasContent("mine");

        assertThat(route("pump-house", "--force").exit()).isZero();
        assertThat(directory.resolve("pump-house.report.html")).content().contains("<!DOCTYPE html>");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theReportTellsVerdictSizesExclusionsFindingsAndWhereItComesFrom(Path sample)
            throws IOException, NoSuchAlgorithmException {
        Run run = Run.of("route", sample.toString(), "--out", directory.toString());
        String stem = sample.getFileName().toString().replace(".site.json", "");
        String digest =
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(sample)));
        String html = Files.readString(directory.resolve(stem + ".report.html"));

        assertThat(run.exit()).isZero();
        assertThat(html)
                .contains("Least copper, proven", "How each size was found", "Cautions", "Not checked", digest)
                .contains("data:image/svg+xml;base64,")
                .doesNotContain("Optional[", "null");
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(directory.resolve(stem + ".report.pdf")))) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("Least copper, proven", "HOW EACH SIZE WAS FOUND", "CAUTIONS", "page 1 of");
            assertThat(text.replaceAll("\\s", "")).contains(digest);
        }
    }

    @Test
    void twoRunsGiveTheSameBytes() throws IOException {
        route("workshop-metric");
        List<byte[]> first = contents();
        route("workshop-metric", "--force");

        assertThat(contents()).usingRecursiveComparison().isEqualTo(first);
    }

    private List<byte[]> contents() throws IOException {
        List<byte[]> contents = new java.util.ArrayList<>();
        for (String name : names()) {
            contents.add(Files.readAllBytes(directory.resolve(name)));
        }
        return contents;
    }

    @Test
    void anImpossibleSiteIsDrawnAndReportedToo() throws IOException {
        String site = Files.readString(Path.of(Run.sample("pump-house")))
                .replaceAll("(?s)\"paths\": \\[.*?\\n  \\]", "\"paths\": []");
        Run run = Run.withInput(site, "route", "-", "--out", directory.toString());

        assertThat(run.exit()).isEqualTo(1);
        assertThat(names()).contains("site.result.json", "site.plan-L1.svg", "site.report.html");
        assertThat(Files.readString(directory.resolve("site.plan-L1.svg"), StandardCharsets.UTF_8))
                .contains("Impossible: the site", "CANNOT BE REACHED");
    }

    /** A file where the directory, or one above it, should be; a directory where a file should be. */
    @Test
    void whereNothingCanBeWrittenOneLineSaysSoAndNothingIsLeft() throws IOException {
        Path file = Files.writeString(directory.resolve("file"), "mine");
        Files.createDirectories(directory.resolve("taken/pump-house.report.html"));

        assertThat(refusal(file.toString())).contains("is a file, not a directory");
        assertThat(refusal(file.resolve("deeper/still").toString())).contains(file + " is a file, not a directory");
        assertThat(refusal(directory.resolve("taken").toString(), "--force"))
                .contains("pump-house.report.html: is a directory", "Name a directory that you may write to");
        assertThat(names()).containsExactly("file", "taken");
        assertThat(directory.resolve("taken")).isDirectoryNotContaining("glob:**.{pdf,svg,json,part}");
        assertThat(file).hasContent("mine");
    }

    /** The kernel's own directory takes no files from anybody. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aDirectoryThatTakesNoFilesIsToldAsBadUsage() {
        assertThat(refusal("/proc/plans")).contains("/proc/plans");
    }

    private String refusal(String out, String... more) {
        Run run = Run.of(Stream.concat(Stream.of("route", Run.sample("pump-house"), "--out", out), Stream.of(more))
                .toArray(String[]::new));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).doesNotContain("Exception");
        return run.err();
    }

    /** Asked to stop before it begins, the search proves nothing, and nothing is supposed. */
    @Test
    void whatThereWasNoTimeForIsSaidInTheReport() throws IOException {
        Run run = Run.watched(
                new Watch(false, () -> true), "route", Run.sample("hall-timber"), "--out", directory.toString());

        assertThat(run.exit()).isZero();
        assertThat(Files.readString(directory.resolve("hall-timber.report.html")))
                .contains("<td>not computed</td>", "no time for a proof");
        route("hall-timber", "--force");
        assertThat(Files.readString(directory.resolve("hall-timber.report.html")))
                .doesNotContain("not computed", "no time for a proof")
                .contains("497.48 lb: 41.50 lb in place of 538.98 lb");
    }

    @Test
    void wrongOptionsAreToldBeforeAnythingIsComputed() throws IOException {
        Path file = Files.writeString(directory.resolve("file"), "");

        assertThat(route("hall-timber", "--sheet", "a9").err()).contains("--sheet a9", "arch-d, ansi-b, letter");
        assertThat(Run.of("route", Run.sample("hall-timber"), "--force").err()).contains("--out");
        assertThat(Run.of("route", Run.sample("hall-timber"), "--sheet", "letter")
                        .exit())
                .isEqualTo(2);
        assertThat(Run.of("route", Run.sample("hall-timber"), "--out", file.toString())
                        .err())
                .contains("is a file");
        assertThat(names()).containsExactly("file");
    }
}
