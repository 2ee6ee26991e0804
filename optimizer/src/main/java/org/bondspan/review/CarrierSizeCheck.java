package org.bondspan.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.bondspan.site.Material;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.WireSize;

/** 250.66: a ring or an installed conductor carries only what its own size is enough for. */
final class CarrierSizeCheck {
    private final PairVerdicts verdicts;
    private final Requirements requirements;

    CarrierSizeCheck(PairVerdicts verdicts, Requirements requirements) {
        this.verdicts = verdicts;
        this.requirements = requirements;
    }

    List<Offence> find() {
        List<Offence> offences = new ArrayList<>();
        for (Node node : verdicts.passed()) {
            node.capacity().ifPresent(size -> find(node, size).ifPresent(offences::add));
        }
        for (Span span : verdicts.used()) {
            span.installed().ifPresent(conductor -> find(span, conductor).ifPresent(offences::add));
        }
        return offences;
    }

    private Optional<Offence> find(Node ring, WireSize size) {
        return requirements
                .find(ring)
                .filter(need -> !size.isAtLeast(need.size()))
                .or(() -> findFallingShort(size, way -> way.passed().contains(ring)))
                .map(need -> offence(ring.id(), size, need));
    }

    private Optional<Offence> find(Span span, InstalledConductor conductor) {
        WireSize size = conductor.size();
        return requirements
                .find(span)
                .filter(need -> !size.isAtLeast(need.size()))
                .or(() -> findFallingShort(size, way -> way.spans().contains(span)))
                .map(need -> offence(conductor.id(), size, need));
    }

    private Optional<Requirement> findFallingShort(WireSize size, Predicate<Way> uses) {
        return verdicts.all().stream()
                .filter(verdict -> verdict.best().filter(uses).isPresent())
                .filter(verdict -> verdict.pair().shortfall(size) > 0)
                .map(verdict -> Requirement.of(verdict.pair(), Material.COPPER))
                .reduce((a, b) -> a.size().isAtLeast(b.size()) ? a : b);
    }

    private static Offence offence(String path, WireSize size, Requirement need) {
        return new Offence(
                CheckedRule.CARRIER_TOO_SMALL,
                path,
                path + " is " + size.label() + "; from " + need.toward() + " the way needs "
                        + need.size().label() + ".",
                "Run new copper of " + need.size().label() + " past it.");
    }
}
