package org.bondspan.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.code.SamePlace;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.review.JointStop.Where;
import org.bondspan.site.Position;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;
import org.jgrapht.alg.util.UnionFind;

/**
 * What one joint joins. It states how copper is joined where ends meet; that it lists a conductor joins nothing by
 * itself, else a way through a footing could hide behind it. An end bears the joint out where it names the joint or its
 * place, or lands on something that lies at its place. Where one does, the joint also taps conductors that run by:
 * those whose drawn line passes its place, or, without a line or a place, the only one that can be meant: the one that
 * ends elsewhere, where what ends at the joint has no other way to it.
 */
final class JointMeeting {
    /** Stands for the joint among the ids of its conductors, which are never empty. */
    private static final String JOINT = "";

    private final SiteMetal metal;
    private final Ends ends;
    private final CopperNodes copper;
    private final JoinedByEnds joined;
    private final Optional<Node> node;
    private final Optional<Position> place;
    private final List<ProposedConductor> proposed = new ArrayList<>();
    private final List<InstalledConductor> installed;
    private final UnionFind<String> met = new UnionFind<>(new HashSet<>(Set.of(JOINT)));
    private final Map<Node, String> elsewhere = new HashMap<>();
    private final Map<String, JointStop> stops = new LinkedHashMap<>();

    JointMeeting(
            SiteMetal metal,
            Ends ends,
            CopperNodes copper,
            JoinedByEnds joined,
            ProposedJoint joint,
            Map<String, ProposedConductor> conductors) {
        this.metal = metal;
        this.ends = ends;
        this.copper = copper;
        this.joined = joined;
        joint.conductors().stream().filter(conductors::containsKey).forEach(id -> proposed.add(conductors.get(id)));
        this.installed = metal.site().listPaths(InstalledConductor.class).stream()
                .filter(path -> joint.conductors().contains(path.id()))
                .toList();
        this.node = copper.find(joint);
        this.place = joint.place().or(this::findPlaceOfEnds);
        listIds().forEach(met::addElement);
        proposed.forEach(this::meetByName);
        if (!listApart().isEmpty()) {
            node.ifPresent(this::settle);
            meetOnThings();
        }
    }

    private Optional<Position> findPlaceOfEnds() {
        return proposed.stream()
                .flatMap(JointMeeting::ends)
                .filter(this::isNamed)
                .flatMap(end -> ends.locate(end).stream())
                .findFirst();
    }

    private static Stream<End> ends(ProposedConductor conductor) {
        return Stream.of(conductor.from(), conductor.to());
    }

    private List<String> listIds() {
        return Stream.concat(
                        proposed.stream().map(ProposedConductor::id),
                        installed.stream().map(InstalledConductor::id))
                .toList();
    }

    private boolean isNamed(End end) {
        return isAtCopper(end) && node.equals(Optional.of(copper.node(end)));
    }

    private static boolean isAtCopper(End end) {
        return end instanceof End.AtJoint || end instanceof End.AtPlace;
    }

    /** By ends that name the joint, another conductor of it, or the same other joint or place. */
    private void meetByName(ProposedConductor conductor) {
        ends(conductor).forEach(end -> {
            if (isNamed(end)) {
                met.union(conductor.id(), JOINT);
            } else if (isAtCopper(end)) {
                met.union(conductor.id(), elsewhere.computeIfAbsent(copper.node(end), at -> conductor.id()));
            } else if (end instanceof End.OnConductor on && listIds().contains(on.conductor())) {
                met.union(conductor.id(), on.conductor());
            } else if (end instanceof End.OnPath on && listIds().contains(on.path())) {
                met.union(conductor.id(), on.path());
            }
        });
    }

    /** Conductors that land on the same thing meet on it, with or without a joint there. */
    private void meetOnThings() {
        Map<String, String> landed = new LinkedHashMap<>();
        for (ProposedConductor conductor : proposed) {
            ends(conductor)
                    .filter(end -> place.map(at -> liesAt(conductor, end, at)).orElse(countNamed() == 0))
                    .flatMap(end -> findThing(end).stream())
                    .forEach(
                            thing -> met.union(conductor.id(), landed.computeIfAbsent(thing, first -> conductor.id())));
        }
    }

    private long countNamed() {
        return proposed.stream()
                .filter(conductor -> ends(conductor).anyMatch(this::isNamed))
                .count();
    }

    private Optional<String> findThing(End end) {
        return JoinedByEnds.findThing(metal, end);
    }

    private List<String> listApart() {
        List<String> ids = listIds();
        String base = ids.stream().anyMatch(this::isAtJoint)
                ? JOINT
                : ids.stream().findFirst().orElse(JOINT);
        return ids.stream().filter(id -> !met.inSameSet(id, base)).toList();
    }

    private boolean isAtJoint(String id) {
        return met.inSameSet(id, JOINT);
    }

    private void settle(Node joint) {
        place.ifPresent(at -> takeInLanded(joint, at));
        if (listIds().stream().noneMatch(this::isAtJoint)) {
            return;
        }
        place.ifPresent(at -> tapWhatRunsBy(joint, at));
        List<String> apart = listApart();
        if (stops.isEmpty() && apart.size() == 1) {
            boolean isMeant = countNamed() == 1 || !joined.isJoined(apart.get(0), joint);
            if (isMeant) {
                tapTheOnlyOne(joint, apart.get(0));
            }
        }
    }

    /** Ends on things that lie at the place; what two of them land on joins them itself. */
    private void takeInLanded(Node joint, Position at) {
        Map<String, Integer> landed = new LinkedHashMap<>();
        for (ProposedConductor conductor : proposed) {
            ends(conductor)
                    .filter(end -> liesAt(conductor, end, at))
                    .flatMap(end -> findThing(end).stream())
                    .forEach(thing -> landed.merge(thing, 1, Integer::sum));
        }
        for (ProposedConductor conductor : proposed) {
            boolean named = isAtJoint(conductor.id());
            Optional<End> end =
                    ends(conductor).filter(each -> liesAt(conductor, each, at)).findFirst();
            if (!named && end.isPresent()) {
                boolean alone = landed.getOrDefault(findThing(end.get()).orElse(""), 0) == 1;
                boolean from = end.get() == conductor.from();
                Where copperSide = from ? Where.AT_FROM : Where.AT_TO;
                Where thing = from ? Where.ON_FROM : Where.ON_TO;
                add(conductor.id(), new JointStop(joint, alone ? copperSide : thing, Length.ZERO));
            }
        }
    }

    private boolean liesAt(ProposedConductor conductor, End end, Position at) {
        return findThing(end).isPresent()
                && ends.liesAt(end, at)
                && (conductor.line().isEmpty()
                        || ends.find(conductor, end)
                                .filter(drawn -> SamePlace.isSame(drawn, at))
                                .isPresent());
    }

    private void tapWhatRunsBy(Node joint, Position at) {
        for (ProposedConductor conductor : proposed) {
            if (!isAtJoint(conductor.id())) {
                ends.findBetween(conductor, at)
                        .ifPresent(along -> add(conductor.id(), new JointStop(joint, Where.BETWEEN, along)));
            }
        }
        for (InstalledConductor conductor : installed) {
            if (!isAtJoint(conductor.id())) {
                metal.places()
                        .findDistance(conductor.id(), at)
                        .ifPresent(along -> add(conductor.id(), new JointStop(joint, Where.BETWEEN, along)));
            }
        }
    }

    /**
     * Nothing else can be meant by a joint at which a single conductor ends, or several that lead nowhere else. Where
     * they do lead to it another way, as through a footing, the joint must not hide that way.
     */
    private void tapTheOnlyOne(Node joint, String id) {
        boolean drawnElsewhere = place.isPresent()
                && (installed.stream().anyMatch(conductor -> conductor.id().equals(id))
                        || proposed.stream()
                                .anyMatch(conductor -> conductor.id().equals(id)
                                        && !conductor.line().isEmpty()));
        if (!drawnElsewhere) {
            add(id, new JointStop(joint, Where.BETWEEN, Length.ZERO));
        }
    }

    private void add(String conductor, JointStop stop) {
        stops.put(conductor, stop);
        met.union(conductor, JOINT);
    }

    /** Where it takes in conductors, by their ids. */
    Map<String, JointStop> stops() {
        return stops;
    }

    /** Conductors that it lists though nothing says that they come there. */
    List<String> strays() {
        return listApart();
    }
}
