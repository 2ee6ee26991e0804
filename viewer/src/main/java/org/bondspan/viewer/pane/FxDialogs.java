package org.bondspan.viewer.pane;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/** Asks with the dialogs of the system; begins where the last file was. */
public final class FxDialogs implements Dialogs {
    private final Window owner;
    private Optional<File> last = Optional.empty();

    public FxDialogs(Window owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> open(Kind kind) {
        return remembered(chooser(kind).showOpenDialog(owner));
    }

    @Override
    public Optional<Path> save(Kind kind, String name) {
        FileChooser chooser = chooser(kind);
        chooser.setInitialFileName(name + kind.ending());
        return remembered(chooser.showSaveDialog(owner));
    }

    private FileChooser chooser(Kind kind) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(kind.words());
        last.ifPresent(chooser::setInitialDirectory);
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(kind.words(), kind.pattern()),
                        new FileChooser.ExtensionFilter("All files", "*.*"));
        return chooser;
    }

    @Override
    public Optional<Path> directory(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        last.ifPresent(chooser::setInitialDirectory);
        return Optional.ofNullable(chooser.showDialog(owner)).map(File::toPath);
    }

    private Optional<Path> remembered(@Nullable File file) {
        Optional<File> chosen = Optional.ofNullable(file);
        chosen.map(File::getParentFile).filter(File::isDirectory).ifPresent(parent -> last = Optional.of(parent));
        return chosen.map(File::toPath);
    }

    @Override
    public boolean confirm(String question, String yes) {
        ButtonType agree = new ButtonType(yes, ButtonBar.ButtonData.OK_DONE);
        Alert alert = new Alert(Alert.AlertType.NONE, question, agree, ButtonType.CANCEL);
        alert.initOwner(owner);
        alert.setTitle("Bondspan");
        return alert.showAndWait().equals(Optional.of(agree));
    }
}
