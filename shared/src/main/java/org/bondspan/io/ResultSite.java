package org.bondspan.io;

import java.util.Optional;
import org.bondspan.io.json.Node;
import org.bondspan.site.Site;

/** Of which site a result is: it says so by name. Ids of two sites can match by chance. */
final class ResultSite {
    private ResultSite() {}

    /** The name of the site that the file names, where it is another. */
    static Optional<String> findOther(Node.Struct root, Site site) {
        return findName(root).map(Node.Text::value).filter(name -> !name.equals(site.name()));
    }

    private static Optional<Node.Text> findName(Node.Struct root) {
        return root.find("site").filter(Node.Text.class::isInstance).map(Node.Text.class::cast);
    }

    /** Throws {@link InputException} with this one message: what follows from it would be nothing but mistakes. */
    static void refuseOther(Node.Struct root, String fileName, Site site) {
        Problems problems = new Problems(fileName);
        findName(root)
                .filter(name -> findOther(root, site).isPresent())
                .ifPresent(name -> problems.report(
                        name.spot(),
                        "site",
                        "the result is of another site, \"" + name.value() + "\", not of \"" + site.name() + "\"",
                        "Give the site of this result, or a result of this site"));
        problems.throwIfAny();
    }
}
