package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bondspan.report.Ink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadInputTest {
    @TempDir
    private Path directory;

    /** Each changes one line of the sample; that line is the one to be named. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"codeEdition\": 2020|\"codeEdition\": 2018|codeEdition",
                "\"lengthUnit\": \"ft\"|\"lengthUnit\": \"yd\"|lengthUnit",
                "\"size\": \"500 kcmil\"|\"size\": \"500 mcm\"|services[0].ungrounded.size",
                "\"conductorLength\": 40,|\"conductorLenght\": 40,|electrodes[1].conductorLenght",
                "\"conductorLength\": 40,|\"conductorLength\": \"40\",|electrodes[1].conductorLength",
                "\"electrode\": \"water\"|\"electrode\": \"watr\"|paths[5].electrode",
                "\"makeUpPerEnd\": 3|\"makeUpPerEnd\": -3|makeUpPerEnd",
                "\"wastePercent\": 5|\"wastePercent\": 5,\"wastePercent\": 6|wastePercent",
                "\"top\": 30|\"top\": 1e9|paths[4].top",
                "\"continuous\": true|\"continuous\": \"yes\"|paths[4].continuous"
            })
    void aBadFieldIsNamedWithFileAndLine(String good, String bad, String field) throws IOException {
        String text = Files.readString(Path.of(Run.sample("hall-steel")));
        assertThat(text).contains(good);
        Path file = directory.resolve("changed.site.json");
        Files.writeString(file, text.replaceFirst(java.util.regex.Pattern.quote(good), bad));
        long line = text.substring(0, text.indexOf(good)).lines().count();

        for (String command : new String[] {"check", "route"}) {
            Run run = Run.of(command, file.toString());
            assertThat(run.exit()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.err()).contains(file + ":" + line + ": ").contains(field);
            assertThat(run.err()).doesNotContain("Exception", "\tat ");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {"``", "`{`", "`[]`", "`null`", "`{\"format\": \"bondspan-site/1\"`", "`{} {}`", "`{\"format\": 1}`"
            })
    void aFileThatIsNoSiteIsRefused(String text) throws IOException {
        Path file = directory.resolve("odd.site.json");
        Files.writeString(file, text);
        Run run = Run.of("route", "--json", file.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(file.toString()).doesNotContain("Exception", "\tat ");
    }

    @Test
    void aMissingFileIsNamed() {
        Path file = directory.resolve("none.site.json");
        Run run = Run.of("check", file.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith(file.toString()).contains("does not exist");
    }

    @Test
    void aDirectoryIsNoSite() {
        Run run = Run.of("check", directory.toString());

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("is a directory");
    }

    @Test
    void standardInputIsReadAsUtf8AndNamedInMessages() {
        Run empty = Run.withInput("{}", "check", "-");
        assertThat(empty.exit()).isEqualTo(2);
        assertThat(empty.err()).startsWith("standard input");

        byte[] latin = {'{', '"', (byte) 0xe9, '"', '}'};
        Run odd = Run.with(latin, Ink.PLAIN, "check", "-");
        assertThat(odd.exit()).isEqualTo(2);
        assertThat(odd.err()).contains("standard input", "UTF-8");
    }

    @Test
    void standardInputGivesTheSameAnswerAsTheFile() throws IOException {
        String file = Run.sample("pump-house");
        Run piped = Run.withInput(Files.readString(Path.of(file)), "check", "-");

        assertThat(piped).isEqualTo(Run.of("check", file));
    }
}
