package org.bondspan.price;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.units.WireSize;

/**
 * Prices for estimates, of one site or of many. Whatever is not stated is missing: no price, no money.
 *
 * @param file the file that states it, for messages
 * @param field where in that file: empty for a price book of its own, {@code "prices"} in a site file
 * @param currency three letters, ISO 4217
 * @param heights factors of labor, lowest first
 */
public record PriceBook(
        String file,
        String field,
        String name,
        String note,
        String currency,
        Optional<CopperPrice> copper,
        Optional<LaborPrice> labor,
        Map<WireSize, ConductorPrice> conductors,
        Optional<RacewayPrice> raceway,
        Map<ConnectionKind, ConnectionPrice> connections,
        List<HeightFactor> heights) {
    public PriceBook {
        conductors = Map.copyOf(conductors);
        connections = Map.copyOf(connections);
        heights = heights.stream()
                .sorted(Comparator.comparing(HeightFactor::above))
                .toList();
    }

    public Optional<ConductorPrice> findConductor(WireSize size) {
        return Optional.ofNullable(conductors.get(size));
    }

    public Optional<ConnectionPrice> findConnection(ConnectionKind kind) {
        return Optional.ofNullable(connections.get(kind));
    }
}
