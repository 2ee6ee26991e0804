package org.bondspan.network;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;

/**
 * Where copper may run on a site and what carries without copper: places and metal as nodes, runs, landings and
 * installed conductors as edges. Frozen once built.
 */
final class Network {
    private final Site site;
    private final NetworkArrays arrays;
    private final int places;
    private final Map<String, Integer> metalNodes;
    private final Map<Position, Integer> connectionNodes;
    private final Map<String, List<Integer>> landingPlaces;
    private final Map<Integer, InstalledAt> installedAt;
    private final List<String> obliqueLevels;
    private final WallFaces faces;

    /**
     * @param places nodes below this number are places, those from it on are metal
     * @param metalNodes the node of every path that carries
     * @param connectionNodes the node of every connection, by its position
     * @param landingPlaces nodes from which copper may land on a frame or piping that carries nothing
     * @param installedAt nodes where an installed conductor lies, with the largest such
     * @param faces places on walls, and what passes them
     * @param obliqueLevels levels on whose open floor something oblique stands
     */
    Network(
            Site site,
            NetworkArrays arrays,
            int places,
            Map<String, Integer> metalNodes,
            Map<Position, Integer> connectionNodes,
            Map<String, List<Integer>> landingPlaces,
            Map<Integer, InstalledAt> installedAt,
            List<String> obliqueLevels,
            WallFaces faces) {
        this.site = site;
        this.arrays = arrays;
        this.places = places;
        this.metalNodes = Map.copyOf(metalNodes);
        this.connectionNodes = Map.copyOf(connectionNodes);
        this.landingPlaces = Map.copyOf(landingPlaces);
        this.installedAt = Map.copyOf(installedAt);
        this.obliqueLevels = List.copyOf(obliqueLevels);
        this.faces = faces;
    }

    Site site() {
        return site;
    }

    NetworkArrays arrays() {
        return arrays;
    }

    int nodeCount() {
        return places + metalNodes.size();
    }

    int placeCount() {
        return places;
    }

    boolean isMetal(int node) {
        return node >= places;
    }

    Map<String, Integer> metalNodes() {
        return metalNodes;
    }

    int metalNode(String path) {
        Integer node = metalNodes.get(path);
        if (node == null) {
            throw new IllegalArgumentException(path + " carries nothing");
        }
        return node;
    }

    /** The path behind a node of metal. */
    String metalPath(int node) {
        return metalNodes.entrySet().stream()
                .filter(entry -> entry.getValue() == node)
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    int connectionNode(Position position) {
        Integer node = connectionNodes.get(position);
        if (node == null) {
            throw new IllegalArgumentException("no connection at " + position);
        }
        return node;
    }

    /** A place on all faces of the walls that it lies on. */
    List<Integer> faces(int place) {
        return faces.faces(place);
    }

    List<Integer> landingPlaces(String path) {
        return landingPlaces.getOrDefault(path, List.of());
    }

    /** The installed conductor that lies at a place: already landed on what is there. */
    Optional<InstalledAt> findInstalledAt(int node) {
        return Optional.ofNullable(installedAt.get(node));
    }

    /** Ids of walls that an edge passes. */
    List<String> walls(int edge) {
        return faces.passed().getOrDefault(edge, List.of());
    }

    List<String> obliqueLevels() {
        return obliqueLevels;
    }

    /** Where a place is, told from its own level's floor. */
    Position position(int place) {
        Level level = site.levels().get(arrays.level(place));
        PlanPoint at = arrays.at(place);
        return new Position(
                level.id(), at, Length.ofNanometres(arrays.elevation(place)).minus(level.floor()));
    }
}
