package org.bondspan.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bondspan.io.json.Node;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.JointMethod;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.layout.Proposal.ProposedLink;
import org.bondspan.site.Material;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;

/**
 * Reads proposals, and results as proposals. Either the whole file is in order and all that it names exists, or an
 * {@link InputException} names each mistake with its line, its field and a way out.
 */
public final class ProposalReader {
    /** What proposal files call their format. */
    public static final String FORMAT = "bondspan-proposal/1";

    private static final List<String> OF_RESULT = List.of(
            "site",
            "codeEdition",
            "objective",
            "status",
            "copper",
            "sizes",
            "lowerBound",
            "gapPercent",
            "services",
            "electrodes",
            "bonds",
            "excluded",
            "findings",
            "notChecked",
            "cautions",
            "adoption",
            "assumed",
            "cost");

    private final Site site;
    private final boolean isResult;
    private final EndReader ends;

    private ProposalReader(Site site, Node.Struct root) {
        this.site = site;
        this.isResult = FileRoot.isFormat(root, LayoutWriter.FORMAT);
        this.ends = new EndReader(site);
    }

    /** Throws {@link InputException}. */
    public static Proposal read(Path file, Site site) {
        return parse(InputFile.text(file), file.toString(), site);
    }

    /** All that the stream holds; the name is for messages. Throws {@link InputException}. */
    public static Proposal read(InputStream in, String name, Site site) {
        try {
            return parse(InputFile.text(in, name), name, site);
        } catch (IOException e) {
            throw InputFile.problem(name, "cannot be read", "Check where it comes from");
        }
    }

    /** The text of a proposal or a result for that site; its name is for messages. Throws {@link InputException}. */
    public static Proposal parse(String text, String fileName, Site site) {
        Problems problems = new Problems(fileName);
        Node.Struct root = FileRoot.parse(text, fileName, problems, List.of(FORMAT, LayoutWriter.FORMAT), "proposal");
        ProposalReader reader = new ProposalReader(site, root);
        Proposal proposal = reader.proposal(root, problems);
        if (reader.isResult && problems.isAny()) {
            ResultSite.refuseOther(root, fileName, site);
        }
        problems.throwIfAny();
        return proposal;
    }

    private Proposal proposal(Node.Struct root, Problems problems) {
        Scope scope = Scope.about(site, isResult ? "result" : "proposal", root, problems);
        Proposal proposal = proposal(Fields.ofFile(root, scope));
        scope.ids().check(problems);
        return proposal;
    }

    private Proposal proposal(Fields fields) {
        FileRoot.read(fields, FORMAT);
        fields.require("conductors", "List them; an empty list proposes none");
        List<Bound<ProposedConductor>> conductors =
                fields.each("conductors", "conductor", f -> new Bound<>(conductor(f), f));
        List<Bound<ProposedLink>> links = fields.each("links", "link", f -> new Bound<>(link(f), f));
        Set<String> joinable = joinable(conductors);
        List<ProposedJoint> joints = fields.each("joints", "joint", f -> joint(f, joinable));
        if (isResult) {
            fields.accept(OF_RESULT);
        }
        fields.done();
        checkJoints(conductors, links, joints);
        TapCircles.check(conductors);
        return new Proposal(
                conductors.stream().map(Bound::value).toList(),
                links.stream().map(Bound::value).toList(),
                joints,
                isResult ? ResultSite.findOther(fields.node(), site) : Optional.empty());
    }

    /** What a joint may list: conductors of the file, and installed ones of the site. */
    private Set<String> joinable(List<Bound<ProposedConductor>> conductors) {
        Set<String> ids = new LinkedHashSet<>();
        conductors.forEach(bound -> ids.add(bound.value().id()));
        site.listPaths(InstalledConductor.class).forEach(path -> ids.add(path.id()));
        return ids;
    }

    private static void checkJoints(
            List<Bound<ProposedConductor>> conductors, List<Bound<ProposedLink>> links, List<ProposedJoint> joints) {
        Set<String> ids = joints.stream().flatMap(joint -> joint.id().stream()).collect(Collectors.toSet());
        JointNames names = new JointNames(ids);
        conductors.forEach(bound -> {
            names.note(bound.fields(), "from", bound.value().from());
            names.note(bound.fields(), "to", bound.value().to());
        });
        links.forEach(bound -> {
            names.note(bound.fields(), "from", bound.value().from());
            names.note(bound.fields(), "to", bound.value().to());
        });
        names.check();
    }

    private ProposedConductor conductor(Fields fields) {
        String id = fields.id(Kind.CONDUCTOR);
        if (isResult) {
            fields.accept(List.of("role", "serves", "basis", "why", "pieces", "crosses"));
        }
        return new ProposedConductor(
                id,
                fields.size("size", "Give its size, such as \"3/0 AWG\""),
                fields.findWord("material", Material.class).orElse(Material.COPPER),
                ends.end(fields, "from"),
                ends.end(fields, "to"),
                fields.each("line", "place", place -> Drawn.in(place).position()),
                isResult ? fields.findObject("length", "length", ProposalReader::total) : fields.findDistance("length"),
                fields.findWord("protection", Enclosure.class).orElse(Enclosure.NONE),
                fields.flag("exposedToDamage", false),
                fields.flag("outdoors", false),
                fields.flag("bothEndsBonded", false));
    }

    private static Length total(Fields fields) {
        fields.accept(List.of("plan", "vertical", "makeUp", "jumper"));
        return fields.sum("total", "Give the length in {unit}");
    }

    private ProposedLink link(Fields fields) {
        if (isResult) {
            fields.accept(List.of("medium", "length", "basis", "fromPlace", "toPlace"));
        }
        return new ProposedLink(
                fields.reference("path", Kind.PATH, "Give the id of the path that carries"),
                ends.end(fields, "from"),
                ends.end(fields, "to"));
    }

    /**
     * In a result an unknown conductor is left to the review, which tells it: whoever takes a conductor out of a result
     * to see what that breaks need not mend the joints that the program wrote. In a proposal it is a mistake.
     */
    private ProposedJoint joint(Fields fields, Set<String> joinable) {
        Optional<String> id = fields.has("id") ? Optional.of(fields.id(Kind.JOINT)) : Optional.empty();
        fields.accept(List.of("id"));
        if (isResult) {
            fields.accept(List.of("basis"));
        }
        fields.require("conductors", "Give the ids of the conductors that meet there");
        return new ProposedJoint(
                id.filter(word -> !word.isEmpty()),
                fields.findObject("place", "place", place -> Drawn.in(place).position()),
                isResult
                        ? fields.names("conductors", Kind.CONDUCTOR)
                        : fields.namesOf("conductors", Kind.CONDUCTOR, joinable),
                fields.requireWord(
                                "method",
                                JointMethod.class,
                                "Write \"exothermic\", \"irreversible\", \"busbar\" or \"mechanical\"")
                        .orElse(JointMethod.EXOTHERMIC));
    }
}
