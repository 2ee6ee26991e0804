package org.bondspan.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bondspan.code.Carrier;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.SiteFindings;
import org.bondspan.finding.Finding;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.units.Length;

/**
 * The review of one proposal. What is unlawful is a violation where some pair of a service and a thing to be connected
 * has no other lawful way of sufficient size, else a note.
 */
public final class Review {
    private final Site site;
    private final Proposal proposal;
    private final GroundingElectrodeSystem system;
    private final Metal metal;
    private final Ends ends;
    private final Map<String, List<Offence>> ofConductors = new LinkedHashMap<>();
    private final TieAnalysis analysis;
    private final SharedStretches shared;
    private final BreakCheck breaks;

    public Review(Site site, Proposal proposal) {
        this.site = site;
        this.proposal = proposal;
        this.system = GroundingElectrodeSystem.of(site);
        this.metal = new Metal(site);
        this.ends = new Ends(site, proposal);
        List<ConductorCheck> checks = List.of(
                new AluminumCheck(ends),
                new ProtectionCheck(),
                new FerrousRacewayCheck(),
                new MechanicalJointCheck(proposal, groundingElectrodeConductors()));
        for (ProposedConductor conductor : proposal.conductors()) {
            ofConductors.put(conductor.id(), run(checks, conductor));
        }
        ProposedTie tie = new ProposedTie(
                site, metal, proposal, conductor -> ofConductors.getOrDefault(conductor.id(), List.of()));
        this.analysis = new TieAnalysis(site, system, metal, tie);
        this.shared = new SharedStretches(analysis);
        this.breaks = new BreakCheck(site, system, proposal);
    }

    private static List<Offence> run(List<ConductorCheck> checks, ProposedConductor conductor) {
        return checks.stream().flatMap(check -> check.find(conductor).stream()).toList();
    }

    /** Conductors between each service and the first electrode, frame or pipe that it reaches. */
    private Set<String> groundingElectrodeConductors() {
        ProposedTie bare = new ProposedTie(site, metal, proposal, conductor -> List.of());
        TieAnalysis ways = new TieAnalysis(site, system, metal, bare);
        Map<Service, Way> first = new LinkedHashMap<>();
        ways.ways()
                .forEach((pair, way) -> first.merge(
                        pair.service(),
                        way,
                        (a, b) -> b.spans().size() < a.spans().size() ? b : a));
        return first.values().stream()
                .flatMap(way -> way.conductors().stream())
                .map(ProposedConductor::id)
                .collect(Collectors.toSet());
    }

    /** Everything found, violations first. */
    public List<Finding> findings() {
        Set<Finding> findings = new LinkedHashSet<>();
        Set<Offence> relied = analysis.reliedOn();
        findings.addAll(new ConnectionCheck(site, system, analysis).find());
        relied.forEach(offence -> findings.add(
                offence.check() == CheckedRule.RING_WITHOUT_LEAVE ? offence.asCaution() : offence.asViolation()));
        known().stream()
                .filter(offence -> relied.stream().noneMatch(found -> isAlike(found, offence)))
                .forEach(offence -> findings.add(
                        offence.check() == CheckedRule.RING_WITHOUT_LEAVE ? offence.asCaution() : offence.asNote()));
        Set<String> small = relied.stream().map(Offence::subject).collect(Collectors.toSet());
        findings.addAll(sharedSizes(small));
        findings.addAll(breaks.find());
        List<ConductorCheck> cautions = List.of(new LengthCheck(ends, site.lengthUnit()), new OffPlanCheck(site));
        proposal.conductors()
                .forEach(conductor -> run(cautions, conductor).forEach(offence -> findings.add(offence.asCaution())));
        findings.addAll(SiteFindings.of(site, system));
        carriersUsed().forEach(carrier -> findings.addAll(SiteFindings.whereItCarries(carrier)));
        return findings.stream()
                .map(this::withEditionNote)
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    private static boolean isAlike(Offence a, Offence b) {
        return a.check() == b.check() && a.subject().equals(b.subject());
    }

    /** All that is unlawful by itself, relied on or not. */
    private Set<Offence> known() {
        Set<Offence> known = new LinkedHashSet<>();
        ofConductors.values().forEach(known::addAll);
        known.addAll(analysis.tie().declared());
        for (String vertex : analysis.tie().graph().vertexSet()) {
            long landed = analysis.tie().graph().edgesOf(vertex).stream()
                    .filter(span -> span.conductor().isPresent())
                    .count();
            if (landed > 1) {
                known.addAll(analysis.tie().node(vertex).offences());
            }
            if (landed > 0) {
                analysis.tie().graph().edgesOf(vertex).stream()
                        .filter(span -> span.conductor().isEmpty() && vertex.endsWith(Metal.BEYOND))
                        .forEach(span -> known.addAll(span.offences()));
            }
        }
        return known;
    }

    /** Sizes by the sum of the services that share a stretch; and what is larger than needed. */
    private List<Finding> sharedSizes(Set<String> alreadySmall) {
        List<Finding> findings = new ArrayList<>();
        for (ProposedConductor conductor : proposal.conductors()) {
            Optional<SharedStretches.Required> required = shared.find(conductor);
            if (required.isPresent() && !alreadySmall.contains(conductor.id())) {
                SharedStretches.Required need = required.get();
                if (!conductor.size().isAtLeast(need.own())) {
                    findings.add(SizeOffence.ofConductor(conductor, need.own(), need.toward())
                            .asViolation());
                } else if (!need.own().isAtLeast(conductor.size())) {
                    findings.add(SizeOffence.larger(conductor, need.own(), need.toward()));
                }
            }
        }
        for (String vertex : analysis.tie().graph().vertexSet()) {
            Node node = analysis.tie().node(vertex);
            if (node.capacity().isPresent() && !alreadySmall.contains(node.id())) {
                shared.findAcross(vertex)
                        .filter(need -> !node.capacity().get().isAtLeast(need.copper()))
                        .ifPresent(need -> findings.add(
                                SizeOffence.ofCarrier(node.id(), node.capacity().get(), need.copper(), need.toward())
                                        .asViolation()));
            }
        }
        return findings;
    }

    /** Frames and rings that lawful ways pass. */
    private List<Carrier> carriersUsed() {
        Set<String> passed = new LinkedHashSet<>();
        analysis.ways()
                .values()
                .forEach(way ->
                        passed.addAll(way.vertices().subList(0, way.vertices().size() - 1)));
        return metal.media().carriers().stream()
                .filter(carrier -> passed.contains(Metal.key(carrier.path().id())))
                .toList();
    }

    private Finding withEditionNote(Finding finding) {
        return CheckedRule.findEditionNote(finding.rule(), site.codeEdition())
                .map(note -> new Finding(
                        finding.rule(), finding.severity(), finding.subject(), finding.message() + " " + note))
                .orElse(finding);
    }

    /** Every conductor with the size that it needs. */
    public List<JudgedConductor> conductors() {
        return proposal.conductors().stream().map(this::judge).toList();
    }

    private JudgedConductor judge(ProposedConductor conductor) {
        Optional<SharedStretches.Required> required = shared.find(conductor).or(() -> breaks.findNeed(conductor));
        return new JudgedConductor(
                conductor.id(),
                conductor.size(),
                conductor.material(),
                required.map(SharedStretches.Required::own),
                required.map(SharedStretches.Required::toward).orElse(""),
                ends.length(conductor));
    }

    /** The best way of every pair of a service and a thing to be connected. */
    public List<JudgedWay> ways() {
        List<JudgedWay> told = new ArrayList<>();
        analysis.ways()
                .forEach((pair, way) -> told.add(new JudgedWay(
                        pair.service().id(),
                        pair.obligation().name(),
                        way.isLawful(),
                        passes(way),
                        way.conductors().stream()
                                .min(Comparator.comparing(ProposedConductor::size))
                                .map(ProposedConductor::id))));
        analysis.apart()
                .forEach(pair -> told.add(new JudgedWay(
                        pair.service().id(), pair.obligation().name(), false, List.of(), Optional.empty())));
        return told;
    }

    private List<String> passes(Way way) {
        Set<String> passes = new LinkedHashSet<>();
        for (int i = 0; i < way.spans().size(); i++) {
            way.spans().get(i).conductor().map(ProposedConductor::id).ifPresent(passes::add);
            String next = way.vertices().get(i + 1);
            if (i < way.spans().size() - 1 && next.startsWith(Metal.PATH)) {
                passes.add(analysis.tie().node(next).id());
            }
        }
        return List.copyOf(passes);
    }

    /** Length of every conductor that tells it; a conductor without one is missing. */
    public Map<ProposedConductor, Length> lengths() {
        Map<ProposedConductor, Length> lengths = new LinkedHashMap<>();
        proposal.conductors()
                .forEach(conductor -> ends.length(conductor).ifPresent(length -> lengths.put(conductor, length)));
        return lengths;
    }
}
