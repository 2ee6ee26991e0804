package org.bondspan.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.bondspan.site.Material;
import org.bondspan.site.Service;
import org.bondspan.units.WireSize;

/**
 * A size that something needs.
 *
 * @param size in the material of what needs it
 * @param toward the services and the thing that call for it
 */
record Requirement(WireSize size, String toward) {
    /**
     * The largest need over pairs that all have to use the same stretch: services of one supply add up toward a thing,
     * 250.64(D)(1). Empty where no pair has to.
     */
    static Optional<Requirement> ofShared(List<PairVerdict> verdicts, Predicate<PairVerdict> uses, Material material) {
        List<PairVerdict> sharing = verdicts.stream().filter(uses).toList();
        return sharing.stream()
                .map(verdict -> ofSum(verdict.pair(), sharing, material))
                .reduce((a, b) -> a.size.isAtLeast(b.size) ? a : b);
    }

    private static Requirement ofSum(Pair pair, List<PairVerdict> sharing, Material material) {
        long area = 0;
        List<String> names = new ArrayList<>();
        for (PairVerdict other : sharing) {
            Service service = other.pair().service();
            boolean adds =
                    other.pair().obligation().name().equals(pair.obligation().name())
                            && service.supply().equals(pair.service().supply());
            if (adds) {
                area += service.ungrounded().area();
                names.add(service.id());
            }
        }
        Material ofService = pair.service().ungrounded().material();
        return new Requirement(
                Pair.need(pair.obligation(), ofService, area, material),
                String.join(" and ", names) + " to " + pair.obligation().name());
    }

    static Requirement of(Pair pair, Material material) {
        return new Requirement(pair.need(material), pair.describe());
    }
}
