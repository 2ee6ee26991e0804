package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.End;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Link;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.RingPath;

/**
 * A written answer read back as a graph, from its ends and links alone: is it one tree, does everything that must be
 * connected hang from it as a leaf, and has each stretch the size that the cut through it needs?
 */
final class TieGraph {
    private final Site site;
    private final Layout layout;
    private final Book book;
    private final Map<String, String> sameAs = new HashMap<>();
    private final List<Edge> edges = new ArrayList<>();
    private final Set<String> seen = new LinkedHashSet<>();

    /** {@code size} is that of a conductor, new or installed; empty for a landing or a link through metal. */
    private record Edge(String a, String b, Optional<String> size, boolean isNew) {}

    TieGraph(Site site, Layout layout) {
        this.site = site;
        this.layout = layout;
        this.book = new Book(site);
        List<Conductor> ties = layout.conductors().stream()
                .filter(conductor -> conductor.length().jumper().isZero())
                .toList();
        ties.forEach(this::add);
        layout.links().forEach(this::add);
        layout.joints()
                .forEach(joint -> ties.stream()
                        .filter(conductor -> joint.conductors().contains(conductor.id()))
                        .forEach(conductor -> join(joint, conductor)));
    }

    private void join(Joint joint, Conductor conductor) {
        boolean startsThere =
                RunCheck.isSame(site, joint.place(), conductor.line().get(0));
        boolean endsThere = RunCheck.isSame(
                site, joint.place(), conductor.line().get(conductor.line().size() - 1));
        // make-up alone has no run: then the end that names copper is at the joint
        boolean atStart = startsThere && !(endsThere && isCopper(conductor.to()));
        join((atStart ? "from " : "to ") + conductor.id(), "joint " + joint.id());
    }

    private void add(Conductor conductor) {
        String from = "from " + conductor.id();
        String to = "to " + conductor.id();
        edges.add(new Edge(from, to, Optional.of(conductor.size().label()), true));
        end(from, conductor.from(), conductor.line().get(0));
        end(to, conductor.to(), conductor.line().get(conductor.line().size() - 1));
    }

    private void end(String copper, End end, Position place) {
        if (end instanceof End.AtJoint joint) {
            join(copper, "joint " + joint.joint());
        } else if (end instanceof End.OnConductor on) {
            Conductor tapped = layout.conductors().stream()
                    .filter(conductor -> conductor.id().equals(on.conductor()))
                    .findFirst()
                    .orElseThrow();
            boolean atStart = on.at().isZero();
            assertThat(atStart || on.at().equals(tapped.length().total()))
                    .as("a tap at an end")
                    .isTrue();
            join(copper, (atStart ? "from " : "to ") + tapped.id());
        } else if (end instanceof End.OnPath on && isInstalled(on.path())) {
            join(copper, installed(on.path(), place));
        } else {
            edges.add(new Edge(copper, thing(end), Optional.empty(), false));
        }
    }

    private boolean isCopper(End end) {
        return end instanceof End.AtJoint
                || end instanceof End.OnConductor
                || (end instanceof End.OnPath on && isInstalled(on.path()));
    }

    private static String thing(End end) {
        if (end instanceof End.AtService at) {
            return "service " + at.service();
        }
        if (end instanceof End.AtElectrode at) {
            return "electrode " + at.electrode();
        }
        return "path " + ((End.OnPath) end).path();
    }

    private void add(Link link) {
        if (isInstalled(link.path())) {
            String from = installed(link.path(), link.fromPlace().orElseThrow());
            String to = installed(link.path(), link.toPlace().orElseThrow());
            if (!from.equals(to)) {
                edges.add(new Edge(from, to, Optional.of(sizeOfInstalled(link.path())), false));
            }
            addEnd(link, from, link.from());
            addEnd(link, to, link.to());
        } else {
            String metal = "path " + link.path();
            linkMetal(metal, link.from(), link.fromPlace());
            linkMetal(metal, link.to(), link.toPlace());
        }
    }

    private void addEnd(Link link, String at, End end) {
        boolean onItself = end instanceof End.OnPath on && on.path().equals(link.path());
        if (!onItself) {
            addOnce(new Edge(at, thing(end), Optional.empty(), false));
        }
    }

    private void linkMetal(String metal, End end, Optional<Position> place) {
        if (end instanceof End.OnPath on && isInstalled(on.path())) {
            addOnce(new Edge(installed(on.path(), place.orElseThrow()), metal, Optional.empty(), false));
        } else if (!thing(end).equals(metal)) {
            addOnce(new Edge(metal, thing(end), Optional.empty(), false));
        }
    }

    /** Several links name the same landing; one edge stands for it. */
    private void addOnce(Edge edge) {
        if (!edges.contains(edge) && !edges.contains(new Edge(edge.b, edge.a, edge.size, edge.isNew))) {
            edges.add(edge);
        }
    }

    private boolean isInstalled(String path) {
        return site.listPaths(InstalledConductor.class).stream()
                .anyMatch(conductor -> conductor.id().equals(path));
    }

    private String sizeOfInstalled(String path) {
        return site.listPaths(InstalledConductor.class).stream()
                .filter(conductor -> conductor.id().equals(path))
                .map(conductor -> conductor.size().label())
                .findFirst()
                .orElseThrow();
    }

    private static String installed(String path, Position place) {
        return "on " + path + " " + place.at() + " " + place.height();
    }

    private void join(String a, String b) {
        sameAs.put(find(a), find(b));
    }

    private String find(String vertex) {
        String next = sameAs.getOrDefault(vertex, vertex);
        return next.equals(vertex) ? vertex : find(next);
    }

    void assertLawful() {
        edges.forEach(edge -> {
            seen.add(find(edge.a));
            seen.add(find(edge.b));
        });
        if (edges.isEmpty()) {
            // services and electrodes at one place without make-up: nothing to write
            return;
        }
        assertThat(edges).as("edges of a tree on %s", seen).hasSize(seen.size() - 1);
        assertThat(side(find(edges.get(0).a), Optional.empty())).containsExactlyInAnyOrderElementsOf(seen);
        Map<String, Integer> terminals = terminals();
        terminals.keySet().forEach(this::assertLeaf);
        for (Edge edge : edges) {
            int mask = 0;
            Set<String> side = side(find(edge.a), Optional.of(edge));
            for (Map.Entry<String, Integer> terminal : terminals.entrySet()) {
                mask |= side.contains(terminal.getKey()) ? terminal.getValue() : 0;
            }
            assertSize(edge, book.need(mask));
        }
    }

    private void assertSize(Edge edge, int need) {
        edge.size.ifPresent(size -> {
            int has = Book.SIZES.indexOf(size);
            assertThat(edge.isNew ? has == need : has >= need)
                    .as("%s for a need of %s", edge, Book.SIZES.get(need))
                    .isTrue();
        });
        for (RingPath path : site.listPaths(RingPath.class)) {
            if (edge.b.equals("path " + path.id()) || edge.a.equals("path " + path.id())) {
                int own = Book.SIZES.indexOf(site.listElectrodes(GroundRing.class)
                        .get(0)
                        .conductorSize()
                        .label());
                assertThat(need).as("through the ring").isLessThanOrEqualTo(own);
            }
        }
    }

    /** What is no carrier is a leaf. */
    private void assertLeaf(String vertex) {
        boolean carrier = vertex.startsWith("path ")
                && book.duties().stream()
                        .noneMatch(duty -> duty.along().stream().anyMatch(path -> vertex.equals("path " + path)));
        long degree = edges.stream()
                .filter(edge -> find(edge.a).equals(vertex) || find(edge.b).equals(vertex))
                .count();
        if (!carrier) {
            assertThat(degree).as("ways that land on %s", vertex).isEqualTo(1);
        }
    }

    /** Vertices of services and duties that occur, with their bits; fails when one is missing. */
    private Map<String, Integer> terminals() {
        Map<String, Integer> terminals = new LinkedHashMap<>();
        int bit = 1;
        for (var service : site.services()) {
            assertThat(seen).contains("service " + service.id());
            terminals.merge("service " + service.id(), bit, (a, b) -> a | b);
            bit <<= 1;
        }
        for (Book.Duty duty : book.duties()) {
            List<String> places = new ArrayList<>();
            duty.members().forEach(member -> places.addAll(List.of("electrode " + member, "path " + member)));
            duty.with().forEach(path -> places.add("path " + path));
            String place = places.stream().filter(seen::contains).findFirst().orElse("nowhere");
            assertThat(seen).as("%s is connected", duty.members()).contains(place);
            terminals.merge(place, bit, (a, b) -> a | b);
            bit <<= 1;
        }
        return terminals;
    }

    private Set<String> side(String start, Optional<Edge> without) {
        Set<String> reached = new LinkedHashSet<>(Set.of(start));
        Deque<String> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            String at = open.remove();
            for (Edge edge : edges) {
                if (without.equals(Optional.of(edge))) {
                    continue;
                }
                String a = find(edge.a);
                String b = find(edge.b);
                if (a.equals(at) || b.equals(at)) {
                    String next = a.equals(at) ? b : a;
                    if (reached.add(next)) {
                        open.add(next);
                    }
                }
            }
        }
        return reached;
    }
}
