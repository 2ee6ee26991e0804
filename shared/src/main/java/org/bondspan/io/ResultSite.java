package org.bondspan.io;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bondspan.io.json.Node;
import org.bondspan.site.Electrode;
import org.bondspan.site.Service;
import org.bondspan.site.Site;

/**
 * Of which site a result is. It says so by name: ids of two sites can match by chance. A site without a name is called
 * by its file, which may be called otherwise tomorrow: it is known by its services and electrodes.
 */
final class ResultSite {
    private ResultSite() {}

    /** The name of the site that the file names, where it is another. */
    static Optional<String> findOther(Node.Struct root, Site site) {
        return findName(root)
                .map(Node.Text::value)
                .filter(name -> !name.equals(site.name()))
                .filter(name -> site.named() || !isAlike(root, site));
    }

    private static Optional<Node.Text> findName(Node.Struct root) {
        return root.find("site").filter(Node.Text.class::isInstance).map(Node.Text.class::cast);
    }

    private static boolean isAlike(Node.Struct root, Site site) {
        Map<String, Object> areas = site.services().stream()
                .collect(Collectors.toMap(
                        Service::id, service -> service.ungrounded().area()));
        Map<String, Object> electrodes =
                site.electrodes().stream().collect(Collectors.toMap(Electrode::id, Electrode::id));
        return areas.equals(members(root, "services", ResultSite::area))
                && electrodes.equals(members(root, "electrodes", electrode -> text(electrode, "id")));
    }

    /** What the objects of a list say, by their ids. */
    private static Map<String, Object> members(Node.Struct root, String list, Function<Node.Struct, Object> what) {
        List<Node> items = root.find(list)
                .filter(Node.Array.class::isInstance)
                .map(array -> ((Node.Array) array).items())
                .orElse(List.of());
        return items.stream()
                .filter(Node.Struct.class::isInstance)
                .map(Node.Struct.class::cast)
                .collect(Collectors.toMap(item -> text(item, "id"), what, (first, second) -> first));
    }

    private static String text(Node.Struct item, String name) {
        return item.find(name)
                .filter(Node.Text.class::isInstance)
                .map(text -> ((Node.Text) text).value())
                .orElse("");
    }

    private static long area(Node.Struct service) {
        return service.find("area")
                .filter(Node.Decimal.class::isInstance)
                .flatMap(number -> ((Node.Decimal) number).value())
                .map(BigDecimal::longValue)
                .orElse(0L);
    }

    /** Throws {@link InputException} with this one message: what follows from it would be nothing but mistakes. */
    static void refuseOther(Node.Struct root, String fileName, Site site) {
        Problems problems = new Problems(fileName);
        String unlike = site.named() ? "" : ": their services or electrodes differ";
        findName(root)
                .filter(name -> findOther(root, site).isPresent())
                .ifPresent(name -> problems.report(
                        name.spot(),
                        "site",
                        "the result is of another site, \"" + name.value() + "\", not of \"" + site.name() + "\""
                                + unlike,
                        "Give the site of this result, or a result of this site"));
        problems.throwIfAny();
    }
}
