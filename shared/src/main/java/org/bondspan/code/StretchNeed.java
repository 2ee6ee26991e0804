package org.bondspan.code;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bondspan.site.Material;
import org.bondspan.site.Service;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/**
 * The size of a stretch of the tie, 250.66 with 250.64(D)(1) and (F): it parts services and things to be connected in
 * two sides. For each supply the areas of its services on one side add up, and each thing on the other side calls for
 * its size toward that sum; the largest over all is needed.
 *
 * <p>Sides are bit sets: bit {@code i} is service {@code i}, bit {@code services + j} is obligation {@code j}. They are
 * never changed here.
 */
public final class StretchNeed {
    private final List<Service> services;
    private final List<Obligation> obligations;
    private final List<Supply> supplies;

    /** A service drop or lateral with its services as a bit set. */
    private record Supply(Material material, BitSet members) {}

    /**
     * Why a stretch has its size.
     *
     * @param rule the section the size comes from
     * @param why in words: which conductors, toward what
     * @param severalServices whether services of one supply add up, 250.64(D)(1)
     */
    public record Verdict(WireSize size, Rule rule, String why, boolean severalServices) {}

    public StretchNeed(List<Service> services, List<Obligation> obligations) {
        this.services = List.copyOf(services);
        this.obligations = List.copyOf(obligations);
        this.supplies = supplies(services);
    }

    private static List<Supply> supplies(List<Service> services) {
        Map<String, Supply> supplies = new LinkedHashMap<>();
        for (int i = 0; i < services.size(); i++) {
            Material material = services.get(i).ungrounded().material();
            supplies.computeIfAbsent(services.get(i).supply(), id -> new Supply(material, new BitSet()))
                    .members()
                    .set(i);
        }
        return List.copyOf(supplies.values());
    }

    /** Whether every supply feeds one service, so that a stretch's need is the largest over pairs. */
    public boolean isByPairs() {
        return supplies.size() == services.size();
    }

    /** Every size that some stretch can need, smallest first. */
    public SortedSet<WireSize> listSizes() {
        SortedSet<WireSize> sizes = new TreeSet<>();
        for (Supply supply : supplies) {
            for (long area : sums(supply)) {
                obligations.forEach(obligation -> sizes.add(obligation.need().size(supply.material(), area)));
            }
        }
        if (sizes.isEmpty()) {
            sizes.add(Table25066.ROWS.get(0).copper());
        }
        return sizes;
    }

    /** Areas of all non-empty sets of a supply's services; equal sums count once, so that equal services are few. */
    private Set<Long> sums(Supply supply) {
        Set<Long> sums = new TreeSet<>();
        supply.members().stream().forEach(i -> {
            long own = services.get(i).ungrounded().area();
            List<Long> before = List.copyOf(sums);
            sums.add(own);
            before.forEach(sum -> sums.add(sum + own));
        });
        return sums;
    }

    /** As below, for sides of services and obligations 0 to 63. */
    public WireSize across(long side) {
        return across(BitSet.valueOf(new long[] {side}));
    }

    /** What a stretch needs that has these on one side; the smallest size of the table where nothing decides. */
    public WireSize across(BitSet side) {
        WireSize size = Table25066.ROWS.get(0).copper();
        BitSet others = others(side);
        for (Supply supply : supplies) {
            size = WireSize.largerOf(size, towards(supply, common(side, supply.members()), others));
            size = WireSize.largerOf(size, towards(supply, common(others, supply.members()), side));
        }
        return size;
    }

    private BitSet others(BitSet side) {
        BitSet others = new BitSet();
        others.set(0, services.size() + obligations.size());
        others.andNot(side);
        return others;
    }

    private static BitSet common(BitSet one, BitSet other) {
        BitSet common = (BitSet) one.clone();
        common.and(other);
        return common;
    }

    private WireSize towards(Supply supply, BitSet feeding, BitSet fed) {
        WireSize size = Table25066.ROWS.get(0).copper();
        if (feeding.isEmpty()) {
            return size;
        }
        long area = area(feeding);
        for (int j = 0; j < obligations.size(); j++) {
            if (fed.get(services.size() + j)) {
                size = WireSize.largerOf(size, obligations.get(j).need().size(supply.material(), area));
            }
        }
        return size;
    }

    /** As {@link #across}, with its reason. */
    public Verdict explain(long side) {
        return explain(BitSet.valueOf(new long[] {side}));
    }

    /** As {@link #across}, with its reason. */
    public Verdict explain(BitSet side) {
        WireSize size = across(side);
        BitSet others = others(side);
        for (Supply supply : supplies) {
            Optional<Verdict> verdict = findVerdict(supply, common(side, supply.members()), others, size);
            if (verdict.isEmpty()) {
                verdict = findVerdict(supply, common(others, supply.members()), side, size);
            }
            if (verdict.isPresent()) {
                return verdict.get();
            }
        }
        return new Verdict(size, Rule.CONDUCTOR_SIZE, "joins services only: the smallest size of Table 250.66", false);
    }

    private Optional<Verdict> findVerdict(Supply supply, BitSet feeding, BitSet fed, WireSize size) {
        if (feeding.isEmpty()) {
            return Optional.empty();
        }
        long area = area(feeding);
        for (int j = 0; j < obligations.size(); j++) {
            Need need = obligations.get(j).need();
            if (fed.get(services.size() + j) && need.size(supply.material(), area) == size) {
                Rule rule = need.basis(supply.material(), area);
                String by = rule == Rule.CONDUCTOR_SIZE ? "Table 250.66" : "the limit in " + rule.section();
                String why = "sized for " + obligations.get(j).name() + " by " + by + ": " + describe(feeding)
                        + ", in all " + Numbers.printArea(area) + " of "
                        + supply.material().label();
                return Optional.of(new Verdict(size, rule, why, feeding.cardinality() > 1));
            }
        }
        return Optional.empty();
    }

    private String describe(BitSet feeding) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < services.size(); i++) {
            if (feeding.get(i)) {
                Service service = services.get(i);
                parts.add(service.id() + " has " + service.ungrounded().sets() + " x "
                        + service.ungrounded().size().label());
            }
        }
        return String.join(" and ", parts);
    }

    private long area(BitSet set) {
        return set.stream().mapToLong(i -> services.get(i).ungrounded().area()).sum();
    }

    /** What the service and the obligation at least need, wherever a stretch parts them: others only add. */
    public WireSize ofPair(Service service, Obligation obligation) {
        return obligation
                .need()
                .size(service.ungrounded().material(), service.ungrounded().area());
    }

    /** What one thing needs toward all services: the largest over supplies of the table for a supply's total. */
    public WireSize ofWhole(Need need) {
        WireSize size = Table25066.ROWS.get(0).copper();
        for (Supply supply : supplies) {
            size = WireSize.largerOf(size, need.size(supply.material(), area(supply.members())));
        }
        return size;
    }

    /** The aluminum column's size toward all services: the largest over supplies. */
    public WireSize ofWholeInAluminum() {
        return supplies.stream()
                .map(supply -> Table25066.rowFor(supply.material(), area(supply.members()))
                        .aluminum())
                .reduce(WireSize::largerOf)
                .orElseThrow();
    }

    /** The section behind {@link #ofWhole}. */
    public Rule basisOfWhole(Need need) {
        WireSize size = ofWhole(need);
        return supplies.stream()
                .filter(supply -> need.size(supply.material(), area(supply.members())) == size)
                .map(supply -> need.basis(supply.material(), area(supply.members())))
                .findFirst()
                .orElse(Rule.CONDUCTOR_SIZE);
    }
}
