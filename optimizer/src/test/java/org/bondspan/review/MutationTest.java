package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.bondspan.code.Carrier;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.LineLengths;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.Obligation;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.io.LayoutWriter;
import org.bondspan.io.ProposalReader;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.End;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Role;
import org.bondspan.layout.Status;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;
import org.bondspan.usecase.RandomSiteFiles;
import org.bondspan.usecase.RouteSite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Answers of {@code route} for random sites comply as written and read again; with one thing broken, the review names
 * that very thing. {@code -Dseed=7} repeats one site.
 */
class MutationTest {
    private static final int SITES = 600;
    private static final Set<String> CONNECTION = Set.of("250.50", "250.58", "250.104(A)", "250.104(C)");

    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final List<String> missed = new ArrayList<>();

    @Test
    void answersComplyAndWhatIsBrokenIsNamed(TestReporter reporter) {
        LongStream seeds = Long.getLong("seed") == null
                ? LongStream.range(0, SITES)
                : LongStream.of(Long.getLong("seed").longValue());
        seeds.forEach(this::check);
        reporter.publishEntry("sites answered and ways to break them", counts.toString());
        assertThat(missed).as("of " + counts).isEmpty();
        if (Long.getLong("seed") == null) {
            assertThat(counts.values()).as("%s", counts).allMatch(count -> count >= 20);
        }
    }

    private void check(long seed) {
        Site site = SiteReader.parse(RandomSiteFiles.of(seed), "random.site.json");
        Layout layout = RouteSite.of(site);
        if (layout.status() != Status.LEAST) {
            return;
        }
        count("sites");
        Proposal proposal = ProposalReader.parse(LayoutWriter.toJson(layout), "random.result.json", site);
        Set<String> standing = violations(layout.findings());
        Set<String> found = violations(new Reviewer(site).review(proposal).findings());
        checkNeeds(seed, site, proposal);
        if (!found.equals(standing)) {
            missed.add("seed " + seed + ": the answer has " + standing + ", its review " + found);
            return;
        }
        checkDrops(seed, site, layout, proposal);
        for (Mutant mutant : mutants(site, layout, proposal)) {
            Set<String> named =
                    violations(new Reviewer(site).review(mutant.proposal()).findings());
            if (!named.contains(mutant.expected())) {
                missed.add("seed " + seed + ": " + mutant.what() + ": " + mutant.expected() + " is not in " + named);
            }
        }
    }

    /** A route of least copper has no conductor that is larger than it need be, or that nothing relies on. */
    private void checkNeeds(long seed, Site site, Proposal proposal) {
        for (JudgedConductor conductor : new Reviewer(site).review(proposal).conductors()) {
            if (!conductor.needed().equals(Optional.of(conductor.size()))) {
                missed.add("seed " + seed + ": " + conductor.id() + " is " + conductor.size() + ", needed is "
                        + conductor.needed());
            }
        }
    }

    private void count(String what) {
        counts.merge(what, 1, Integer::sum);
    }

    private static Set<String> violations(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.VIOLATION)
                .map(finding -> finding.rule() + " " + finding.subject())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Without a conductor, what lay beyond it is named: each thing, or a service where services lie on both sides. */
    private void checkDrops(long seed, Site site, Layout layout, Proposal proposal) {
        for (Conductor dropped : layout.conductors()) {
            ProposedConductor conductor = find(proposal, dropped.id());
            if (isJumper(dropped) || isTapped(proposal, dropped.id())) {
                continue;
            }
            count("a conductor dropped");
            Set<String> all = violations(new Reviewer(site)
                    .review(Mutant.without(proposal, conductor))
                    .findings());
            Set<String> named = new TreeSet<>(all);
            named.removeIf(finding -> !CONNECTION.contains(finding.split(" ", 2)[0]));
            Set<String> expected = beyond(site, dropped);
            Set<String> subjects = named.stream()
                    .map(finding -> finding.split(" ", 2)[1])
                    .collect(Collectors.toCollection(TreeSet::new));
            boolean told = expected.isEmpty()
                    ? named.stream().anyMatch(finding -> finding.startsWith("250.58 "))
                    : isExactly(subjects, expected, conductor);
            boolean otherwise = mayStillBeJoined(site) && !all.equals(violations(layout.findings()));
            if (!told && !otherwise) {
                missed.add("seed " + seed + ": without " + dropped.id() + ": " + expected + " is not in " + named);
            }
        }
    }

    /** The end of a conductor may stand for the landing of a thing that lies before it. */
    private static boolean isExactly(Set<String> named, Set<String> beyond, ProposedConductor conductor) {
        Set<String> rest = new TreeSet<>(named);
        rest.removeAll(beyond);
        rest.remove(thing(conductor.from()));
        boolean cutsService = conductor.from() instanceof End.AtService;
        return named.containsAll(beyond) && (rest.isEmpty() || cutsService);
    }

    private static String thing(End end) {
        if (end instanceof End.AtElectrode at) {
            return at.electrode();
        }
        if (end instanceof End.AtService at) {
            return at.service();
        }
        return end instanceof End.OnPath on ? on.path() : "";
    }

    /** What is installed may join what a conductor served, though it may not. */
    private static boolean mayStillBeJoined(Site site) {
        return !site.listPaths(InstalledConductor.class).isEmpty();
    }

    /** Subjects of the things beyond a conductor; empty where a service is among them. */
    private static Set<String> beyond(Site site, Conductor conductor) {
        Set<String> services = site.services().stream().map(Service::id).collect(Collectors.toSet());
        if (conductor.serves().stream().anyMatch(services::contains)) {
            return Set.of();
        }
        return GroundingElectrodeSystem.of(site).obligations().stream()
                .map(Obligation::members)
                .filter(members -> members.stream().anyMatch(conductor.serves()::contains))
                .map(members -> members.get(0))
                .collect(Collectors.toSet());
    }

    private static ProposedConductor find(Proposal proposal, String id) {
        return proposal.conductors().stream()
                .filter(conductor -> conductor.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isJumper(Conductor conductor) {
        return !conductor.length().jumper().isZero() || conductor.id().startsWith("B");
    }

    private static boolean isTapped(Proposal proposal, String id) {
        return proposal.conductors().stream()
                .anyMatch(conductor -> isTapOn(conductor.from(), id) || isTapOn(conductor.to(), id));
    }

    private static boolean isTapOn(End end, String id) {
        return end instanceof End.OnConductor on && on.conductor().equals(id);
    }

    private List<Mutant> mutants(Site site, Layout layout, Proposal proposal) {
        List<Mutant> mutants = new ArrayList<>();
        for (Conductor answered : layout.conductors()) {
            ProposedConductor conductor = find(proposal, answered.id());
            add(mutants, "one size down", Mutant.oneSizeDown(proposal, conductor));
            add(mutants, "in aluminum", Mutant.inAluminum(proposal, conductor));
            add(mutants, "ferrous raceway open", Mutant.inFerrousRaceway(proposal, conductor));
            if (conductor.enclosure() == Enclosure.RACEWAY) {
                add(mutants, "raceway stripped", Mutant.withoutRaceway(proposal, conductor));
            }
            if (isJumper(answered)) {
                Mutant jumper =
                        new Mutant("no " + answered.id(), Mutant.without(proposal, conductor), "250.53(D)(1) WP");
                add(mutants, "jumper removed", jumper);
            } else if (!isTapped(proposal, answered.id())
                    && thing(conductor.from()).isEmpty()) {
                add(mutants, "through rebar", Mutant.throughMetal(proposal, conductor, "N-footing-rebar", "250.53(C)"));
                add(mutants, "through gas pipe", Mutant.throughMetal(proposal, conductor, "N-gas-pipe", "250.52(B)"));
                add(mutants, "side by side", Mutant.twoSideBySide(proposal, conductor));
            }
        }
        addFurtherIn(mutants, site, layout, proposal);
        addMechanical(mutants, layout, proposal);
        return mutants;
    }

    private void add(List<Mutant> mutants, String what, Mutant mutant) {
        count(what);
        mutants.add(mutant);
    }

    private void addFurtherIn(List<Mutant> mutants, Site site, Layout layout, Proposal proposal) {
        for (Carrier carrier : MediaThatMayCarry.of(site).carriers()) {
            if (carrier instanceof Carrier.Pipe pipe
                    && pipe.usable().isLessThan(LineLengths.of(pipe.path().line()))) {
                String id = pipe.path().id();
                layout.conductors().stream()
                        .filter(conductor -> !isJumper(conductor))
                        .map(conductor -> find(proposal, conductor.id()))
                        .filter(conductor -> Mutant.isOn(conductor.from(), id) || Mutant.isOn(conductor.to(), id))
                        .forEach(conductor -> add(
                                mutants,
                                "landing beyond 5 ft",
                                Mutant.furtherIn(
                                        proposal, conductor, id, pipe.usable().plus(Length.ofNanometres(1)))));
            }
        }
    }

    private void addMechanical(List<Mutant> mutants, Layout layout, Proposal proposal) {
        Set<String> electrodeConductors = layout.conductors().stream()
                .filter(conductor -> conductor.role() == Role.GROUNDING_ELECTRODE_CONDUCTOR)
                .map(Conductor::id)
                .collect(Collectors.toSet());
        proposal.joints()
                .forEach(joint -> joint.conductors().stream()
                        .filter(electrodeConductors::contains)
                        .forEach(conductor ->
                                add(mutants, "mechanical joint", Mutant.mechanical(proposal, joint, conductor))));
    }
}
