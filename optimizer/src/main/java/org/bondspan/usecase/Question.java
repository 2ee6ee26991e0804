package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.layout.Objective;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;

/**
 * What is asked about a site: what would be least if this or that were so. Facts of the building stay as drawn, such as
 * whether a frame is continuous or a pipe exposed; only choices and leave change.
 *
 * @param frame whether structural frames may carry, 250.68(C)(2)
 * @param supervision whether qualified persons alone service the installation, 250.68(C)(1)
 * @param ring whether ground rings may join other electrodes, 250.53(C)
 * @param objective what is to be least
 */
public record Question(Leave frame, Leave supervision, Leave ring, CodeEdition edition, Objective objective) {

    /** Whether something is allowed. */
    public enum Leave {
        AS_DRAWN("as drawn"),
        GIVEN("yes"),
        DENIED("no");

        private final String label;

        Leave(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }

        private boolean decide(boolean drawn) {
            return this == AS_DRAWN ? drawn : this == GIVEN;
        }
    }

    /** What the site file itself asks for, with the least copper. */
    public static Question asDrawn(Site site) {
        return new Question(Leave.AS_DRAWN, Leave.AS_DRAWN, Leave.AS_DRAWN, site.codeEdition(), Objective.COPPER);
    }

    public Question withFrame(Leave next) {
        return new Question(next, supervision, ring, edition, objective);
    }

    public Question withSupervision(Leave next) {
        return new Question(frame, next, ring, edition, objective);
    }

    public Question withRing(Leave next) {
        return new Question(frame, supervision, next, edition, objective);
    }

    public Question withEdition(CodeEdition next) {
        return new Question(frame, supervision, ring, next, objective);
    }

    public Question withObjective(Objective next) {
        return new Question(frame, supervision, ring, edition, next);
    }

    /** The site as this question supposes it. */
    public Site suppose(Site site) {
        return site.withPaths(site.paths().stream().map(this::suppose).toList())
                .withQualifiedPersonsOnly(supervision.decide(site.qualifiedPersonsOnly()))
                .withCodeEdition(edition);
    }

    private SitePath suppose(SitePath path) {
        if (path instanceof StructuralFrame it) {
            return it.withMayCarry(frame.decide(it.mayCarry()));
        }
        return path instanceof RingPath it ? it.withMayInterconnect(ring.decide(it.mayInterconnect())) : path;
    }

    /** In words, what is supposed other than the site file says; empty when nothing is. */
    public List<String> suppositions(Site site) {
        List<String> words = new ArrayList<>();
        Site supposed = suppose(site);
        for (int i = 0; i < site.paths().size(); i++) {
            addDifference(site.paths().get(i), supposed.paths().get(i), words);
        }
        if (supposed.qualifiedPersonsOnly() != site.qualifiedPersonsOnly()) {
            words.add(
                    supposed.qualifiedPersonsOnly()
                            ? "supposed: qualified persons alone service the installation (250.68(C)(1))"
                            : "supposed: no assured qualified supervision (250.68(C)(1))");
        }
        if (edition != site.codeEdition()) {
            words.add("supposed: edition " + edition.year() + " in place of "
                    + site.codeEdition().year());
        }
        return words;
    }

    private static void addDifference(SitePath drawn, SitePath supposed, List<String> words) {
        if (!drawn.equals(supposed)) {
            boolean carries = supposed instanceof StructuralFrame frame
                    ? frame.mayCarry()
                    : supposed instanceof RingPath ring && ring.mayInterconnect();
            String section = supposed instanceof StructuralFrame ? "250.68(C)(2)" : "250.53(C)";
            words.add("supposed: " + drawn.id() + (carries ? " may carry" : " may not carry") + " (" + section + ")");
        }
    }
}
