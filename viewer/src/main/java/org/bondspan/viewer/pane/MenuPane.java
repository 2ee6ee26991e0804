package org.bondspan.viewer.pane;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import org.bondspan.layout.Objective;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Level;
import org.bondspan.viewer.model.LayerNames;
import org.bondspan.viewer.model.Switch;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.state.Opened;
import org.bondspan.viewer.state.Showing;

/** The menus: everything that can be done, also without a mouse. */
final class MenuPane implements Pane {
    private final MenuBar bar = new MenuBar();
    private final Actions actions;
    private final HandingOn handingOn;
    private final PlanStrip strip;
    private final Supplier<List<Path>> recent;
    private final Runnable quit;
    private final Runnable cautions;
    private final List<MenuItem> needSite = new ArrayList<>();
    private final List<MenuItem> needAnswer = new ArrayList<>();
    private final Menu levels = new Menu("_Level");
    private final Map<Layer, CheckMenuItem> layers = new LinkedHashMap<>();
    private final Map<Switch.What, CheckMenuItem> switches = new EnumMap<>(Switch.What.class);
    private final Map<CodeEdition, RadioMenuItem> editions = new EnumMap<>(CodeEdition.class);
    private final Map<Objective, RadioMenuItem> objectives = new EnumMap<>(Objective.class);
    private final Map<Showing, RadioMenuItem> showings = new EnumMap<>(Showing.class);
    private final MenuItem closeProposal;
    private final MenuItem unpin;

    MenuPane(
            Actions actions,
            HandingOn handingOn,
            PlanStrip strip,
            Supplier<List<Path>> recent,
            Runnable cautions,
            Runnable quit) {
        this.actions = actions;
        this.handingOn = handingOn;
        this.strip = strip;
        this.recent = recent;
        this.cautions = cautions;
        this.quit = quit;
        this.closeProposal =
                Controls.item("menu-close-proposal", "_Close proposal", "", () -> actions.run(Asking.closeReview()));
        this.unpin = Controls.item("menu-unpin", "_Unpin", "", () -> actions.run(Asking.unpin()));
        bar.setId("menus");
        bar.getMenus().setAll(site(), plan(), question(), compare(), help());
    }

    private Menu site() {
        Menu recently = new Menu("Open _recent");
        recently.setId("menu-recent");
        recently.getItems().setAll(new MenuItem("None yet"));
        Menu site = new Menu("_Site");
        site.setId("menu-site");
        site.setOnShowing(event -> fill(recently));
        Menu export = new Menu("_Export what is seen");
        export.setId("menu-export");
        export.getItems()
                .setAll(
                        Controls.item("menu-png", "as _PNG picture\u2026", "", handingOn::png),
                        Controls.item("menu-svg", "as _SVG drawing\u2026", "", handingOn::svg),
                        Controls.item("menu-pdf", "as P_DF drawing\u2026", "", handingOn::pdf));
        site.getItems()
                .setAll(
                        Controls.item("menu-open", "_Open site\u2026", "Shortcut+O", actions::openSite),
                        recently,
                        sited(Controls.item("menu-again", "Read _again", "F5", actions::readAgain)),
                        sited(Controls.item(
                                "menu-proposal", "Review a _proposal\u2026", "Shortcut+R", actions::openProposal)),
                        closeProposal,
                        sited(Controls.item("menu-prices", "Open price _book\u2026", "", actions::openPrices)),
                        new SeparatorMenuItem(),
                        sited(export),
                        answered(Controls.item(
                                "menu-hand-out",
                                "_Hand out sheets, take-off, report\u2026",
                                "Shortcut+H",
                                handingOn::handOut)),
                        sited(Controls.item("menu-print", "Prin_t what is seen\u2026", "Shortcut+P", handingOn::print)),
                        new SeparatorMenuItem(),
                        Controls.item("menu-quit", "_Quit", "Shortcut+Q", quit));
        return site;
    }

    private void fill(Menu recently) {
        List<MenuItem> items = recent.get().stream()
                .map(path -> {
                    MenuItem item = new MenuItem(path.toString());
                    item.setMnemonicParsing(false);
                    item.setOnAction(event -> actions.open(path));
                    return item;
                })
                .toList();
        recently.getItems().setAll(items);
        recently.setDisable(items.isEmpty());
    }

    private Menu plan() {
        Menu shown = new Menu("L_ayers");
        for (Layer layer : LayerNames.order()) {
            layers.put(
                    layer,
                    Controls.check(
                            Controls.id("menu-layer", layer),
                            LayerNames.of(layer),
                            "",
                            () -> actions.run(Looking.toggle(layer))));
        }
        shown.getItems().setAll(layers.values());
        showing(Showing.ANSWER, "_Answer", "Shortcut+1");
        showing(Showing.PROPOSAL, "_Proposal", "Shortcut+2");
        showing(Showing.SIDE_BY_SIDE, "_Side by side", "Shortcut+3");
        Menu plan = new Menu("_Plan");
        plan.setId("menu-plan");
        plan.getItems().setAll(showings.values());
        plan.getItems()
                .addAll(
                        new SeparatorMenuItem(),
                        levels,
                        Controls.item(
                                "menu-up", "Level _up", "Shortcut+Page Up", () -> actions.run(Looking.levelsUp(1))),
                        Controls.item(
                                "menu-down",
                                "Level _down",
                                "Shortcut+Page Down",
                                () -> actions.run(Looking.levelsUp(-1))),
                        new SeparatorMenuItem(),
                        Controls.item("menu-nearer", "_Nearer", "Shortcut+Equals", () -> strip.zoom(1.25)),
                        Controls.item("menu-further", "Furthe_r off", "Shortcut+Minus", () -> strip.zoom(0.8)),
                        Controls.item("menu-fit", "_Fit", "Shortcut+0", () -> actions.run(Looking.fitted())),
                        new SeparatorMenuItem(),
                        shown,
                        Controls.item("menu-words", "_Words on the plan", "Shortcut+L", strip::labels),
                        Controls.item(
                                "menu-schedules",
                                "Schedules _beside the plan",
                                "F9",
                                () -> actions.run(Looking.foldSchedules())),
                        Controls.item("menu-measure", "_Measure", "Shortcut+M", strip::measure),
                        Controls.item("menu-dark", "Li_ght or dark", "Shortcut+D", strip::dark));
        return sited(plan);
    }

    private void showing(Showing what, String name, String keys) {
        showings.put(
                what,
                Controls.radio(Controls.id("menu-show", what), name, keys, () -> actions.run(Looking.showing(what))));
    }

    private Menu question() {
        for (Switch.What what : Switch.What.values()) {
            switches.put(
                    what,
                    Controls.check(
                            Controls.id("menu-may-carry", what),
                            "_" + what.label() + " may carry",
                            "",
                            () -> actions.turn(what)));
        }
        for (CodeEdition edition : CodeEdition.values()) {
            editions.put(
                    edition,
                    Controls.radio(
                            "menu-edition-" + edition.year(),
                            "NFPA 70, " + edition.year(),
                            "",
                            () -> actions.edition(edition)));
        }
        for (Objective objective : Objective.values()) {
            objectives.put(
                    objective,
                    Controls.radio(
                            Controls.id("menu-least", objective),
                            "Least " + objective.label(),
                            "",
                            () -> actions.objective(objective)));
        }
        Menu question = new Menu("_Question");
        question.setId("menu-question");
        question.getItems().setAll(switches.values());
        question.getItems().add(new SeparatorMenuItem());
        question.getItems().addAll(editions.values());
        question.getItems().add(new SeparatorMenuItem());
        question.getItems().addAll(objectives.values());
        question.getItems()
                .addAll(
                        new SeparatorMenuItem(),
                        Controls.item("menu-as-drawn", "Ask as _drawn", "", actions::askAsDrawn),
                        Controls.item("menu-stop", "_Stop", "Shortcut+Period", actions::stop));
        return sited(question);
    }

    private Menu compare() {
        Menu compare = new Menu("_Compare");
        compare.setId("menu-compare");
        compare.getItems()
                .setAll(
                        answered(Controls.item(
                                "menu-pin", "_Pin this answer", "Shortcut+K", () -> actions.run(Asking.pin()))),
                        unpin);
        return compare;
    }

    private Menu help() {
        Menu help = new Menu("_Help");
        help.setId("menu-help");
        help.getItems()
                .setAll(
                        Controls.item("menu-keys", "_Keys", "F1", () -> actions.run(Asking.say(Keys.message()))),
                        Controls.item("menu-cautions", "_Cautions, what was not checked", "", cautions));
        return help;
    }

    private <T extends MenuItem> T sited(T item) {
        needSite.add(item);
        return item;
    }

    private <T extends MenuItem> T answered(T item) {
        needAnswer.add(item);
        return item;
    }

    @Override
    public Node node() {
        return bar;
    }

    @Override
    public void show(Desk desk) {
        needSite.forEach(item -> item.setDisable(desk.opened().isEmpty()));
        needAnswer.forEach(item -> item.setDisable(desk.answer().isEmpty()));
        closeProposal.setDisable(desk.review().isEmpty());
        unpin.setDisable(desk.pinned().isEmpty());
        layers.forEach((layer, item) -> item.setSelected(!desk.look().hidden().contains(layer)));
        showings.forEach((what, item) -> {
            item.setSelected(desk.look().showing() == what);
            item.setDisable(!desk.has(what));
        });
        desk.opened().ifPresent(opened -> show(opened, desk.look().level()));
    }

    private void show(Opened opened, String seen) {
        List<String> ids = opened.site().levels().stream().map(Level::id).toList();
        if (!levels.getItems().stream().map(MenuItem::getText).toList().equals(ids)) {
            levels.getItems().setAll(ids.stream().map(this::level).toList());
        }
        levels.getItems()
                .forEach(item ->
                        ((RadioMenuItem) item).setSelected(item.getText().equals(seen)));
        switches.forEach((what, item) -> {
            Switch now = Switch.of(opened, what);
            item.setSelected(now.position() == Switch.Position.ON);
            item.setDisable(!now.available());
        });
        editions.forEach((edition, item) -> item.setSelected(opened.question().edition() == edition));
        objectives.forEach((objective, item) -> {
            item.setSelected(opened.question().objective() == objective);
            item.setDisable(opened.site().prices().isEmpty());
        });
    }

    private RadioMenuItem level(String id) {
        RadioMenuItem item = Controls.radio("menu-level-" + id, id, "", () -> actions.run(Looking.atLevel(id)));
        item.setMnemonicParsing(false);
        return item;
    }
}
