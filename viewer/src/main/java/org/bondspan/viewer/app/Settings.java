package org.bondspan.viewer.app;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import org.bondspan.sheet.plan.Palette;

/**
 * What the window remembers from one time to the next: its place, size and division, light or dark, recent files. A
 * file of properties; where it cannot be read or written the window does without.
 */
public final class Settings {
    private static final String RECENT = "recent.";
    private static final int MOST_RECENT = 10;

    private final Optional<Path> file;
    private final Properties values = new Properties();

    private Settings(Optional<Path> file) {
        this.file = file;
    }

    /** Where the program keeps them for its user; {@code -Dbondspan.settings=FILE} puts them elsewhere. */
    public static Path usualPlace() {
        String chosen = System.getProperty("bondspan.settings", "");
        if (!chosen.isEmpty()) {
            return Path.of(chosen);
        }
        Path home = Path.of(System.getProperty("user.home", "."));
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path configuration = home.resolve(".config");
        if (system.startsWith("windows")) {
            configuration = environment("APPDATA").orElse(home);
        } else if (system.startsWith("mac")) {
            configuration = home.resolve("Library").resolve("Application Support");
        } else {
            configuration = environment("XDG_CONFIG_HOME").orElse(configuration);
        }
        return configuration.resolve("bondspan").resolve("viewer.properties");
    }

    private static Optional<Path> environment(String name) {
        return Optional.ofNullable(System.getenv(name))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }

    /** Those of a window that nobody has used yet; they are never written. */
    public static Settings forgetful() {
        return new Settings(Optional.empty());
    }

    public static Settings read(Path file) {
        Settings settings = new Settings(Optional.of(file));
        try (Reader reader = Files.newBufferedReader(file)) {
            settings.values.load(reader);
        } catch (IOException | IllegalArgumentException none) {
            settings.values.clear();
        }
        return settings;
    }

    /** Keeps them; says whether that was possible. */
    public boolean write() {
        return file.map(this::writeTo).orElse(false);
    }

    private boolean writeTo(Path place) {
        try {
            Path parent = place.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            try (Writer writer = Files.newBufferedWriter(place)) {
                values.store(writer, null);
            }
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** A number kept under that name. */
    public Optional<Double> number(String name) {
        try {
            return Optional.ofNullable(values.getProperty(name))
                    .map(Double::valueOf)
                    .filter(Double::isFinite);
        } catch (NumberFormatException spoilt) {
            return Optional.empty();
        }
    }

    public void keep(String name, double number) {
        values.setProperty(name, String.valueOf(number));
    }

    public void forget(String name) {
        values.remove(name);
    }

    public Palette palette() {
        return "dark".equals(values.getProperty("palette")) ? Palette.DARK : Palette.LIGHT;
    }

    public void keep(Palette palette) {
        values.setProperty("palette", palette.name().toLowerCase(Locale.ROOT));
    }

    /** Files opened lately that are still there, the newest first. */
    public List<Path> recent() {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; values.containsKey(RECENT + i); i++) {
            existing(values.getProperty(RECENT + i)).ifPresent(paths::add);
        }
        return List.copyOf(paths);
    }

    private static Optional<Path> existing(String name) {
        try {
            return Optional.of(Path.of(name)).filter(Files::exists);
        } catch (InvalidPathException spoilt) {
            return Optional.empty();
        }
    }

    /** A file has been opened; each stands once, ten at most. */
    public void keepRecent(Path newest) {
        List<Path> before = recent();
        values.keySet().removeIf(key -> key.toString().startsWith(RECENT));
        values.setProperty(RECENT + 0, newest.toString());
        List<Path> others = before.stream()
                .filter(path -> !path.equals(newest))
                .limit(MOST_RECENT - 1)
                .toList();
        for (int i = 0; i < others.size(); i++) {
            values.setProperty(RECENT + (i + 1), others.get(i).toString());
        }
    }
}
