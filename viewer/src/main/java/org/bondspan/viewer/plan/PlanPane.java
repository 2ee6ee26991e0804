package org.bondspan.viewer.plan;

import java.awt.geom.Point2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Background;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import javafx.stage.Window;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.site.PlanPoint;
import org.jspecify.annotations.Nullable;

/**
 * Shows a plan and tells what the user does on it. It changes nothing by itself: whoever listens answers with the next
 * scene. On the JavaFX thread.
 */
public final class PlanPane extends Region {
    /** How far off a line may be that is meant, in pixels. */
    private static final double REACH = 7;

    /** Pictures with no more items than this are indexed at once. */
    private static final int SMALL = 1500;

    private final Backdrop backdrop = new Backdrop(this::settle);
    private final LabelPlacing labels = new LabelPlacing(this::requestLayout);
    private final Highlight hover = new Highlight(12, 0.6, 0);
    private final Highlight selection = new Highlight(14, 1, 2);
    private final MeasuredNode measured = new MeasuredNode();
    private final ScaleBarNode scaleBar = new ScaleBarNode();
    private final Rectangle focusFrame = new Rectangle();
    private final Latest indexer = new Latest("plan index");
    private final ReadOnlyBooleanWrapper settled = new ReadOnlyBooleanWrapper(this, "settled", false);
    private final ObservableValue<Number> outputScale = sceneProperty()
            .flatMap(Scene::windowProperty)
            .flatMap(Window::outputScaleXProperty)
            .orElse(1);
    private @Nullable PlanScene scene;
    private @Nullable Indexed indexed;
    private Optional<String> aimed = Optional.empty();
    private Consumer<Camera> cameraListener = camera -> {};
    private Consumer<Optional<String>> selectListener = id -> {};
    private Consumer<Optional<String>> hoverListener = id -> {};
    private Consumer<PlanPoint> measureListener = place -> {};

    public PlanPane() {
        setId("plan");
        getStyleClass().add("plan-pane");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleHelp(PlanKeys.HELP);
        hover.setId("hover");
        selection.setId("selection");
        focusFrame.setId("focus-frame");
        focusFrame.setFill(Color.TRANSPARENT);
        focusFrame.setStrokeWidth(2);
        focusFrame.setMouseTransparent(true);
        focusFrame.visibleProperty().bind(focusedProperty());
        for (Node layer : List.of(backdrop, hover, selection, measured, scaleBar, focusFrame)) {
            layer.setManaged(false);
            getChildren().add(layer);
        }
        setClip(clip());
        outputScale.addListener(change -> requestLayout());
        new PlanMouse(this).listen();
        new PlanKeys(this).listen();
    }

    private Rectangle clip() {
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        return clip;
    }

    /** Shows a scene from the next frame on. */
    public void show(PlanScene next) {
        boolean kept = scene != null && next.keepsPictureOf(scene);
        boolean sameWords = kept && scene != null && next.selected().equals(scene.selected());
        scene = next;
        settled.set(false);
        if (!kept) {
            aimed = Optional.empty();
            index(next.picture());
        }
        setBackground(Background.fill(Tints.colour(next.palette(), Tint.PAPER)));
        setCursor(cursor(next.tool()));
        if (!sameWords) {
            setAccessibleText(Spoken.of(next, aimed));
        }
        requestLayout();
    }

    static Cursor cursor(Tool tool) {
        return tool == Tool.MEASURE ? Cursor.CROSSHAIR : Cursor.DEFAULT;
    }

    private void index(Picture picture) {
        if (picture.items().size() <= SMALL) {
            indexed = new Indexed(picture);
            return;
        }
        indexer.execute(() -> {
            Indexed done = new Indexed(picture);
            Platform.runLater(() -> {
                if (scene != null && done.isOf(scene.picture())) {
                    indexed = done;
                    requestLayout();
                }
            });
        });
    }

    /** The user looks elsewhere. */
    public void onCamera(Consumer<Camera> listener) {
        cameraListener = listener;
    }

    /** The user picks something, or nothing. */
    public void onSelect(Consumer<Optional<String>> listener) {
        selectListener = listener;
    }

    /** The pointer, or the keyboard's step, is on something else than before. */
    public void onHover(Consumer<Optional<String>> listener) {
        hoverListener = listener;
    }

    /** The user names a place with the measuring tool. */
    public void onMeasure(Consumer<PlanPoint> listener) {
        measureListener = listener;
    }

    /** Whether plan and words are painted as the scene asks for; for pictures of the window and for tests. */
    public ReadOnlyBooleanProperty settledProperty() {
        return settled.getReadOnlyProperty();
    }

    @Override
    protected void layoutChildren() {
        if (scene == null || indexed == null || !(getWidth() > 0) || !(getHeight() > 0)) {
            return;
        }
        PlanView view = view(scene);
        Palette palette = scene.palette();
        if (indexed.isOf(scene.picture())) {
            Lettering words = labels.show(indexed, view, scene.layers(), scene.labels());
            backdrop.show(
                    new Shot(view, outputScale.getValue().doubleValue(), palette, scene.layers(), words),
                    indexed.raster());
            layOutHighlights(scene, indexed, view);
        }
        measured.show(scene.measured(), view, palette);
        scaleBar.show(ScaleBar.of(view, scene.unit()), palette);
        scaleBar.setLayoutX(ScaleBar.LEFT);
        scaleBar.setLayoutY(getHeight() - ScaleBar.FOOT);
        focusFrame.setStroke(Tints.colour(palette, Tint.GROUNDING_ELECTRODE_CONDUCTOR));
        focusFrame.setX(1);
        focusFrame.setY(1);
        focusFrame.setWidth(Math.max(0, getWidth() - 2));
        focusFrame.setHeight(Math.max(0, getHeight() - 2));
        settle();
    }

    private void layOutHighlights(PlanScene shown, Indexed of, PlanView view) {
        Color ink = Tints.colour(shown.palette(), Tint.INK);
        Color paper = Tints.colour(shown.palette(), Tint.PAPER);
        Optional<String> apart = aimed.filter(id -> !shown.selected().equals(Optional.of(id)));
        hover.show(Outline.of(apart.map(of::items).orElse(List.of()), view, shown.layers()), ink, paper);
        selection.show(Outline.of(shown.selected().map(of::items).orElse(List.of()), view, shown.layers()), ink, paper);
    }

    private void settle() {
        settled.set(scene != null
                && indexed != null
                && indexed.isOf(scene.picture())
                && !isNeedsLayout()
                && backdrop.isSettled()
                && labels.isSettled());
    }

    private PlanView view(PlanScene of) {
        return of.camera().view(getWidth(), getHeight());
    }

    // what mouse and keyboard ask for

    Optional<PlanScene> scene() {
        return Optional.ofNullable(scene);
    }

    Optional<PlanView> view() {
        return scene().filter(shown -> getWidth() > 0 && getHeight() > 0).map(this::view);
    }

    Optional<String> aimed() {
        return aimed;
    }

    void look(Camera camera) {
        cameraListener.accept(indexed == null ? camera : camera.within(indexed.bounds()));
    }

    void select(Optional<String> id) {
        selectListener.accept(id);
    }

    /** Measures at the symbol under the pointer, else at the pointer itself. */
    void measureAt(double x, double y) {
        view().ifPresent(view -> {
            PlanPoint place = view.placeAt(new Point2D.Double(x, y));
            measureListener.accept(find(x, y).flatMap(this::symbol).orElse(place));
        });
    }

    /** Measures at the item that the keyboard stepped to, else in the middle of the plan seen. */
    void measureAtAim() {
        PlanPoint middle = aimed.flatMap(this::symbol).orElse(null);
        if (middle != null) {
            measureListener.accept(middle);
        } else {
            measureAt(getWidth() / 2, getHeight() / 2);
        }
    }

    private Optional<PlanPoint> symbol(String id) {
        return indexed == null
                ? Optional.empty()
                : indexed.items(id).stream()
                        .filter(item -> item instanceof Item.Mark)
                        .map(item -> item.places().get(0))
                        .findFirst();
    }

    void aim(Optional<String> id) {
        if (!id.equals(aimed)) {
            aimed = id;
            scene().ifPresent(shown -> setAccessibleText(Spoken.of(shown, aimed)));
            hoverListener.accept(id);
            requestLayout();
        }
    }

    Optional<String> find(double x, double y) {
        Point2D at = new Point2D.Double(x, y);
        if (scene == null || indexed == null || !indexed.isOf(scene.picture())) {
            return Optional.empty();
        }
        Indexed in = indexed;
        PlanScene shown = scene;
        return labels.words()
                .flatMap(words -> words.find(at))
                .or(() -> in.picks().find(at, view(shown), shown.layers(), REACH));
    }

    /** The crowd whose words stand there. */
    Optional<Crowd> findCrowd(double x, double y) {
        return labels.words().flatMap(words -> words.findCrowd(new Point2D.Double(x, y)));
    }

    /** The crowd of most conductors in view. */
    Optional<Crowd> findCrowd() {
        return labels.words()
                .flatMap(words -> words.crowds().all().stream()
                        .max(Comparator.comparingInt(crowd -> crowd.conductors().size())));
    }

    /** Comes so near that the conductors of a crowd can be told apart. */
    void lookInto(Crowd crowd) {
        look(Camera.around(crowd.bounds()));
    }
}
