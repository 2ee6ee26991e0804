package org.bondspan.code;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bondspan.code.Obligation.Kind;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.Driven;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Electrode.WaterUse;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/** What is to be said about a site before anything is routed: 250.50, 250.53, 250.104. */
public final class SiteFindings {
    private static final BigDecimal TWENTY_FIVE_OHMS = BigDecimal.valueOf(25);
    private static final Length SIX_FEET = Length.ofFeet(6);
    private static final Length RING_DEPTH = Length.ofInches(BigDecimal.valueOf(30));

    private final Site site;
    private final GroundingElectrodeSystem system;
    private final List<Finding> findings = new ArrayList<>();

    private SiteFindings(Site site, GroundingElectrodeSystem system) {
        this.site = site;
        this.system = system;
    }

    /** All findings, violations first. */
    public static List<Finding> of(Site site, GroundingElectrodeSystem system) {
        SiteFindings collector = new SiteFindings(site, system);
        collector.checkElectrodesInTie();
        collector.checkSpacing();
        collector.checkRings();
        collector.checkFireMains();
        collector.checkEncased();
        collector.checkEntrances();
        collector.checkFrames();
        return collector.findings.stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** Cautions for a frame or ring over which the tie runs. */
    public static List<Finding> whereItCarries(Carrier carrier) {
        String id = carrier.path().id();
        if (carrier instanceof Carrier.Frame) {
            return List.of(
                    caution(Rule.STRUCTURAL_FRAME, id, "The frame carries: verify that its members are continuous."),
                    caution(Rule.CLEAN_SURFACES, id, "Clean paint and scale from the steel where conductors land."),
                    caution(Rule.ACCESS, id, "Keep the connections to the steel accessible."));
        }
        if (carrier instanceof Carrier.Ring) {
            return List.of(
                    caution(
                            Rule.ELECTRODE_BONDING_JUMPER,
                            id,
                            "The ring carries: the code neither allows nor bars a ring as conductor between electrodes;"
                                    + " ask the authority having jurisdiction."),
                    caution(Rule.CLEAN_SURFACES, id, "Verify that the ring is unbroken and its metal clean."),
                    caution(
                            Rule.ACCESS,
                            id,
                            "Keep the connections to the ring accessible where the code asks for it."));
        }
        return List.of();
    }

    private void checkElectrodesInTie() {
        List<Electrode> inTie = site.electrodes().stream()
                .filter(electrode -> system.obligations().stream()
                        .anyMatch(obligation -> obligation.kind() == Kind.ELECTRODE
                                && obligation.members().contains(electrode.id())))
                .toList();
        boolean frameIsElectrode = site.listPaths(StructuralFrame.class).stream()
                .anyMatch(frame -> frame.continuous() && GroundingElectrodeSystem.isElectrodeFrame(frame, site));
        if (inTie.isEmpty() && !frameIsElectrode) {
            findings.add(
                    violation(
                            Rule.ELECTRODE_SYSTEM,
                            site.name(),
                            "No qualifying grounding electrode is connected: install at least one that 250.52(A)(4) to (8) allow."));
            return;
        }
        List<Electrode> others = inTie.stream()
                .filter(electrode -> !(electrode instanceof WaterPipeElectrode))
                .toList();
        if (frameIsElectrode) {
            return;
        }
        if (others.isEmpty()) {
            inTie.forEach(
                    pipe -> findings.add(
                            violation(
                                    Rule.WATER_PIPE_SUPPLEMENT,
                                    pipe.id(),
                                    "Only water pipe is connected: a metal underground water pipe needs another electrode beside it.")));
        } else if (others.size() == 1 && others.get(0) instanceof Driven lone) {
            checkLone(lone);
        }
    }

    private void checkLone(Driven lone) {
        Optional<BigDecimal> ohms = lone.resistance();
        if (ohms.isPresent() && ohms.get().compareTo(TWENTY_FIVE_OHMS) <= 0) {
            return;
        }
        String measured = ohms.map(value -> value.toPlainString() + " ohms").orElse("unmeasured");
        findings.add(violation(
                Rule.LONE_DRIVEN_ELECTRODE,
                lone.id(),
                "The only " + lone.type() + " beside any water pipe is " + measured
                        + ": add a second electrode at least 6 ft away, or show 25 ohms or less."));
    }

    private void checkSpacing() {
        List<Driven> driven = site.listElectrodes(Driven.class).stream()
                .filter(electrode -> Qualification.of(electrode).qualifies())
                .toList();
        for (int i = 0; i < driven.size(); i++) {
            for (Driven earlier : driven.subList(0, i)) {
                checkSpacing(earlier, driven.get(i));
            }
        }
    }

    private void checkSpacing(Driven earlier, Driven later) {
        Length apart = earlier.connections().stream()
                .flatMap(a -> later.connections().stream().map(b -> apart(a, b)))
                .min(Comparator.naturalOrder())
                .orElse(SIX_FEET);
        if (apart.isLessThan(SIX_FEET)) {
            findings.add(violation(
                    Rule.DRIVEN_SPACING,
                    later.id(),
                    "Stands " + Numbers.print(apart, site.lengthUnit()) + " from " + earlier.id()
                            + ": rods, pipes and plates stand at least 6 ft apart."));
        }
    }

    private static Length apart(Connection a, Connection b) {
        PlanPoint from = a.position().at();
        PlanPoint to = b.position().at();
        return Length.ofRun(to.x() - from.x(), to.y() - from.y(), 0);
    }

    private void checkRings() {
        for (GroundRing ring : site.listElectrodes(GroundRing.class)) {
            if (ring.depth().isEmpty()) {
                findings.add(new Finding(
                        Rule.RING_DEPTH.section(),
                        Severity.NOTE,
                        ring.id(),
                        "The site file states no depth for this ring: it lies at least 30 in deep."));
            } else if (ring.depth().get().isLessThan(RING_DEPTH)) {
                findings.add(violation(
                        Rule.RING_DEPTH,
                        ring.id(),
                        "The ring lies " + Numbers.print(ring.depth().get(), site.lengthUnit())
                                + " deep: at least 30 in is needed. It is connected all the same."));
            }
        }
    }

    private void checkFireMains() {
        for (WaterPipeElectrode pipe : site.listElectrodes(WaterPipeElectrode.class)) {
            if (pipe.use() == WaterUse.FIRE) {
                String choice = MediaThatMayCarry.isBondOnly(pipe, site) ? "bonds it only" : "uses it as an electrode";
                findings.add(caution(
                        Rule.WATER_PIPE_ELECTRODE,
                        pipe.id(),
                        "The site file " + choice + ". NFPA 70 wants every qualifying water pipe connected; NFPA 13 and"
                                + " 24 bar underground fire mains from serving as electrodes. Ask both authorities."));
            }
        }
    }

    private void checkEncased() {
        for (ConcreteEncased bars : site.listElectrodes(ConcreteEncased.class)) {
            if (!bars.reachable() && !site.existingBuilding()) {
                findings.add(
                        caution(
                                Rule.ELECTRODE_SYSTEM,
                                bars.id(),
                                "Stated as not reachable, which excuses it in existing buildings only: it is to be connected."));
            }
        }
    }

    private void checkEntrances() {
        for (WaterPipeElectrode pipe : site.listElectrodes(WaterPipeElectrode.class)) {
            boolean direct =
                    MediaThatMayCarry.findPiping(pipe, site).isEmpty() && !MediaThatMayCarry.isBondOnly(pipe, site);
            long beyond = pipe.connections().stream()
                    .flatMap(connection -> connection.fromEntrance().stream())
                    .filter(MediaThatMayCarry.FIVE_FEET::isLessThan)
                    .count();
            if (direct && beyond > 0) {
                findings.add(caution(
                        Rule.WATER_PIPE_FIVE_FEET,
                        pipe.id(),
                        "Connections more than 5 ft from the point of entrance are not used: " + beyond + " of "
                                + pipe.connections().size() + "."));
            }
        }
    }

    private void checkFrames() {
        for (StructuralFrame frame : site.listPaths(StructuralFrame.class)) {
            if (!frame.continuous()) {
                findings.add(caution(
                        Rule.FRAME_BOND,
                        frame.id(),
                        "Its members are not one continuous frame: draw each continuous part as a frame of its own."));
            }
        }
        if (site.codeEdition() == CodeEdition.NEC_2017) {
            system.obligations().stream()
                    .filter(obligation -> obligation.kind() != Kind.ELECTRODE)
                    .forEach(obligation -> largestBeyondTable().ifPresent(area -> addSupplySideSize(obligation, area)));
        }
    }

    /** The largest total of one supply's services, where it lies beyond Table 250.66. */
    private Optional<Long> largestBeyondTable() {
        return site.services().stream().collect(Collectors.groupingBy(Service::supply)).values().stream()
                .filter(services ->
                        Table25066.isBeyond(services.get(0).ungrounded().material(), totalArea(services)))
                .map(SiteFindings::totalArea)
                .max(Comparator.naturalOrder());
    }

    private static long totalArea(List<Service> services) {
        return services.stream()
                .mapToLong(service -> service.ungrounded().area())
                .sum();
    }

    private void addSupplySideSize(Obligation obligation, long area) {
        long eighth = -Math.floorDiv(-area, 8);
        String size = WireSize.findAtLeast(eighth).map(WireSize::label).orElse("more than one conductor");
        findings.add(caution(
                Rule.SUPPLY_SIDE_TABLE,
                obligation.members().get(0),
                "The 2017 text sizes this bond by Table 250.102(C)(1) without an upper end: 12.5 percent of "
                        + Numbers.printArea(area) + " is " + Numbers.printArea(eighth) + ", hence " + size
                        + ". Bondspan stops at 3/0 AWG, as later editions do; ask the authority having jurisdiction."));
    }

    private static Finding violation(Rule rule, String subject, String message) {
        return new Finding(rule.section(), Severity.VIOLATION, subject, message);
    }

    private static Finding caution(Rule rule, String subject, String message) {
        return new Finding(rule.section(), Severity.CAUTION, subject, message);
    }
}
