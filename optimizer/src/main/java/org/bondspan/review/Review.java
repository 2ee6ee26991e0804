package org.bondspan.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.code.Obligation;
import org.bondspan.code.SiteFindings;
import org.bondspan.finding.Finding;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.review.Node.Kind;
import org.bondspan.site.CodeEdition;
import org.bondspan.units.Length;

/**
 * The review of one proposal. What is unlawful is a violation where some pair of a service and a thing to be connected
 * has no other lawful way of sufficient size, else a note.
 */
public final class Review {
    private final SiteMetal metal;
    private final List<Finding> ofSite;
    private final Proposal proposal;
    private final Ends ends;
    private final LengthCheck lengths;
    private final List<ConductorCheck> looks;
    private final Map<String, List<Offence>> ofConductors = new HashMap<>();
    private final PairVerdicts verdicts;
    private final BreakJumpers jumpers;
    private final Requirements requirements;

    Review(SiteMetal metal, CopperPlan plan, List<Finding> ofSite, Proposal proposal) {
        this.metal = metal;
        this.ofSite = ofSite;
        this.proposal = proposal;
        this.ends = new Ends(metal, proposal);
        List<ConductorCheck> checks = List.of(
                new AluminumCheck(metal, ends),
                new ProtectionCheck(),
                new FerrousRacewayCheck(),
                new MechanicalJointCheck(metal, ends, proposal));
        this.lengths = new LengthCheck(ends, metal);
        this.looks = List.of(
                new LandingCheck(metal, ends),
                lengths,
                new OffPlanCheck(plan, metal.site().lengthUnit()));
        proposal.conductors().forEach(conductor -> ofConductors.put(conductor.id(), find(checks, conductor)));
        this.verdicts = new PairVerdicts(metal, new ProposedTie(metal, ends, proposal, this::offences));
        this.jumpers = new BreakJumpers(metal, ends, proposal);
        this.requirements = new Requirements(verdicts, jumpers);
    }

    private static List<Offence> find(List<? extends ConductorCheck> checks, ProposedConductor conductor) {
        return checks.stream().flatMap(check -> check.find(conductor).stream()).toList();
    }

    private List<Offence> offences(ProposedConductor conductor) {
        return ofConductors.getOrDefault(conductor.id(), List.of());
    }

    /** Everything found, violations first. */
    public List<Finding> findings() {
        CodeEdition edition = metal.site().codeEdition();
        Set<Finding> findings = new LinkedHashSet<>();
        List<Offence> relied = oneOfAKind(listRelied());
        relied.forEach(offence -> findings.add(offence.asRelied(edition)));
        oneOfAKind(listUnrelied()).stream()
                .filter(offence -> relied.stream().noneMatch(offence::isAlike))
                .forEach(offence -> findings.add(offence.asUnrelied(edition)));
        findings.addAll(ofSite);
        findings.addAll(whereMetalCarries());
        return findings.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }

    private static List<Offence> oneOfAKind(List<Offence> offences) {
        List<Offence> kinds = new ArrayList<>();
        offences.stream()
                .filter(offence -> kinds.stream().noneMatch(offence::isAlike))
                .forEach(kinds::add);
        return kinds;
    }

    /** What some pair, or a pipe with a break, has to rely on. */
    private List<Offence> listRelied() {
        ConductorSizeCheck sizes = new ConductorSizeCheck(requirements, new Twins(verdicts.tie(), proposal));
        List<Offence> relied = new ArrayList<>(new ConnectionCheck(metal, verdicts).find());
        relied.addAll(verdicts.unlawful());
        relied.addAll(new BreakCheck(jumpers, metal.site().lengthUnit(), this::offences).find());
        proposal.conductors().forEach(conductor -> sizes.find(conductor).ifPresent(relied::add));
        relied.addAll(new CarrierSizeCheck(verdicts, requirements).find());
        return relied;
    }

    private List<Offence> listUnrelied() {
        List<ConductorCheck> ofTie =
                List.of(new SpareConductorCheck(verdicts, requirements), new LoopCheck(verdicts.tie(), jumpers));
        List<Offence> unrelied = new ArrayList<>(new IdleLinks(verdicts.tie(), jumpers).find(proposal));
        proposal.otherSite().ifPresent(name -> unrelied.add(ofOtherSite(name)));
        unrelied.addAll(new JointCheck(metal, verdicts.tie().joints()).find(proposal));
        for (ProposedConductor conductor : proposal.conductors()) {
            unrelied.addAll(offences(conductor));
            unrelied.addAll(find(ofTie, conductor));
            unrelied.addAll(find(looks, conductor));
        }
        return unrelied;
    }

    private Offence ofOtherSite(String name) {
        return new Offence(
                CheckedRule.OTHER_SITE,
                metal.site().name(),
                "The result names another site, \"" + name + "\".",
                "Review it with the site that it is of, or see to it that both are the same building.");
    }

    /** Cautions for frames and rings that ways pass, and for frames that carry to their in-ground members. */
    private List<Finding> whereMetalCarries() {
        Stream<Node> reached = verdicts.all().stream()
                .filter(verdict -> verdict.pair().obligation().kind() == Obligation.Kind.ELECTRODE)
                .flatMap(verdict -> verdict.best().stream())
                .map(way -> way.nodes().get(way.nodes().size() - 1))
                .filter(node -> node.capacity().isEmpty());
        return Stream.concat(verdicts.passed().stream(), reached)
                .filter(node -> node.kind() == Kind.PATH)
                .map(Node::id)
                .distinct()
                .flatMap(path -> metal.findCarrier(path).stream())
                .flatMap(carrier -> SiteFindings.whereItCarries(carrier).stream())
                .toList();
    }

    /** Every conductor with the size that it needs. */
    public List<JudgedConductor> conductors() {
        return proposal.conductors().stream().map(this::judge).toList();
    }

    private JudgedConductor judge(ProposedConductor conductor) {
        Optional<Requirement> required = requirements
                .find(conductor)
                .or(() -> requirements
                        .findFallingShort(conductor)
                        .map(verdict -> Requirement.of(verdict.pair(), conductor.material())));
        Optional<Length> needed = lengths.findNeeded(conductor);
        return new JudgedConductor(
                conductor.id(),
                conductor.size(),
                conductor.material(),
                required.map(Requirement::size),
                required.map(Requirement::toward).orElse(""),
                needed.or(() -> ends.length(conductor)),
                needed.isPresent() ? LengthFrom.NEEDED : ends.lengthFrom(conductor));
    }

    /** The best way of every pair of a service and a thing to be connected. */
    public List<JudgedWay> ways() {
        return verdicts.all().stream().map(Review::judge).toList();
    }

    private static JudgedWay judge(PairVerdict verdict) {
        return new JudgedWay(
                verdict.pair().service().id(),
                verdict.pair().obligation().name(),
                verdict.isLawful(),
                verdict.best().map(Review::passes).orElse(List.of()),
                verdict.best()
                        .flatMap(way -> way.conductors().stream()
                                .min(Comparator.comparing(ProposedConductor::size))
                                .map(ProposedConductor::id)));
    }

    private static List<String> passes(Way way) {
        Set<String> passes = new LinkedHashSet<>();
        for (int i = 0; i < way.spans().size(); i++) {
            way.spans().get(i).findCopper().ifPresent(passes::add);
            Node next = way.nodes().get(i + 1);
            if (i < way.spans().size() - 1 && next.kind() != Kind.COPPER) {
                passes.add(next.id());
            }
        }
        return List.copyOf(passes);
    }
}
