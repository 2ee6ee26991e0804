package org.bondspan.io;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.bondspan.io.json.Node;
import org.bondspan.io.json.Spot;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * One object of a file, read field by field. Required fields that are missing or wrong are reported, and a harmless
 * value stands in so that reading goes on; what nobody asked for is reported when the object is done.
 */
final class Fields {
    private final Node.Struct node;
    private final String path;
    private final String label;
    private final Scope scope;
    private final Set<String> known = new LinkedHashSet<>();

    private Fields(Node.Struct node, String path, String label, Scope scope) {
        this.node = node;
        this.path = path;
        this.label = label;
        this.scope = scope;
        reportDuplicates();
    }

    static Fields ofFile(Node.Struct node, Scope scope) {
        return new Fields(node, "", "", scope);
    }

    Scope scope() {
        return scope;
    }

    Node.Struct node() {
        return node;
    }

    /** Path of one of its fields, for messages. */
    String path(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    boolean has(String name) {
        return node.find(name).isPresent();
    }

    /** Whether a list is missing or empty. */
    boolean isWithout(String name) {
        Optional<Node> value = node.find(name);
        return value.isEmpty()
                || (value.get() instanceof Node.Array list && list.items().isEmpty());
    }

    void reportNone(String name, String advice) {
        report(name, has(name) ? "is empty" : "is missing", advice);
    }

    Optional<Node> find(String name) {
        known.add(name);
        return node.find(name);
    }

    Optional<Node> require(String name, String advice) {
        Optional<Node> found = find(name);
        if (found.isEmpty()) {
            report(name, "is missing", advice);
        }
        return found;
    }

    /** At the field where it is written, else at the object. */
    void report(String name, String message, String advice) {
        Spot spot = node.find(name).map(Node::spot).orElse(node.spot());
        scope.problems().report(spot, path(name), message, inUnit(advice));
    }

    /** At the object as a whole. */
    void reportWhole(String message, String advice) {
        scope.problems().report(node.spot(), path, message, inUnit(advice));
    }

    private String inUnit(String advice) {
        return advice.replace("{unit}", scope.values().unit().symbol());
    }

    Optional<String> findText(String name) {
        return find(name).flatMap(value -> scope.values().text(value, path(name)));
    }

    boolean flag(String name, boolean otherwise) {
        return find(name)
                .flatMap(value -> scope.values().flag(value, path(name)))
                .orElse(otherwise);
    }

    boolean requireFlag(String name, String advice) {
        return require(name, advice)
                .flatMap(value -> scope.values().flag(value, path(name)))
                .orElse(true);
    }

    Optional<Length> findLength(String name) {
        return find(name).flatMap(value -> scope.values().length(value, path(name)));
    }

    /** Not negative. */
    Optional<Length> findDistance(String name) {
        return find(name).flatMap(value -> scope.values().distance(value, path(name)));
    }

    /** Not negative. */
    Length distance(String name, String advice) {
        return require(name, advice)
                .flatMap(value -> scope.values().distance(value, path(name)))
                .orElse(Length.ZERO);
    }

    /** What lengths come to, not negative. */
    Length sum(String name, String advice) {
        return require(name, advice)
                .flatMap(value -> scope.values().sum(value, path(name)))
                .orElse(Length.ZERO);
    }

    /** Not negative. */
    Optional<BigDecimal> findMeasure(String name) {
        return find(name).flatMap(value -> scope.values().measure(value, path(name)));
    }

    /** Not negative. */
    BigDecimal measure(String name, String advice) {
        return require(name, advice)
                .flatMap(value -> scope.values().measure(value, path(name)))
                .orElse(BigDecimal.ZERO);
    }

    Optional<WireSize> findSize(String name) {
        return find(name).flatMap(value -> scope.values().size(value, path(name)));
    }

    WireSize size(String name, String advice) {
        return require(name, advice)
                .flatMap(value -> scope.values().size(value, path(name)))
                .orElse(WireSize.AWG_8);
    }

    <E extends Enum<E>> Optional<E> findWord(String name, Class<E> type) {
        return find(name).flatMap(value -> scope.values().word(value, path(name), type));
    }

    <E extends Enum<E>> Optional<E> requireWord(String name, Class<E> type, String advice) {
        return require(name, advice).flatMap(value -> scope.values().word(value, path(name), type));
    }

    /** The id, unique within the space of its kind; empty where there is none. */
    String id(Kind kind) {
        String id = name("id", "Give it an id of its own");
        if (!id.isEmpty()) {
            find("id").ifPresent(value -> scope.ids().declare(kind, id, value.spot(), path("id")));
        }
        return id;
    }

    /** A text that is not empty. */
    String name(String name, String advice) {
        Optional<String> text =
                require(name, advice).flatMap(value -> scope.values().text(value, path(name)));
        if (text.isPresent() && text.get().isBlank()) {
            report(name, "must not be empty", advice);
        }
        return text.filter(word -> !word.isBlank()).orElse("");
    }

    /** The id of something else. */
    Optional<String> findReference(String name, Kind kind) {
        Optional<String> id = findText(name);
        id.ifPresent(word -> find(name).ifPresent(value -> scope.ids().refer(kind, word, value.spot(), path(name))));
        return id;
    }

    String reference(String name, Kind kind, String advice) {
        require(name, advice);
        return findReference(name, kind).orElse("");
    }

    /** Ids of other things, each once. */
    List<String> references(String name, Kind kind) {
        return distinctWords(
                name, kind, (word, item, itemPath) -> scope.ids().refer(kind, word, item.spot(), itemPath));
    }

    /** Ids that need not exist: a review tells when they do not. */
    List<String> names(String name, Kind kind) {
        return distinctWords(name, kind, (word, item, itemPath) -> {});
    }

    /** Ids of other things, each once, all of which have been read. */
    List<String> namesOf(String name, Kind kind, Set<String> read) {
        return distinctWords(name, kind, (word, item, itemPath) -> {
            if (!read.contains(word)) {
                scope.values()
                        .reject(
                                item,
                                itemPath,
                                "there is no " + kind.words().replaceFirst("^an? ", "") + " \"" + word + "\"",
                                Nearest.advice(word, read));
            }
        });
    }

    private interface OnWord {
        void accept(String word, Node item, String itemPath);
    }

    private List<String> distinctWords(String name, Kind kind, OnWord onWord) {
        List<String> ids = new ArrayList<>();
        List<Node> items = findList(name).map(Node.Array::items).orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            Node item = items.get(i);
            String itemPath = path(name) + "[" + i + "]";
            Optional<String> id = scope.values().text(item, itemPath);
            id.ifPresent(word -> onWord.accept(word, item, itemPath));
            if (id.isPresent() && ids.contains(id.get())) {
                scope.values()
                        .reject(item, itemPath, "names " + kind.the() + " \"" + id.get() + "\" again", "Remove it");
            }
            id.filter(word -> !ids.contains(word)).ifPresent(ids::add);
        }
        return ids;
    }

    Optional<Node.Array> findList(String name) {
        return find(name).flatMap(value -> scope.values().list(value, path(name)));
    }

    Optional<Node.Array> list(String name, String advice) {
        require(name, advice);
        return findList(name);
    }

    <T> Optional<T> findObject(String name, String kind, Function<Fields, T> reader) {
        return find(name)
                .flatMap(value -> scope.values().object(value, path(name)))
                .map(struct -> readChild(struct, path(name), kind, reader));
    }

    /** All objects of a list, named by their ids or else by their numbers. */
    <T> List<T> each(String name, String kind, Function<Fields, T> reader) {
        List<T> all = new ArrayList<>();
        List<Node> items = findList(name).map(Node.Array::items).orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            String itemPath = path(name) + "[" + i + "]";
            String itemLabel = kind + " " + idOf(items.get(i)).orElse(String.valueOf(i + 1));
            scope.values()
                    .object(items.get(i), itemPath)
                    .ifPresent(struct -> all.add(readChild(struct, itemPath, itemLabel, reader)));
        }
        return all;
    }

    static Optional<String> idOf(Node node) {
        return node instanceof Node.Struct struct
                        && struct.find("id").orElse(struct) instanceof Node.Text id
                        && !id.value().isBlank()
                ? Optional.of(id.value())
                : Optional.empty();
    }

    private <T> T readChild(Node.Struct struct, String childPath, String kind, Function<Fields, T> reader) {
        Fields child = new Fields(struct, childPath, label.isEmpty() ? kind : kind + " of " + label, scope);
        T value = reader.apply(child);
        child.done();
        return value;
    }

    /** Fields that may stand there and are not read. */
    void accept(List<String> names) {
        known.addAll(names);
    }

    /** Where it cannot be told which fields belong there. */
    void acceptAll() {
        node.members().forEach(member -> known.add(member.name()));
    }

    /** After the last field: takes the evidence and reports what is left. */
    void done() {
        findText("evidence")
                .ifPresent(text -> scope.sources().add(node.spot(), label.isEmpty() ? scope.noun() : label, text));
        for (Node.Member member : node.members()) {
            if (!known.contains(member.name())) {
                scope.problems()
                        .report(
                                member.spot(),
                                path(member.name()),
                                "is not a field of " + (label.isEmpty() ? "a " + scope.noun() : label),
                                Nearest.advice(member.name(), known));
            }
        }
    }

    private void reportDuplicates() {
        Map<String, Spot> seen = new HashMap<>();
        for (Node.Member member : node.members()) {
            Spot first = seen.putIfAbsent(member.name(), member.spot());
            if (first != null) {
                scope.problems()
                        .report(
                                member.spot(),
                                path(member.name()),
                                "is written twice in one object, first on line " + first.line(),
                                "Remove one of the two");
            }
        }
    }
}
