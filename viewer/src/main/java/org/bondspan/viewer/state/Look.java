package org.bondspan.viewer.state;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.viewer.plan.Camera;
import org.bondspan.viewer.plan.Labels;
import org.bondspan.viewer.plan.Tool;

/**
 * How things are looked at.
 *
 * @param level id of the level; empty text without a site
 * @param cameras by id of the level; a level without one is fitted to the window
 * @param hidden layers that are switched off
 * @param labels whether words stand on the plan
 * @param schedules whether facts and schedules stand beside the plan
 * @param selected id of the site, the answer or the proposal
 */
public record Look(
        Showing showing,
        String level,
        Map<String, Camera> cameras,
        Set<Layer> hidden,
        Labels labels,
        Schedules schedules,
        Palette palette,
        Tool tool,
        Optional<String> selected,
        Optional<Measure> measure) {
    public Look {
        cameras = Collections.unmodifiableMap(new LinkedHashMap<>(cameras));
        hidden = Collections.unmodifiableSet(hidden.isEmpty() ? EnumSet.noneOf(Layer.class) : EnumSet.copyOf(hidden));
    }

    /** Whether facts and schedules stand beside the plan. */
    public enum Schedules {
        BESIDE,
        FOLDED
    }

    public static Look first(Palette palette) {
        return new Look(
                Showing.ANSWER,
                "",
                Map.of(),
                Set.of(),
                Labels.SHOWN,
                Schedules.BESIDE,
                palette,
                Tool.LOOK,
                Optional.empty(),
                Optional.empty());
    }

    /** The layers that are on. */
    public Set<Layer> layers() {
        EnumSet<Layer> shown = EnumSet.allOf(Layer.class);
        shown.removeAll(hidden);
        return shown;
    }

    public Optional<Camera> camera() {
        return Optional.ofNullable(cameras.get(level));
    }

    public Look at(String next) {
        return new Look(showing, next, cameras, hidden, labels, schedules, palette, tool, selected, measure);
    }

    public Look showing(Showing next) {
        return new Look(next, level, cameras, hidden, labels, schedules, palette, tool, selected, measure);
    }

    public Look withCameras(Map<String, Camera> next) {
        return new Look(showing, level, next, hidden, labels, schedules, palette, tool, selected, measure);
    }

    public Look withCamera(Camera next) {
        Map<String, Camera> all = new LinkedHashMap<>(cameras);
        all.put(level, next);
        return withCameras(all);
    }

    /** The level is fitted to the window again. */
    public Look fitted() {
        Map<String, Camera> all = new LinkedHashMap<>(cameras);
        all.remove(level);
        return withCameras(all);
    }

    public Look toggling(Layer layer) {
        EnumSet<Layer> next = EnumSet.noneOf(Layer.class);
        next.addAll(hidden);
        if (!next.remove(layer)) {
            next.add(layer);
        }
        return new Look(showing, level, cameras, next, labels, schedules, palette, tool, selected, measure);
    }

    public Look labelled(Labels next) {
        return new Look(showing, level, cameras, hidden, next, schedules, palette, tool, selected, measure);
    }

    public Look with(Schedules next) {
        return new Look(showing, level, cameras, hidden, labels, next, palette, tool, selected, measure);
    }

    public Look in(Palette next) {
        return new Look(showing, level, cameras, hidden, labels, schedules, next, tool, selected, measure);
    }

    public Look with(Tool next) {
        return new Look(showing, level, cameras, hidden, labels, schedules, palette, next, selected, Optional.empty());
    }

    public Look selecting(Optional<String> next) {
        return new Look(showing, level, cameras, hidden, labels, schedules, palette, tool, next, measure);
    }

    public Look measuring(Optional<Measure> next) {
        return new Look(showing, level, cameras, hidden, labels, schedules, palette, tool, selected, next);
    }
}
