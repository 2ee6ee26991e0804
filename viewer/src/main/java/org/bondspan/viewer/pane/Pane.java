package org.bondspan.viewer.pane;

import javafx.scene.Node;
import org.bondspan.viewer.state.Desk;

/** A part of the window. On the JavaFX thread. */
interface Pane {
    Node node();

    /** Shows that desk; called after every command. */
    void show(Desk desk);
}
