package org.bondspan.network;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bondspan.code.Carrier;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.Rule;
import org.bondspan.code.SiteFindings;
import org.bondspan.code.StandingCautions;
import org.bondspan.code.StretchNeed;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.End;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Link;
import org.bondspan.layout.Objective;
import org.bondspan.layout.SizeTotal;
import org.bondspan.layout.Status;
import org.bondspan.price.MissingPriceException;
import org.bondspan.site.Evidence;
import org.bondspan.site.Site;
import org.bondspan.solve.Outcome;
import org.bondspan.solve.Solver;
import org.bondspan.solve.Tree;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Length;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;

/** The least-copper interconnection of a site: network, proof, and the answer in the site's terms. */
public final class Interconnection {
    /** Where the search has its proof, and the take-off of the answer costs more. */
    private static final String BEYOND_SEARCH =
            "The bound leaves out splices and other costs beyond the search; more time would hardly help.";

    private final Site site;
    private final GroundingElectrodeSystem system;
    private final MediaThatMayCarry media;
    private final Network network;
    private final RouteProblem problem;
    private final Objective objective;
    private final Optional<InstalledPrices> prices;

    private Interconnection(Site site, Objective objective) {
        this.site = site;
        this.objective = objective;
        this.system = GroundingElectrodeSystem.of(site);
        this.media = MediaThatMayCarry.of(site);
        this.network = NetworkBuilder.build(site, system, media);
        StretchNeed need = new StretchNeed(site.services(), system.obligations());
        List<WireSize> needed = List.copyOf(need.listSizes());
        this.prices = site.prices().map(each -> new InstalledPrices(site, each, needed));
        List<WireSize> sizes = buying().map(InstalledPrices::sizes).orElse(needed);
        this.problem = new RouteProblem(network, system.obligations(), need, sizes);
    }

    /** Prices where they decide what is bought. */
    private Optional<InstalledPrices> buying() {
        return objective == Objective.COST ? prices : Optional.empty();
    }

    /**
     * The least copper within limits. Taps are made in the way that is cheaper at the prices of the site, if it has
     * any. Empty when no lawful tie was found though none was proven impossible.
     *
     * @throws ArithmeticException when the plan is so large and so fine that weights cannot be compared exactly
     */
    public static Optional<Layout> find(Site site, SearchLimits limits) {
        return new Interconnection(site, Objective.COPPER).route(limits);
    }

    /**
     * A route of least cost.
     *
     * @param bound no lawful route costs less, splices apart; empty when there is none
     * @param unproven what to tell where it costs more than the bound; empty when there is none
     */
    public record Priced(Layout layout, Optional<ExactMoney> bound, Optional<Finding> unproven) {}

    /**
     * The least installed cost within limits, at the prices of the site. Empty when no lawful tie was found though none
     * was proven impossible.
     *
     * @throws MissingPriceException naming every price that it takes and that is not stated
     * @throws ArithmeticException when the plan is so large and so fine that costs cannot be compared
     */
    public static Optional<Priced> findLeastCost(Site site, SearchLimits limits) {
        return new Interconnection(site, Objective.COST).routeByCost(limits);
    }

    private Optional<Priced> routeByCost(SearchLimits limits) {
        InstalledPrices asked = prices.orElseThrow();
        CostProblem.Integers integers = CostProblem.of(problem, asked);
        ExactMoney forJumpers = jumpers().stream()
                .map(jumper -> asked.jumper(jumper.size(), jumper.pieces()))
                .reduce(ExactMoney.ZERO, ExactMoney::plus);
        if (!asked.missing().isEmpty()) {
            throw new MissingPriceException(asked.missing());
        }
        Outcome outcome = Solver.solve(integers.problem(), limits.forSolver(problem));
        if (outcome instanceof Outcome.Least least) {
            ExactMoney bound = integers.worth(least.tree().weight()).plus(forJumpers);
            return Optional.of(priced(least.tree(), bound, Proof.LEAST, limits));
        }
        if (outcome instanceof Outcome.BestFound best) {
            ExactMoney bound = integers.worth(best.lowerBoundWeight()).plus(forJumpers);
            return Optional.of(priced(best.tree(), bound, Proof.of(best, problem, limits), limits));
        }
        return outcome instanceof Outcome.Impossible
                ? Optional.of(new Priced(impossible(), Optional.empty(), Optional.empty()))
                : Optional.empty();
    }

    private Priced priced(Tree tree, ExactMoney bound, Proof proof, SearchLimits limits) {
        InstalledPrices asked = prices.orElseThrow();
        ChosenTree settled = new OneSize(problem, asked).settle(ChosenTree.of(tree, problem.terminalCount()));
        ChosenTree straight = new Straightening(problem, Optional.of(new EdgePrices(problem, asked)), limits::isOver)
                .straighten(settled);
        Finding unproven = Proof.note(proof.why().orElse(BEYOND_SEARCH));
        return new Priced(tied(straight, proof), Optional.of(bound), Optional.of(unproven));
    }

    private List<Conductor> jumpers() {
        return new PipeJumpers(site, problem.need(), buying()).list(system, media);
    }

    private Optional<Layout> route(SearchLimits limits) {
        Outcome outcome = Solver.solve(problem.toIntegers(), limits.forSolver(problem));
        if (outcome instanceof Outcome.Least least) {
            return Optional.of(tied(straight(least.tree(), limits), Proof.LEAST));
        }
        if (outcome instanceof Outcome.BestFound best) {
            return Optional.of(tied(straight(best.tree(), limits), Proof.of(best, problem, limits)));
        }
        return outcome instanceof Outcome.Impossible ? Optional.of(impossible()) : Optional.empty();
    }

    private ChosenTree straight(Tree tree, SearchLimits limits) {
        return new Straightening(problem, Optional.empty(), limits::isOver)
                .straighten(ChosenTree.of(tree, problem.terminalCount()));
    }

    private Layout tied(ChosenTree chosen, Proof proof) {
        Tie tie = new Tie(problem, chosen);
        List<Stretch> stretches = Stretches.of(tie);
        Meetings meetings = new Meetings(tie, stretches);
        Places places = new Places(problem, tie);
        Conductors naming = new Conductors(problem, tie, meetings, places, prices, PassedWalls.of(stretches));
        List<Link> links = new Links(problem, media, tie, meetings, places).list(stretches);
        List<Conductor> conductors = new ArrayList<>(naming.conductors());
        conductors.addAll(jumpers());
        States states = States.tied(site, system, new Ways(problem, tie, stretches, naming).list());
        List<Finding> findings = findings(links);
        proof.findNote().ifPresent(findings::add);
        return layout(proof, states, conductors, links, naming.joints(), findings);
    }

    private Layout impossible() {
        Reach reach = new Reach(problem);
        List<Finding> findings = new ArrayList<>(reach.findings());
        findings.addAll(SiteFindings.of(site, system));
        States states = States.unreached(site, system, reach.unreached());
        return layout(Proof.IMPOSSIBLE, states, List.of(), List.of(), List.of(), findings);
    }

    private List<Finding> findings(List<Link> links) {
        List<Finding> findings = new ArrayList<>(SiteFindings.of(site, system));
        Set<String> carrying = links.stream()
                .filter(link -> !endsAtOwnRing(link))
                .map(Link::path)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        for (Carrier carrier : media.carriers()) {
            if (carrying.contains(carrier.path().id())) {
                findings.addAll(SiteFindings.whereItCarries(carrier));
            }
        }
        network.obliqueLevels()
                .forEach(level -> findings.add(new Finding(
                        Rule.GEOMETRY.section(),
                        Severity.NOTE,
                        level,
                        "Something on this open floor is oblique to x and y: the answer is least over runs parallel to x and y"
                                + " through the places of the plan.")));
        return findings;
    }

    /** Through a ring's path to the ring itself: it is bonded so, and carries nothing. */
    private boolean endsAtOwnRing(Link link) {
        return media.find(link.path())
                .filter(Carrier.Ring.class::isInstance)
                .map(carrier -> ((Carrier.Ring) carrier).electrode().id())
                .filter(ring -> link.to().equals(new End.AtElectrode(ring, Optional.empty())))
                .isPresent();
    }

    private Layout layout(
            Proof proof,
            States states,
            List<Conductor> conductors,
            List<Link> links,
            List<Joint> joints,
            List<Finding> findings) {
        List<SizeTotal> sizes = totals(conductors);
        Optional<Copper> copper = proof.status() == Status.IMPOSSIBLE ? Optional.empty() : Optional.of(copper(sizes));
        return new Layout(
                site.name(),
                site.adoption(),
                site.codeEdition(),
                site.lengthUnit(),
                proof.status(),
                copper,
                sizes,
                copper.map(Copper::weight).map(proof::bound),
                copper.map(Copper::weight).map(proof::gapPercent).orElse(BigDecimal.ZERO),
                conductors,
                links,
                joints,
                states.services(),
                states.electrodes(),
                states.bonds(),
                media.excluded(),
                findings.stream()
                        .sorted(Comparator.comparing(Finding::severity))
                        .toList(),
                site.evidence().stream().filter(Evidence::isAssumed).toList(),
                StandingCautions.NOT_CHECKED,
                StandingCautions.CAUTIONS,
                objective,
                Optional.empty());
    }

    private static List<SizeTotal> totals(Collection<Conductor> conductors) {
        Map<WireSize, Length> bySize = new TreeMap<>(Comparator.reverseOrder());
        conductors.forEach(
                conductor -> bySize.merge(conductor.size(), conductor.length().total(), Length::plus));
        return bySize.entrySet().stream()
                .map(entry ->
                        new SizeTotal(entry.getKey(), entry.getValue(), Weight.of(entry.getKey(), entry.getValue())))
                .toList();
    }

    private Copper copper(List<SizeTotal> sizes) {
        Length length = sizes.stream().map(SizeTotal::length).reduce(Length.ZERO, Length::plus);
        Weight weight = sizes.stream().map(SizeTotal::weight).reduce(Weight.ZERO, Weight::plus);
        return new Copper(length, weight, length.increasedBy(site.wastePercent()));
    }
}
