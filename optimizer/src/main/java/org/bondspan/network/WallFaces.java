package org.bondspan.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;

/**
 * Makes walls count. A place on a wall becomes several, one on each of its faces; from face to face copper passes the
 * wall. So a run along a wall passes nothing, and what lies on a wall is reached from both sides. Runs that meet a wall
 * between two places are noted with it.
 */
final class WallFaces {
    private final NetworkArrays arrays;
    private final List<WallRays> walls;
    /** By place on a wall: its faces, in the order of sectors, the first between the first two rays. */
    private final Map<Integer, List<Optional<Integer>>> sectors = new HashMap<>();

    private final Map<Integer, List<WallRay>> rays = new HashMap<>();
    private final Map<Integer, List<WallRay>> floorRuns = new HashMap<>();
    private final Map<Integer, List<String>> passed = new HashMap<>();

    WallFaces(NetworkArrays arrays, List<Level> levels) {
        this.arrays = arrays;
        this.walls = levels.stream().map(WallRays::new).toList();
    }

    /** @param installedAt gets the other faces of its places too */
    void split(Map<Integer, InstalledAt> installedAt) {
        if (walls.stream().allMatch(WallRays::isEmpty)) {
            return;
        }
        int places = arrays.nodeCount();
        int runs = arrays.edgeCount();
        for (int place = 0; place < places; place++) {
            List<WallRay> here = walls.get(arrays.level(place)).at(arrays.at(place));
            if (here.size() > 1) {
                rays.put(place, here);
            }
        }
        for (int run = 0; run < runs; run++) {
            if (arrays.kind(run) == EdgeKind.FLOOR) {
                noteFloorRun(arrays.from(run), arrays.to(run));
                noteFloorRun(arrays.to(run), arrays.from(run));
            }
        }
        List.copyOf(rays.keySet()).stream().sorted().forEach(this::makeFaces);
        for (int run = 0; run < runs; run++) {
            notePassed(run);
            join(run);
        }
        sectors.keySet().stream()
                .filter(installedAt::containsKey)
                .toList()
                .forEach(place -> faces(place).forEach(face -> {
                    InstalledAt installed = installedAt.get(place);
                    if (installed != null) {
                        installedAt.put(face, installed);
                    }
                }));
        sectors.keySet().stream().sorted().forEach(this::linkFaces);
    }

    private void noteFloorRun(int place, int to) {
        if (rays.containsKey(place)) {
            floorRuns
                    .computeIfAbsent(place, ignored -> new ArrayList<>())
                    .add(WallRay.between(arrays.at(place), arrays.at(to), Optional.empty()));
        }
    }

    /** A sector between two edges of the floor, with no run in it, lies outside. */
    private void makeFaces(int place) {
        List<WallRay> around = rays.getOrDefault(place, List.of());
        List<Optional<Integer>> faces = new ArrayList<>();
        boolean first = true;
        for (int i = 0; i < around.size(); i++) {
            int sector = i;
            boolean isOutside = around.get(i).wall().isEmpty()
                    && around.get((i + 1) % around.size()).wall().isEmpty()
                    && floorRuns.getOrDefault(place, List.of()).stream()
                            .noneMatch(run -> isWithin(run, around, sector));
            if (isOutside) {
                faces.add(Optional.empty());
            } else {
                faces.add(Optional.of(
                        first
                                ? place
                                : arrays.addPlace(arrays.level(place), arrays.at(place), arrays.elevation(place))));
                first = false;
            }
        }
        sectors.put(place, faces);
    }

    private static boolean isWithin(WallRay run, List<WallRay> around, int sector) {
        return around.stream().noneMatch(run::isAlong) && sectorOf(run, around) == sector;
    }

    private static int sectorOf(WallRay run, List<WallRay> around) {
        int sector = around.size() - 1;
        for (int i = 0; i < around.size(); i++) {
            if (around.get(i).angle() < run.angle()) {
                sector = i;
            }
        }
        return sector;
    }

    private void linkFaces(int place) {
        List<WallRay> around = rays.getOrDefault(place, List.of());
        List<Optional<Integer>> faces = sectors.getOrDefault(place, List.of());
        for (int i = 0; i < around.size(); i++) {
            Optional<Integer> left = faces.get(i);
            Optional<Integer> right = faces.get((i + around.size() - 1) % around.size());
            Optional<String> wall = around.get(i).wall();
            if (wall.isPresent() && left.isPresent() && right.isPresent() && !left.equals(right)) {
                passed.put(arrays.edgeCount(), List.of(wall.get()));
                arrays.addCrossing(left.get(), right.get(), wall.get());
            }
        }
    }

    /** All faces of a place, itself among them. */
    List<Integer> faces(int place) {
        List<Optional<Integer>> faces = sectors.getOrDefault(place, List.of());
        List<Integer> there = faces.stream().flatMap(Optional::stream).toList();
        return there.isEmpty() ? List.of(place) : there;
    }

    /** Walls passed, by run. */
    Map<Integer, List<String>> passed() {
        return passed;
    }

    private void notePassed(int run) {
        boolean newCopper = arrays.kind(run) == EdgeKind.FLOOR || arrays.kind(run) == EdgeKind.LINE;
        PlanPoint from = arrays.at(arrays.from(run));
        PlanPoint to = arrays.at(arrays.to(run));
        if (newCopper && !from.equals(to)) {
            List<String> between = walls.get(arrays.level(arrays.from(run))).passed(from, to);
            if (!between.isEmpty()) {
                passed.put(run, between);
            }
        }
    }

    private record Pair(int from, int to) {}

    /** Leads a run from face to face; along a wall there is one on either side. */
    private void join(int run) {
        int from = arrays.from(run);
        int to = arrays.to(run);
        if (!sectors.containsKey(from) && !sectors.containsKey(to)) {
            return;
        }
        List<Pair> pairs = pairs(from, to);
        List<String> walls = passed.getOrDefault(run, List.of());
        for (int i = 0; i < pairs.size(); i++) {
            int made = i == 0 ? run : arrays.addCopyOf(run);
            arrays.lead(made, pairs.get(i).from(), pairs.get(i).to());
            if (i > 0 && !walls.isEmpty()) {
                passed.put(made, walls);
            }
        }
    }

    private List<Pair> pairs(int from, int to) {
        boolean upright = arrays.at(from).equals(arrays.at(to));
        if (upright) {
            return arrays.level(from) == arrays.level(to) ? sameSectors(from, to) : all(faces(from), faces(to));
        }
        List<Integer> left = sides(from, to, 0);
        List<Integer> right = sides(from, to, 1);
        List<Integer> leftThere = sides(to, from, 1);
        List<Integer> rightThere = sides(to, from, 0);
        List<Pair> pairs = new ArrayList<>(all(left, leftThere));
        all(right, rightThere).stream().filter(pair -> !pairs.contains(pair)).forEach(pairs::add);
        return pairs;
    }

    private List<Pair> sameSectors(int from, int to) {
        List<Optional<Integer>> ones = sectors.getOrDefault(from, List.of());
        List<Optional<Integer>> others = sectors.getOrDefault(to, List.of());
        if (ones.size() != others.size()) {
            return all(faces(from), faces(to));
        }
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < ones.size(); i++) {
            if (ones.get(i).isPresent() && others.get(i).isPresent()) {
                pairs.add(new Pair(ones.get(i).get(), others.get(i).get()));
            }
        }
        return pairs.isEmpty() ? all(faces(from), faces(to)) : pairs;
    }

    private static List<Pair> all(List<Integer> from, List<Integer> to) {
        return from.stream()
                .flatMap(one -> to.stream().map(other -> new Pair(one, other)))
                .toList();
    }

    /** The face of a place on one side of a run towards another: side 0 is its left, 1 its right. */
    private List<Integer> sides(int place, int towards, int side) {
        List<WallRay> around = rays.getOrDefault(place, List.of());
        List<Optional<Integer>> faces = sectors.getOrDefault(place, List.of());
        if (faces.isEmpty()) {
            return List.of(place);
        }
        WallRay run = WallRay.between(arrays.at(place), arrays.at(towards), Optional.empty());
        int sector = sectorOf(run, around);
        for (int i = 0; i < around.size(); i++) {
            if (around.get(i).isAlong(run)) {
                sector = (i + around.size() - side) % around.size();
                if (faces.get(sector).isEmpty()) {
                    sector = (i + around.size() - 1 + side) % around.size();
                }
            }
        }
        return faces.get(sector).map(List::of).orElseGet(() -> faces(place));
    }
}
