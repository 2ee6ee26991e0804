package org.bondspan.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Stage;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Opened;

/** Keeps the title of the window and the recent files with what is opened. */
final class Follower {
    private final Stage stage;
    private final Settings settings;
    private Optional<Path> last = Optional.empty();

    Follower(Stage stage, Settings settings) {
        this.stage = stage;
        this.settings = settings;
    }

    void follow(Desk desk) {
        Optional<Path> path = desk.opened().map(Opened::path).map(Path::toAbsolutePath);
        if (path.isEmpty() || path.equals(last)) {
            return;
        }
        last = path;
        stage.setTitle(
                desk.opened().map(opened -> opened.site().name() + " \u2013 ").orElse("") + "Bondspan");
        settings.keepRecent(path.get());
        settings.write();
    }
}
