package org.bondspan.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.sheet.plan.Palette;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsTest {
    @TempDir
    Path directory;

    @Test
    void whatIsKeptIsThereTheNextTime() throws IOException {
        Path file = directory.resolve("deep").resolve("viewer.properties");
        Path site = Files.createFile(directory.resolve("hall \u2013 1.site.json"));
        Settings settings = Settings.read(file);
        settings.keep("width", 1440.5);
        settings.keep(Palette.DARK);
        settings.keepRecent(directory.resolve("gone.site.json"));
        settings.keepRecent(site);
        assertThat(settings.write()).isTrue();

        Settings next = Settings.read(file);
        assertThat(next.number("width")).contains(1440.5);
        assertThat(next.number("height")).isEmpty();
        assertThat(next.palette()).isEqualTo(Palette.DARK);
        assertThat(next.recent()).containsExactly(site);
    }

    @Test
    void recentFilesStandOnceNewestFirstTenAtMost() throws IOException {
        Settings settings = Settings.read(directory.resolve("viewer.properties"));
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            files.add(Files.createFile(directory.resolve(i + ".site.json")));
            settings.keepRecent(files.get(i));
        }
        settings.keepRecent(files.get(5));

        assertThat(settings.recent())
                .hasSize(10)
                .doesNotHaveDuplicates()
                .startsWith(files.get(5), files.get(11), files.get(10));
    }

    @Test
    void aSpoiltOrMissingFileIsAsGoodAsNone() throws IOException {
        Path spoilt = Files.writeString(directory.resolve("spoilt"), "width=\\uZZZZ\n");
        Path words = Files.writeString(directory.resolve("words"), "width=broad\npalette=pink\n");

        assertThat(Settings.read(spoilt).number("width")).isEmpty();
        assertThat(Settings.read(words).number("width")).isEmpty();
        assertThat(Settings.read(words).palette()).isEqualTo(Palette.LIGHT);
        assertThat(Settings.read(directory.resolve("none")).recent()).isEmpty();
    }

    @Test
    void whereNothingCanBeKeptTheProgramGoesOn() throws IOException {
        Path file = Files.createFile(directory.resolve("file"));

        assertThat(Settings.read(file.resolve("below")).write()).isFalse();
    }
}
