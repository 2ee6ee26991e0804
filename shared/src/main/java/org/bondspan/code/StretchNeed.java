package org.bondspan.code;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * <p>Sides are bit sets: bit {@code i} is service {@code i}, bit {@code services + j} is obligation {@code j}.
 */
public final class StretchNeed {
    private final List<Service> services;
    private final List<Obligation> obligations;
    private final List<Supply> supplies;

    /** A service drop or lateral with its services as a bit set. */
    private record Supply(String id, Material material, long members) {}

    /**
     * Why a stretch has its size.
     *
     * @param rule the section the size comes from
     * @param why in words: which conductors, toward what
     * @param severalServices whether services of one supply add up, 250.64(D)(1)
     */
    public record Verdict(WireSize size, Rule rule, String why, boolean severalServices) {}

    public StretchNeed(List<Service> services, List<Obligation> obligations) {
        if (services.size() + obligations.size() > Long.SIZE - 1) {
            throw new IllegalArgumentException("more than 63 services and things to be connected");
        }
        this.services = List.copyOf(services);
        this.obligations = List.copyOf(obligations);
        this.supplies = supplies(services);
    }

    private static List<Supply> supplies(List<Service> services) {
        Map<String, Long> members = new LinkedHashMap<>();
        Map<String, Material> materials = new LinkedHashMap<>();
        for (int i = 0; i < services.size(); i++) {
            members.merge(services.get(i).supply(), 1L << i, (a, b) -> a | b);
            materials.put(services.get(i).supply(), services.get(i).ungrounded().material());
        }
        List<Supply> supplies = new ArrayList<>();
        members.forEach((id, set) -> supplies.add(new Supply(id, materials.getOrDefault(id, Material.COPPER), set)));
        return supplies;
    }

    /** Whether every supply feeds one service, so that a stretch's need is the largest over pairs. */
    public boolean isByPairs() {
        return supplies.size() == services.size();
    }

    /** Every size that some stretch can need, smallest first. */
    public SortedSet<WireSize> listSizes() {
        SortedSet<WireSize> sizes = new TreeSet<>();
        for (Supply supply : supplies) {
            // every non-empty subset of the supply's services, from all of them down
            for (long part = supply.members; part != 0; part = (part - 1) & supply.members) {
                long area = area(part);
                obligations.forEach(obligation -> sizes.add(obligation.need().size(supply.material(), area)));
            }
        }
        if (sizes.isEmpty()) {
            sizes.add(Table25066.ROWS.get(0).copper());
        }
        return sizes;
    }

    /** What a stretch needs that has these on one side; the smallest size of the table where nothing decides. */
    public WireSize across(long side) {
        WireSize size = Table25066.ROWS.get(0).copper();
        for (Supply supply : supplies) {
            size = WireSize.largerOf(size, towards(supply, side & supply.members, ~side));
            size = WireSize.largerOf(size, towards(supply, ~side & supply.members, side));
        }
        return size;
    }

    private WireSize towards(Supply supply, long feeding, long fed) {
        WireSize size = Table25066.ROWS.get(0).copper();
        if (feeding == 0) {
            return size;
        }
        long area = area(feeding);
        for (int j = 0; j < obligations.size(); j++) {
            if (contains(fed, services.size() + j)) {
                size = WireSize.largerOf(size, obligations.get(j).need().size(supply.material(), area));
            }
        }
        return size;
    }

    /** As {@link #across}, with its reason. */
    public Verdict explain(long side) {
        WireSize size = across(side);
        for (Supply supply : supplies) {
            Optional<Verdict> verdict = findVerdict(supply, side & supply.members, ~side, size);
            if (verdict.isEmpty()) {
                verdict = findVerdict(supply, ~side & supply.members, side, size);
            }
            if (verdict.isPresent()) {
                return verdict.get();
            }
        }
        return new Verdict(size, Rule.CONDUCTOR_SIZE, "joins services only: the smallest size of Table 250.66", false);
    }

    private Optional<Verdict> findVerdict(Supply supply, long feeding, long fed, WireSize size) {
        if (feeding == 0) {
            return Optional.empty();
        }
        long area = area(feeding);
        for (int j = 0; j < obligations.size(); j++) {
            Need need = obligations.get(j).need();
            if (contains(fed, services.size() + j) && need.size(supply.material(), area) == size) {
                Rule rule = need.basis(supply.material(), area);
                String why = describe(feeding) + " = " + Numbers.printArea(area) + " "
                        + supply.material().label() + ", toward "
                        + obligations.get(j).name();
                String limit = rule == Rule.CONDUCTOR_SIZE ? "Table 250.66" : rule.section() + " limit";
                return Optional.of(new Verdict(size, rule, why + ": " + limit, Long.bitCount(feeding) > 1));
            }
        }
        return Optional.empty();
    }

    private String describe(long feeding) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < services.size(); i++) {
            if (contains(feeding, i)) {
                Service service = services.get(i);
                parts.add(service.id() + " " + service.ungrounded().sets() + " x "
                        + service.ungrounded().size().label());
            }
        }
        return String.join(" + ", parts);
    }

    private long area(long set) {
        long area = 0;
        for (int i = 0; i < services.size(); i++) {
            if (contains(set, i)) {
                area += services.get(i).ungrounded().area();
            }
        }
        return area;
    }

    /** What one thing needs toward all services: the largest over supplies of the table for a supply's total. */
    public WireSize ofWhole(Need need) {
        WireSize size = Table25066.ROWS.get(0).copper();
        for (Supply supply : supplies) {
            size = WireSize.largerOf(size, need.size(supply.material(), area(supply.members)));
        }
        return size;
    }

    /** The aluminum column's size toward all services: the largest over supplies. */
    public WireSize ofWholeInAluminum() {
        return supplies.stream()
                .map(supply -> Table25066.rowFor(supply.material(), area(supply.members))
                        .aluminum())
                .reduce(WireSize::largerOf)
                .orElseThrow();
    }

    /** The section behind {@link #ofWhole}. */
    public Rule basisOfWhole(Need need) {
        WireSize size = ofWhole(need);
        return supplies.stream()
                .filter(supply -> need.size(supply.material(), area(supply.members)) == size)
                .map(supply -> need.basis(supply.material(), area(supply.members)))
                .findFirst()
                .orElse(Rule.CONDUCTOR_SIZE);
    }

    private static boolean contains(long set, int bit) {
        return (set >> bit & 1) != 0;
    }
}
