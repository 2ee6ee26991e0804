package org.bondspan.viewer.pane;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.bondspan.viewer.model.Progress;
import org.bondspan.viewer.model.Totals;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Opened;

/** Always in view: the verdict, the totals, and the work under way. */
final class TotalsPane implements Pane {
    private static final double FADED = 0.45;

    private final HBox row = new HBox(18);
    private final Label verdict = Controls.label("", "verdict");
    private final FlowPane totals = new FlowPane(20, 2);
    private final Label progress = Controls.label("", "quiet");
    private final HBox work;
    /** What is done at once is not worth a flicker. */
    private final PauseTransition patience = new PauseTransition(Duration.millis(150));

    private Optional<Totals> shown = Optional.empty();

    TotalsPane(Actions actions) {
        row.getStyleClass().add("totals");
        row.setAlignment(Pos.CENTER_LEFT);
        verdict.setId("verdict");
        verdict.setWrapText(true);
        verdict.setMaxWidth(300);
        verdict.setMinWidth(110);
        totals.setId("totals");
        totals.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(totals, Priority.ALWAYS);
        ProgressBar bar = new ProgressBar();
        bar.setPrefWidth(90);
        bar.setAccessibleText("Work under way");
        progress.setId("progress");
        progress.setWrapText(true);
        progress.setMaxWidth(260);
        Button stop = Controls.button(
                "stop",
                "S_top",
                "Finish with what is found so far; once more to give up, and all stays as it was (Ctrl+Period)",
                actions::stop);
        work = new HBox(10, bar, progress, stop);
        work.setId("work");
        work.setAlignment(Pos.CENTER_LEFT);
        patience.setOnFinished(event -> Controls.present(work, true));
        Controls.present(work, false);
        row.getChildren().addAll(verdict, totals, work);
    }

    @Override
    public Node node() {
        return row;
    }

    @Override
    public void show(Desk desk) {
        Totals next = Totals.of(desk);
        if (!shown.equals(Optional.of(next))) {
            shown = Optional.of(next);
            verdict.setText(next.verdict());
            List.of(Totals.Standing.values())
                    .forEach(standing -> verdict.getStyleClass().remove(style(standing)));
            verdict.getStyleClass().add(style(next.standing()));
            totals.getChildren()
                    .setAll(next.totals().stream().map(TotalsPane::total).toList());
        }
        Optional<String> words = Progress.find(desk);
        progress.setText(words.orElse(""));
        boolean outdated = desk.work().isPresent()
                && !desk.opened().map(Opened::question).equals(desk.answer().map(Answer::question));
        verdict.setOpacity(outdated ? FADED : 1);
        totals.setOpacity(outdated ? FADED : 1);
        if (words.isEmpty()) {
            patience.stop();
            Controls.present(work, false);
        } else if (!work.isVisible()) {
            patience.play();
        }
    }

    private static String style(Totals.Standing standing) {
        return standing.name().toLowerCase(Locale.ROOT);
    }

    private static Node total(Totals.Total total) {
        VBox box = new VBox(Controls.label(total.name(), "quiet", "small"), Controls.label(total.amount(), "amount"));
        box.setAccessibleText(total.name() + " " + total.amount());
        return box;
    }
}
