package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.Rod;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Material;
import org.bondspan.site.Position;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;

/**
 * What must be connected on a random site and at which size, written for the tests from Table 250.66 and 250.50 to
 * 250.104 as the rules of the site file put them. Knows what {@link RandomSites} draws, no more.
 */
final class Book {
    /** Sizes in order. */
    static final List<String> SIZES =
            List.of("8 AWG", "6 AWG", "4 AWG", "2 AWG", "1/0 AWG", "2/0 AWG", "3/0 AWG", "4/0 AWG");
    /** Tenths of a pound per 1000 ft, ASTM B8 Class B. */
    static final long[] WEIGHTS = {510, 810, 1_289, 2_049, 3_258, 4_109, 5_181, 6_533};

    private static final int SIX = 1;
    private static final int FOUR = 2;
    private static final int LARGEST = 6;
    /** Largest area in circular mils for each size, NFPA 70 Table 250.66. */
    private static final long[] COPPER = {66_360, 105_600, 167_800, 350_000, 600_000, 1_100_000};

    private static final long[] ALUMINUM = {105_600, 167_800, 250_000, 500_000, 900_000, 1_750_000};

    private final Site site;
    private final List<Duty> duties = new ArrayList<>();

    /**
     * Something that must be connected.
     *
     * @param members ids of which one is enough
     * @param most the largest size it ever calls for, as an index of {@link #SIZES}
     * @param at connections that it may be landed on at
     * @param with paths with which it is connected when they are
     * @param along a path on which it may be landed on anywhere
     */
    record Duty(List<String> members, int most, List<Position> at, List<String> with, Optional<String> along) {}

    Book(Site site) {
        this.site = site;
        List<ConcreteEncased> footings = site.listElectrodes(ConcreteEncased.class);
        List<ConcreteEncased> wanted =
                footings.stream().filter(ConcreteEncased::use).toList();
        for (Electrode electrode : site.electrodes()) {
            add(electrode, wanted);
        }
        if (wanted.isEmpty() && !footings.isEmpty()) {
            addOneOf(footings);
        }
        List<InGroundMetal> inGround = site.listElectrodes(InGroundMetal.class);
        if (!inGround.isEmpty()) {
            addInGround(inGround);
        }
        site.listPaths(StructuralFrame.class).forEach(this::addFrame);
        for (WaterPiping pipe : site.listPaths(WaterPiping.class)) {
            if (!carries(pipe) && pipe.bondingRequired()) {
                duties.add(new Duty(List.of(pipe.id()), LARGEST, List.of(), List.of(), Optional.of(pipe.id())));
            }
        }
    }

    private void add(Electrode electrode, List<ConcreteEncased> wanted) {
        if (electrode instanceof InGroundMetal
                || (electrode instanceof ConcreteEncased && !wanted.contains(electrode))) {
            return;
        }
        if (electrode instanceof WaterPipeElectrode pipe) {
            if (qualifies(pipe)) {
                duties.add(new Duty(List.of(pipe.id()), LARGEST, List.of(), List.of("WP"), Optional.empty()));
            }
        } else if (electrode instanceof GroundRing ring) {
            int own = SIZES.indexOf(ring.conductorSize().label());
            boolean joins = ringPath(ring.id()).mayInterconnect();
            duties.add(new Duty(
                    List.of(ring.id()),
                    own,
                    joins ? List.of() : positions(ring),
                    joins ? List.of(ringPath(ring.id()).id()) : List.of(),
                    Optional.empty()));
        } else if (electrode instanceof ConcreteEncased footing) {
            duties.add(new Duty(List.of(footing.id()), FOUR, positions(footing), bolts(footing), Optional.empty()));
        } else {
            int most = electrode instanceof Rod ? SIX : LARGEST;
            duties.add(new Duty(List.of(electrode.id()), most, positions(electrode), List.of(), Optional.empty()));
        }
    }

    private void addOneOf(List<ConcreteEncased> footings) {
        duties.add(new Duty(
                footings.stream().map(ConcreteEncased::id).toList(),
                FOUR,
                footings.stream()
                        .flatMap(footing -> positions(footing).stream())
                        .toList(),
                footings.stream()
                        .flatMap(footing -> bolts(footing).stream())
                        .distinct()
                        .toList(),
                Optional.empty()));
    }

    private void addInGround(List<InGroundMetal> members) {
        duties.add(new Duty(
                members.stream().map(InGroundMetal::id).toList(),
                LARGEST,
                members.stream()
                        .filter(member -> member.frame().filter(this::carries).isEmpty())
                        .flatMap(member -> positions(member).stream())
                        .toList(),
                members.stream()
                        .flatMap(member -> member.frame().filter(this::carries).stream())
                        .distinct()
                        .toList(),
                Optional.empty()));
    }

    private void addFrame(StructuralFrame frame) {
        boolean electrode = site.codeEdition() == CodeEdition.NEC_2014;
        if (electrode) {
            throw new IllegalArgumentException("the book is of 2020");
        }
        if (frame.bondingRequired()) {
            duties.add(
                    frame.mayCarry()
                            ? new Duty(List.of(frame.id()), LARGEST, List.of(), List.of(frame.id()), Optional.empty())
                            : new Duty(List.of(frame.id()), LARGEST, List.of(), List.of(), Optional.of(frame.id())));
        }
    }

    private List<String> bolts(ConcreteEncased footing) {
        return footing.tiedToFrame().filter(tie -> carries(tie.frame())).stream()
                .map(Electrode.FrameTie::frame)
                .toList();
    }

    static List<Position> positions(Electrode electrode) {
        return electrode.connections().stream().map(Connection::position).toList();
    }

    private boolean carries(String frame) {
        return site.listPaths(StructuralFrame.class).stream()
                .anyMatch(path -> path.id().equals(frame) && path.mayCarry());
    }

    private RingPath ringPath(String ring) {
        return site.listPaths(RingPath.class).stream()
                .filter(path -> path.electrode().equals(ring))
                .findFirst()
                .orElseThrow();
    }

    /** A pipe carries when the electrode that it continues has 10 ft in earth. */
    boolean carries(WaterPiping pipe) {
        return site.listElectrodes(WaterPipeElectrode.class).stream()
                .anyMatch(electrode -> pipe.electrode().equals(Optional.of(electrode.id())) && qualifies(electrode));
    }

    private static boolean qualifies(WaterPipeElectrode electrode) {
        return !electrode.earthContact().isLessThan(Length.ofFeet(10));
    }

    List<Duty> duties() {
        return duties;
    }

    int terminals() {
        return site.services().size() + duties.size();
    }

    /** The size between two sides: terminals are services, then duties; {@code side} is a bit set of one side. */
    int need(int side) {
        return Math.max(towards(side, ~side), towards(~side, side));
    }

    private int towards(int feeding, int fed) {
        Map<String, Long> areas = new LinkedHashMap<>();
        Map<String, Material> materials = new LinkedHashMap<>();
        for (int i = 0; i < site.services().size(); i++) {
            Service service = site.services().get(i);
            if ((feeding >> i & 1) == 1) {
                long area = service.ungrounded().size().circularMils()
                        * service.ungrounded().sets();
                areas.merge(service.supply(), area, Long::sum);
                materials.put(service.supply(), service.ungrounded().material());
            }
        }
        int need = 0;
        for (int j = 0; j < duties.size(); j++) {
            if ((fed >> (site.services().size() + j) & 1) == 1) {
                for (Map.Entry<String, Long> area : areas.entrySet()) {
                    boolean copper = materials.get(area.getKey()) == Material.COPPER;
                    need = Math.max(need, Math.min(duties.get(j).most(), table(copper, area.getValue())));
                }
            }
        }
        return need;
    }

    /** What one service alone needs toward one duty. */
    int needOfPair(int service, int duty) {
        Service feeding = site.services().get(service);
        boolean copper = feeding.ungrounded().material() == Material.COPPER;
        return Math.min(
                duties.get(duty).most(), table(copper, feeding.ungrounded().area()));
    }

    /** What all services together need toward one duty, where one lateral feeds them. */
    int needOfSum(int duty) {
        int services = (1 << site.services().size()) - 1;
        return Math.min(duties.get(duty).most(), tableOfWhole(services));
    }

    /** Whether one lateral feeds several services. */
    boolean isOfOneLateral() {
        return site.services().stream().map(Service::supply).distinct().count()
                < site.services().size();
    }

    static int table(boolean copper, long area) {
        long[] bands = copper ? COPPER : ALUMINUM;
        int size = 0;
        while (size < bands.length && area > bands[size]) {
            size++;
        }
        return size;
    }

    /** Jumpers around breaks, in tenths of a pound per 1000 ft times feet. */
    long jumpers() {
        long weight = 0;
        int services = (1 << site.services().size()) - 1;
        for (WaterPiping pipe : site.listPaths(WaterPiping.class)) {
            boolean connected = carries(pipe) || pipe.bondingRequired();
            for (var gap : pipe.breaks()) {
                if (connected && !gap.installed()) {
                    weight +=
                            WEIGHTS[tableOfWhole(services)] * feet(gap.jumper().nanometres());
                }
            }
        }
        return weight;
    }

    private int tableOfWhole(int services) {
        Map<String, Long> areas = new LinkedHashMap<>();
        boolean copper = true;
        for (int i = 0; 1 << i <= services; i++) {
            Service service = site.services().get(i);
            areas.merge(service.supply(), service.ungrounded().area(), Long::sum);
            copper = service.ungrounded().material() == Material.COPPER;
        }
        boolean isCopper = copper;
        return areas.values().stream()
                .mapToInt(area -> table(isCopper, area))
                .max()
                .orElse(0);
    }

    static int feet(long nanometres) {
        return (int) (nanometres / Length.ofFeet(1).nanometres());
    }
}
