package org.bondspan.solve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Instances of the PACE 2018 challenge (CC0-1.0) under their SteinLib names, with their proven optima, as found in a
 * folder given by {@code -Dbenchmarks=...} or in {@code ../shared/benchmarks} of a folder above.
 */
final class PublicInstances {

    private PublicInstances() {}

    record Instance(Path file, int nodes, int edges, int terminals, long optimum) {
        String name() {
            return file.getFileName().toString();
        }
    }

    static Optional<Path> findFolder() {
        String given = System.getProperty("benchmarks");
        if (given != null) {
            return Optional.of(Path.of(given));
        }
        Path start = Path.of("").toAbsolutePath();
        return Stream.iterate(start, at -> at != null, Path::getParent)
                .map(at -> at.resolve("../shared/benchmarks").normalize())
                .filter(folder -> Files.exists(folder.resolve("optima.csv")))
                .findFirst();
    }

    static List<Instance> list(Path folder) {
        return lines(folder.resolve("optima.csv")).stream()
                .skip(1)
                .map(line -> line.split(",", -1))
                .map(row -> new Instance(
                        folder.resolve(row[0]),
                        Integer.parseInt(row[1]),
                        Integer.parseInt(row[2]),
                        Integer.parseInt(row[3]),
                        Long.parseLong(row[4])))
                .toList();
    }

    /** One rank; every terminal lands at its node for nothing. */
    static Sketch read(Instance instance) {
        List<Sketch.Stretch> edges = new ArrayList<>();
        List<List<Sketch.Landing>> terminals = new ArrayList<>();
        for (String line : lines(instance.file())) {
            String[] words = line.trim().split("\\s+", -1);
            if (words[0].equals("E")) {
                edges.add(new Sketch.Stretch(node(words[1]), node(words[2]), Long.parseLong(words[3]), 0));
            } else if (words[0].equals("T")) {
                terminals.add(List.of(new Sketch.Landing(node(words[1]), 0, 0)));
            }
        }
        return sketch(instance.nodes(), edges, terminals);
    }

    private static Sketch sketch(int nodes, List<Sketch.Stretch> edges, List<List<Sketch.Landing>> terminals) {
        List<Boolean> metal = Stream.generate(() -> false).limit(nodes).toList();
        return new Sketch(
                1,
                metal,
                List.of(List.of(1L)),
                edges,
                terminals,
                CutNeed.ofPairs(new int[terminals.size()][terminals.size()]));
    }

    /**
     * A group instance in disguise (sets WRP3 and WRP4): each terminal is a dummy, linked to the nodes of its group by
     * edges of a large weight. Without the dummies the groups are landings to choose from, and the optimum is less by
     * the large weight for each.
     */
    static Sketch readGroups(Instance instance, long large) {
        Sketch disguised = read(instance);
        List<Integer> dummies =
                disguised.terminals().stream().map(ways -> ways.get(0).node()).toList();
        List<List<Sketch.Landing>> groups = new ArrayList<>();
        dummies.forEach(dummy -> groups.add(new ArrayList<>()));
        List<Sketch.Stretch> edges = new ArrayList<>();
        for (Sketch.Stretch edge : disguised.edges()) {
            int group = Math.max(dummies.indexOf(edge.a()), dummies.indexOf(edge.b()));
            if (group < 0) {
                edges.add(edge);
            } else {
                int node = edge.a() + edge.b() - dummies.get(group);
                groups.get(group).add(new Sketch.Landing(node, edge.length() - large, 0));
            }
        }
        return sketch(instance.nodes(), edges, groups);
    }

    private static int node(String number) {
        return Integer.parseInt(number) - 1;
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
