package org.bondspan.viewer.plan;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.LengthUnit;

/**
 * All that a {@link PlanPane} shows. A picture is told from the last one by identity, so keep it as long as it is the
 * same.
 *
 * @param selected id of what stands out
 * @param unit of the scale bar
 */
public record PlanScene(
        Picture picture,
        Camera camera,
        Palette palette,
        Set<Layer> layers,
        Labels labels,
        Optional<String> selected,
        List<Measured> measured,
        Tool tool,
        LengthUnit unit) {
    public PlanScene {
        layers = Set.copyOf(layers);
        measured = List.copyOf(measured);
    }

    /** All of a picture on light paper, nothing selected. */
    public static PlanScene of(Picture picture, LengthUnit unit) {
        return new PlanScene(
                picture,
                Camera.around(picture.bounds()),
                Palette.LIGHT,
                EnumSet.allOf(Layer.class),
                Labels.SHOWN,
                Optional.empty(),
                List.of(),
                Tool.LOOK,
                unit);
    }

    public PlanScene withCamera(Camera camera) {
        return new PlanScene(picture, camera, palette, layers, labels, selected, measured, tool, unit);
    }

    public PlanScene withSelected(Optional<String> selected) {
        return new PlanScene(picture, camera, palette, layers, labels, selected, measured, tool, unit);
    }

    public PlanScene withPalette(Palette palette) {
        return new PlanScene(picture, camera, palette, layers, labels, selected, measured, tool, unit);
    }

    public PlanScene withTool(Tool tool) {
        return new PlanScene(picture, camera, palette, layers, labels, selected, measured, tool, unit);
    }

    public PlanScene withMeasured(List<Measured> measured) {
        return new PlanScene(picture, camera, palette, layers, labels, selected, measured, tool, unit);
    }

    /** Around all that has an id on this level. */
    public Optional<Bounds> extent(String id) {
        List<PlanPoint> places = picture.items().stream()
                .filter(item -> item.id().equals(id))
                .flatMap(item -> item.places().stream())
                .toList();
        return places.isEmpty() ? Optional.empty() : Optional.of(Bounds.around(places));
    }

    /** Whether the picture is that of another scene; by identity, see above. */
    @SuppressWarnings("ReferenceEquality")
    boolean keepsPictureOf(PlanScene other) {
        return picture == other.picture;
    }
}
