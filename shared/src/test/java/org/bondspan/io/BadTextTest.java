package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no JSON at all: one message, with the line. JSON is RFC 8259. */
class BadTextTest {
    private static final String CUT_OFF =
            "the file ends before its last bracket is closed. It may be cut off: compare it with its source.";

    @Test
    void emptyFile() {
        assertThat(says("")).isEqualTo("plan.site.json:1: the file is empty. Write a JSON object { ... } into it.");
        assertThat(says(" \n\n")).startsWith("plan.site.json:1: the file is empty.");
    }

    @Test
    void truncatedFileWhereverItIsCut() {
        String full = Fixtures.text("full.site.json");
        for (int end = 1; end < full.stripTrailing().length(); end++) {
            assertThat(says(full.substring(0, end)))
                    .as("cut after %s", end)
                    .matches("plan\\.site\\.json:\\d+: .*")
                    .doesNotContain("\n")
                    .endsWith(CUT_OFF);
        }
    }

    @Test
    void truncatedFileNamesItsLastLine() {
        assertThat(says("{\n\"format\": \"bondspan-site/1\",\n\"name\": ")).isEqualTo("plan.site.json:3: " + CUT_OFF);
    }

    @Test
    void fileThatIsNotJson() {
        assertThat(says("ISO-10303-21;\nHEADER;"))
                .isEqualTo(
                        "plan.site.json:1: is not JSON at column 1, near: ISO-10303-21; HEADER. Check commas, quotes and"
                                + " brackets there: \"name\": value, the members of an object parted by commas.");
    }

    @Test
    void somethingElseThanAnObject() {
        assertThat(says("\n[1, 2]"))
                .isEqualTo(
                        "plan.site.json:2: must be an object, not a list. Write { \"format\": \"bondspan-site/1\", ... }.");
        assertThat(says("null")).startsWith("plan.site.json:1: must be an object, not null.");
    }

    @Test
    void tooDeepNesting() {
        assertThat(says("[".repeat(100_000)))
                .isEqualTo("plan.site.json:1: brackets are nested more than 64 deep."
                        + " Check for brackets that are opened and never closed.");
        assertThat(says("{\"a\":".repeat(100_000)))
                .startsWith("plan.site.json:1: brackets are nested more than 64 deep.");
    }

    @Test
    void textAfterTheEnd() {
        assertThat(says("{}\n{}"))
                .isEqualTo("plan.site.json:2: more text follows after the end. Remove what follows the last bracket.");
        assertThat(says("{}\nx")).startsWith("plan.site.json:2: is not JSON at column ");
    }

    @Test
    void numbersThatJsonDoesNotKnow() {
        assertThat(says("{\n\"makeUpPerEnd\": NaN}"))
                .startsWith("plan.site.json:2: ")
                .endsWith("no NaN and no Infinity.");
        assertThat(says("{\"makeUpPerEnd\": Infinity}")).endsWith("no NaN and no Infinity.");
        assertThat(says("{\"makeUpPerEnd\": -Infinity}")).endsWith("no NaN and no Infinity.");
        assertThat(says("{\"makeUpPerEnd\": .5}")).endsWith("Write numbers like 0.5, not .5, +0.5 or 00.5.");
        assertThat(says("{\"makeUpPerEnd\": +5}")).endsWith("Write numbers like 0.5, not .5, +0.5 or 00.5.");
        assertThat(says("{\"makeUpPerEnd\": 05}")).endsWith("Write numbers like 0.5, not .5, +0.5 or 00.5.");
        assertThat(says("{\"makeUpPerEnd\": " + "9".repeat(2000) + "}"))
                .startsWith("plan.site.json:1: a number or text is too long at column ");
    }

    @Test
    void habitsOfOtherFormats() {
        assertThat(says("{\n\"name\": \"a\",\n}"))
                .isEqualTo("plan.site.json:3: is not JSON at column 1, near: { \"name\": \"a\", }."
                        + " Remove the comma before the closing bracket.");
        assertThat(says("{\"name\": \"a\" // of the hall\n}")).endsWith("JSON has none; use the field note.");
        assertThat(says("{'name': 'a'}")).endsWith("Put names and texts in double quotes.");
        assertThat(says("{\"name\" \"a\"}")).contains("Check commas, quotes and brackets there");
    }

    @Test
    void messageStaysOnOneLineWhateverTheFileHolds() {
        assertThat(says("{\"name\": \"a\u0000\"}"))
                .startsWith("plan.site.json:1: is not JSON")
                .doesNotContain("\u0000");
        assertThat(says("{\"format\": \"bondspan-site/1\", \"a\\nb\": 1}").lines())
                .hasSize(3)
                .allMatch(line -> line.startsWith("plan.site.json:1: "));
    }

    @Test
    void filesThatCannotBeRead(@TempDir Path directory) throws IOException {
        assertThat(read(directory)).isEqualTo(directory + ": is a directory. Name the file in it.");
        Path missing = directory.resolve("missing.site.json");
        assertThat(read(missing))
                .isEqualTo(missing + ": does not exist. Check its name and the directory it is looked for in.");
        Path latin = Files.write(
                directory.resolve("latin.site.json"), "{\"name\": \"é\"}".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(read(latin)).isEqualTo(latin + ": is not UTF-8 text. Save it as UTF-8.");
        Path large = Files.write(directory.resolve("large.site.json"), new byte[(64 << 20) + 1]);
        assertThat(read(large))
                .isEqualTo(
                        large + ": is larger than 64 MB. Check that it is the right file: one site is one building.");
    }

    @Test
    void byteOrderMarkIsPassedOver(@TempDir Path directory) throws IOException {
        Path file =
                Files.writeString(directory.resolve("mark.site.json"), "\uFEFF" + Fixtures.text("smallest.site.json"));
        assertThat(SiteReader.read(file).name()).isEqualTo("mark");
    }

    private static String says(String text) {
        return message(() -> SiteReader.parse(text, "plan.site.json"));
    }

    private static String read(Path file) {
        return message(() -> SiteReader.read(file));
    }

    private static String message(ThrowingCallable reading) {
        return catchThrowableOfType(InputException.class, reading).problems().stream()
                .map(Problem::toString)
                .collect(Collectors.joining("\n"));
    }
}
