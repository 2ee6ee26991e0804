package org.bondspan.code;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bondspan.io.SiteReader;
import org.bondspan.site.Site;

/**
 * A small site in the words of site files, single quotes for double; by default one service of 4 x 500 kcmil copper.
 */
final class SiteSketch {
    private final List<String> members = new ArrayList<>();
    private final List<String> services = new ArrayList<>();
    private final List<String> electrodes = new ArrayList<>();
    private final List<String> paths = new ArrayList<>();

    private SiteSketch() {}

    static SiteSketch site() {
        return new SiteSketch();
    }

    static SiteSketch edition(int year) {
        return new SiteSketch().with("'codeEdition': " + year);
    }

    /** A field of the site itself. */
    SiteSketch with(String member) {
        members.add(member);
        return this;
    }

    SiteSketch service(String id, String supply, String ungrounded) {
        services.add("{'id': '%s', 'supply': '%s', 'ungrounded': {%s}, 'connections': [{'at': [1, %d]}]}"
                .formatted(id, supply, ungrounded, services.size() + 1));
        return this;
    }

    /** An electrode with its facts, at a place far from the others where the facts give none. */
    SiteSketch electrode(String id, String type, String facts) {
        String place = "'connections': [{'at': [%d, 0]}]".formatted(10 * (electrodes.size() + 1));
        String all = facts.contains("'connections'") ? facts : facts.isEmpty() ? place : facts + ", " + place;
        electrodes.add("{'id': '%s', 'type': '%s', %s}".formatted(id, type, all));
        return this;
    }

    SiteSketch rod(String id) {
        return electrode(id, "rod", "'rodLength': 8, 'diameter': 0.625");
    }

    SiteSketch waterPipe(String id) {
        return electrode(id, "water-pipe", "'earthContact': 10, 'connections': [{'at': [9, 9], 'fromEntrance': 1}]");
    }

    SiteSketch footing(String id, String more) {
        return electrode(
                id,
                "concrete-encased",
                "'conductorLength': 20, 'conductor': 'rebar', 'diameter': 0.5, 'cover': 2"
                        + (more.isEmpty() ? "" : ", " + more));
    }

    SiteSketch path(String id, String medium, String facts) {
        paths.add("{'id': '%s', 'medium': '%s', %s}".formatted(id, medium, facts));
        return this;
    }

    /** A frame of two columns and a beam. */
    SiteSketch frame(String id, String facts) {
        return path(
                id,
                "structural-frame",
                "'columns': [[50, 10], [90, 10]], 'beams': [[[50, 10], [90, 10]]], 'top': 14, " + facts);
    }

    /** Piping of 20 ft along x. */
    SiteSketch piping(String id, String facts) {
        return path(id, "water-pipe", "'line': [[9, 20], [29, 20]]" + (facts.isEmpty() ? "" : ", " + facts));
    }

    Site read() {
        if (services.isEmpty()) {
            service("S", "lateral", "'material': 'copper', 'size': '500 kcmil', 'sets': 4");
        }
        List<String> all = new ArrayList<>(members);
        all.add("'format': 'bondspan-site/1'");
        all.add("'name': 'Hall'");
        all.add("'levels': [{'id': 'L1', 'outline': [[0, 0], [500, 0], [500, 100], [0, 100]]}]");
        all.add(list("services", services));
        all.add(list("electrodes", electrodes));
        all.add(list("paths", paths));
        return SiteReader.parse("{" + String.join(", ", all).replace('\'', '"') + "}", "sketch.site.json");
    }

    private static String list(String name, List<String> items) {
        return items.stream().collect(Collectors.joining(", ", "'" + name + "': [", "]"));
    }
}
