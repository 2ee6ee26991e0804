package org.bondspan.network;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jgrapht.alg.util.UnionFind;

/**
 * All meeting places of the tie. Stretches without length are taken in by the place where they are; those that no
 * neighbour can stand for are kept as written conductors.
 */
final class Meetings {
    private final Tie tie;
    private final UnionFind<Integer> same = new UnionFind<>(new HashSet<>());
    private final Map<Integer, Meeting> byPlace = new LinkedHashMap<>();
    private final List<Stretch> conductors = new ArrayList<>();
    private final List<Stretch> landedWithoutLength = new ArrayList<>();

    Meetings(Tie tie, List<Stretch> stretches) {
        this.tie = tie;
        tie.outward().stream().filter(this::isPlace).forEach(same::addElement);
        stretches.stream()
                .filter(stretch -> stretch.isNothing() && isPlace(stretch.from()) && isPlace(stretch.to()))
                .forEach(stretch -> same.union(stretch.from(), stretch.to()));
        for (Stretch stretch : stretches) {
            gather(stretch);
        }
        List<Stretch> nothing = stretches.stream().filter(Stretch::isNothing).toList();
        nothing.stream().filter(this::touchesMetal).forEach(this::takeIn);
        nothing.stream().filter(stretch -> !touchesMetal(stretch)).forEach(this::takeIn);
        byPlace.values().forEach(Meeting::orderBySize);
    }

    private boolean isPlace(int vertex) {
        return !Tie.isTerminal(vertex) && !tie.isMetal(vertex);
    }

    private boolean touchesMetal(Stretch stretch) {
        return isMetal(stretch.from()) || isMetal(stretch.to());
    }

    private boolean isMetal(int vertex) {
        return tie.isMetal(vertex);
    }

    private void gather(Stretch stretch) {
        if (stretch.isNothing()) {
            return;
        }
        if (!stretch.isCarried()) {
            conductors.add(stretch);
        }
        for (int end : List.of(stretch.from(), stretch.to())) {
            if (isPlace(end)) {
                Meeting meeting = at(end);
                (stretch.isCarried() ? meeting.installed() : meeting.conductors()).add(stretch);
            }
        }
    }

    private void takeIn(Stretch stretch) {
        boolean fromPlace = isPlace(stretch.from());
        boolean toPlace = isPlace(stretch.to());
        if (fromPlace && toPlace) {
            return;
        }
        if (!fromPlace && !toPlace) {
            // a terminal landed on metal: the metal's link names it
            boolean onMetal = isMetal(stretch.from()) != isMetal(stretch.to());
            (onMetal ? landedWithoutLength : conductors).add(stretch);
            return;
        }
        Meeting meeting = at(fromPlace ? stretch.from() : stretch.to());
        int thing = fromPlace ? stretch.to() : stretch.from();
        boolean onlyHangs = Tie.isTerminal(thing) || !carriesAll(thing, meeting);
        if (!onlyHangs && meeting.metals().isEmpty()) {
            meeting.metals().add(thing);
        } else if (onlyHangs && meeting.canName()) {
            meeting.hanging().add(thing);
        } else {
            conductors.add(stretch);
            meeting.conductors().add(stretch);
        }
    }

    /** Whether what goes on from one conductor to another may be said to go through that metal. */
    private boolean carriesAll(int metal, Meeting meeting) {
        return meeting.conductors().stream()
                .allMatch(conductor -> tie.carries(metal, conductor.first().size()));
    }

    /** The meeting at a place where stretches end. */
    Meeting at(int place) {
        return byPlace.computeIfAbsent(same.find(place), Meeting::new);
    }

    /** Whether a place belongs to that meeting. */
    boolean isAt(Meeting meeting, int place) {
        return same.find(place) == meeting.place();
    }

    /** Terminals that copper without length joins to metal: the metal's links name them. */
    List<Stretch> landedWithoutLength() {
        return landedWithoutLength;
    }

    /** Every meeting, in the order in which stretches reach them. */
    List<Meeting> all() {
        return List.copyOf(byPlace.values());
    }

    /** Stretches that are written as conductors, those nearer to the first service first. */
    List<Stretch> conductors() {
        return conductors;
    }
}
