package org.bondspan.viewer.pane;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.VBox;
import org.bondspan.viewer.model.Cautions;
import org.bondspan.viewer.model.ConductorRow;
import org.bondspan.viewer.model.Differences;
import org.bondspan.viewer.model.FindingRow;
import org.bondspan.viewer.model.MetalRow;
import org.bondspan.viewer.model.ThingRow;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.state.Plan;
import org.bondspan.viewer.state.Reviewed;
import org.bondspan.viewer.state.Showing;

/** The schedules beside the plan: conductors, findings, what is connected, metal, differences, cautions. */
final class SchedulePane implements Pane {
    private final TabPane tabs = new TabPane();
    private final RowTable<ConductorRow> conductors;
    private final FindingList findings;
    private final RowTable<ThingRow> things;
    private final RowTable<MetalRow> metal;
    private final RowTable<Differences.Row> differences;
    private final VBox cautions = new VBox(6);
    private final Tab conductorTab;
    private final Tab findingTab;
    private final Tab differenceTab;
    private Cautions shownCautions = new Cautions(List.of(), List.of());
    private Showing before = Showing.ANSWER;
    private Source source = new Source(Optional.empty(), Optional.empty(), Optional.empty(), Showing.ANSWER);

    SchedulePane(Actions actions) {
        Consumer<String> reveal = id -> actions.run(Looking.reveal(id));
        conductors = conductors(reveal);
        findings = new FindingList(reveal);
        things = things(reveal);
        metal = metal(reveal);
        differences = differences();
        cautions.getStyleClass().add("cautions");
        ScrollPane scroll = new ScrollPane(cautions);
        scroll.setId("cautions");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(true);
        scroll.getStyleClass().add("quiet-scroll");
        conductorTab = tab("Conductors", conductors.view());
        findingTab = tab("Findings", findings.view());
        differenceTab = tab("Differences", differences.view());
        tabs.setId("schedules");
        tabs.getTabs()
                .setAll(
                        conductorTab,
                        findingTab,
                        tab("Connected", things.view()),
                        tab("Metal", metal.view()),
                        tab("Cautions", scroll));
    }

    private static Tab tab(String name, Node content) {
        Tab tab = new Tab(name, content);
        tab.setClosable(false);
        return tab;
    }

    private static RowTable<ConductorRow> conductors(Consumer<String> reveal) {
        return new RowTable<ConductorRow>("conductors", "No conductors yet", row -> Optional.of(row.id()), reveal)
                .column("id", ConductorRow::id)
                .column("size", ConductorRow::size)
                .column("kind", ConductorRow::kind)
                .number("length", ConductorRow::length)
                .number("weight", ConductorRow::weight)
                .words("to", ConductorRow::to)
                .words("from", ConductorRow::from);
    }

    private static RowTable<ThingRow> things(Consumer<String> reveal) {
        return new RowTable<ThingRow>("things", "Nothing to connect", row -> Optional.of(row.id()), reveal)
                .words("id", ThingRow::id)
                .words("what", ThingRow::what)
                .column("state", ThingRow::state)
                .column("calls for", ThingRow::need);
    }

    private static RowTable<MetalRow> metal(Consumer<String> reveal) {
        return new RowTable<MetalRow>("metal", "No metal is drawn", row -> Optional.of(row.path()), reveal)
                .column("path", MetalRow::path)
                .column("verdict", row -> row.verdict().words())
                .prose("why, or between what", row -> row.why() + " " + row.sections());
    }

    private static RowTable<Differences.Row> differences() {
        return new RowTable<Differences.Row>("differences", "Nothing differs", row -> Optional.empty(), id -> {})
                .prose("what", Differences.Row::what)
                .number("pinned", Differences.Row::first)
                .number("answer", Differences.Row::second)
                .number("difference", Differences.Row::difference);
    }

    @Override
    public Node node() {
        return tabs;
    }

    /** What the rows are made from. */
    private record Source(Optional<Plan> plan, Optional<Reviewed> review, Optional<Answer> pinned, Showing showing) {}

    @Override
    public void show(Desk desk) {
        Source next = new Source(
                desk.plan(), desk.review(), desk.pinned(), desk.look().showing());
        if (!next.equals(source)) {
            source = next;
            fill(desk);
        }
        Optional<String> selected = desk.look().selected();
        conductors.select(selected);
        findings.select(selected);
        things.select(selected);
        metal.select(selected);
        turnTo(desk);
    }

    private void fill(Desk desk) {
        boolean proposal = desk.proposal().isPresent();
        conductors.rename(0, proposal ? "conductor" : "id");
        conductors.rename(1, proposal ? "proposed" : "size");
        conductors.rename(2, proposal ? "needed" : "kind");
        List<ConductorRow> rows = ConductorRow.rows(desk);
        List<FindingRow> found = FindingRow.rows(desk);
        conductors.show(rows);
        conductorTab.setText("Conductors " + rows.size());
        findings.show(found);
        findingTab.setText("Findings " + found.size());
        things.rename(3, proposal ? "thinnest" : "calls for");
        things.show(ThingRow.rows(desk));
        metal.show(MetalRow.rows(desk));
        showDifferences(desk);
        showCautions(Cautions.of(desk));
    }

    private void showDifferences(Desk desk) {
        boolean both = desk.pinned().isPresent() && desk.answer().isPresent();
        if (both) {
            differences.show(Differences.rows(desk.pinned().get(), desk.answer().get()));
        }
        if (both && !tabs.getTabs().contains(differenceTab)) {
            tabs.getTabs().add(2, differenceTab);
        } else if (!both) {
            tabs.getTabs().remove(differenceTab);
        }
    }

    /** What has just been asked to be shown brings its schedule to the front. */
    private void turnTo(Desk desk) {
        Showing showing = desk.look().showing();
        if (showing != before) {
            before = showing;
            switch (showing) {
                case PROPOSAL -> tabs.getSelectionModel().select(findingTab);
                case SIDE_BY_SIDE -> {
                    if (tabs.getTabs().contains(differenceTab)) {
                        tabs.getSelectionModel().select(differenceTab);
                    }
                }
                case ANSWER -> tabs.getSelectionModel().select(conductorTab);
            }
        }
    }

    private void showCautions(Cautions next) {
        if (next.equals(shownCautions)) {
            return;
        }
        shownCautions = next;
        cautions.getChildren().clear();
        next.cautions().forEach(words -> cautions.getChildren().add(wrapped(words)));
        cautions.getChildren().add(Controls.label("Not checked", "quiet"));
        next.notChecked().forEach(words -> cautions.getChildren().add(wrapped(words)));
    }

    private static Label wrapped(String words) {
        Label label = Controls.label(words);
        label.setWrapText(true);
        return label;
    }

    /** Brings the cautions to the front. */
    void turnToCautions() {
        tabs.getSelectionModel().select(tabs.getTabs().size() - 1);
        tabs.requestFocus();
    }
}
