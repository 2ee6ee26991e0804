package org.bondspan.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bondspan.site.PlanPoint;

/** All plan places where something besides the bare floor lies, with what lies there. */
final class Stacks {
    private final NetworkArrays network;
    private final List<LevelPlan> levels;
    private final Map<Key, Stack> byPlace = new LinkedHashMap<>();

    private record Key(int level, PlanPoint at) {}

    Stacks(NetworkArrays network, List<LevelPlan> levels) {
        this.network = network;
        this.levels = levels;
    }

    /** Joins the levels of a riser at its place: what lies there on any of them is one stack. */
    void join(List<Integer> levelsOfRiser, PlanPoint at) {
        Set<Stack> meeting = new LinkedHashSet<>();
        levelsOfRiser.forEach(level -> meeting.add(at(level, at)));
        Stack joined = meeting.iterator().next();
        for (Map.Entry<Key, Stack> entry : byPlace.entrySet()) {
            if (meeting.contains(entry.getValue())) {
                entry.setValue(joined);
                addFloor(joined, entry.getKey().level());
            }
        }
    }

    /** The stack at a place of a level; with the floor's node in it where the floor is open there. */
    Stack at(int level, PlanPoint at) {
        return byPlace.computeIfAbsent(new Key(level, at), key -> {
            Stack stack = new Stack(level, at);
            addFloor(stack, level);
            return stack;
        });
    }

    private void addFloor(Stack stack, int level) {
        LevelPlan plan = levels.get(level);
        int floor = plan.floorNodeAt(stack.at());
        if (floor != FloorGrid.NONE) {
            stack.addFloorNode(plan.openElevation(), floor, network);
        }
    }

    /** The node at a place and height of a level. */
    int nodeAt(int level, PlanPoint at, long elevation) {
        return at(level, at).nodeAt(level, elevation, network);
    }

    /** Every stack once. */
    List<Stack> all() {
        return new ArrayList<>(new LinkedHashSet<>(byPlace.values()));
    }

    /** Places of a level that have a stack. */
    List<PlanPoint> listPlaces(int level) {
        return byPlace.keySet().stream()
                .filter(key -> key.level() == level)
                .map(Key::at)
                .toList();
    }
}
