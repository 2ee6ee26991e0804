package org.bondspan.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.site.Site;
import org.bondspan.units.WireSize;

/**
 * Lands copper on metal: an edge with make-up to the node of metal that carries, a noted place for metal that is only
 * bonded. Where an installed conductor lies at the place it is already landed.
 */
final class Landings {
    private final Site site;
    private final NetworkArrays arrays;
    private final Map<String, Integer> metalNodes;
    private final Map<Integer, InstalledAt> installedAt;
    private final WallFaces faces;
    private final Map<String, List<Integer>> places = new LinkedHashMap<>();

    Landings(
            Site site,
            NetworkArrays arrays,
            Map<String, Integer> metalNodes,
            Map<Integer, InstalledAt> installedAt,
            WallFaces faces) {
        this.faces = faces;
        this.site = site;
        this.arrays = arrays;
        this.metalNodes = metalNodes;
        this.installedAt = installedAt;
    }

    void addAll(List<Stack> stacks) {
        for (Stack stack : stacks) {
            for (int node : stack.nodes()) {
                long elevation = arrays.elevation(node);
                stack.metals().stream()
                        .filter(metal -> metal.spans(elevation))
                        .map(Stack.Metal::path)
                        .distinct()
                        .forEach(path -> add(node, path, Optional.empty()));
            }
        }
    }

    /**
     * Lands copper from a place, on whichever face of a wall, on a path; {@code limit} is the largest size that the
     * metal carries.
     */
    void add(int place, String path, Optional<WireSize> limit) {
        faces.faces(place).forEach(face -> land(face, path, limit));
    }

    private void land(int node, String path, Optional<WireSize> limit) {
        Integer metal = metalNodes.get(path);
        if (metal == null) {
            places.computeIfAbsent(path, ignored -> new ArrayList<>()).add(node);
        } else {
            long makeUp = site.makeUpPerEnd().nanometres();
            arrays.addLanding(
                    node,
                    metal,
                    makeUp,
                    path,
                    Optional.ofNullable(installedAt.get(node)).map(InstalledAt::size),
                    limit);
        }
    }

    /** Nodes from which copper may land on metal that is only bonded, by path. */
    Map<String, List<Integer>> places() {
        return places;
    }
}
