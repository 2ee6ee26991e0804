package org.bondspan.price;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;

/**
 * The rates of a price book, each rounded to the cent per 1000 ft or per piece; all sums start from these. What is
 * asked for and not stated is empty, and noted.
 */
public final class Rates {
    private final PriceBook book;
    private final Set<String> missing = new LinkedHashSet<>();

    public Rates(PriceBook book) {
        this.book = book;
    }

    public PriceBook book() {
        return book;
    }

    /** Bare copper, per 1000 ft. */
    public Optional<Money> findConductor(WireSize size) {
        Optional<Money> stated = book.findConductor(size).flatMap(ConductorPrice::perThousandFeet);
        Optional<Money> found = stated.isPresent() ? stated : book.copper().map(copper -> copper.perThousandFeet(size));
        return noted(found, "copper", "is missing, and conductors has no per1000ft for " + size.label());
    }

    /** Where the price of a size comes from. */
    public String conductorSource(WireSize size) {
        Optional<ConductorPrice> own =
                book.findConductor(size).filter(price -> price.perThousandFeet().isPresent());
        return own.isPresent()
                ? named(own.get().source())
                : book.copper().map(CopperPrice::describe).orElse("");
    }

    /** Hours per 1000 ft at floor height. */
    public Optional<BigDecimal> findHours(WireSize size, Installation installation) {
        Optional<BigDecimal> hours =
                book.findConductor(size).map(price -> price.hours().get(installation));
        return noted(hours, "conductors", "has no hours." + installation.label() + " for " + size.label());
    }

    /** Where the hours of a size come from. */
    public String hoursSource(WireSize size) {
        return book.findConductor(size).map(price -> named(price.source())).orElse("");
    }

    /** Labor, per 1000 ft. */
    public Optional<Money> findLabor(WireSize size, Band band) {
        return labor(findHours(size, band.installation()), band.factor());
    }

    /** Raceway, per 1000 ft. */
    public Optional<Money> findRaceway() {
        return noted(book.raceway().flatMap(RacewayPrice::perThousandFeet), "raceway.per1000ft", "is missing");
    }

    /** Hours per 1000 ft of raceway at floor height. */
    public Optional<BigDecimal> findRacewayHours() {
        return noted(book.raceway().flatMap(RacewayPrice::hours), "raceway.hours", "is missing");
    }

    /** Labor on raceway, per 1000 ft. */
    public Optional<Money> findRacewayLabor(BigDecimal factor) {
        return labor(findRacewayHours(), factor);
    }

    public String racewaySource() {
        return book.raceway().map(price -> named(price.source())).orElse("");
    }

    public Optional<Money> findConnection(ConnectionKind kind) {
        return noted(
                book.findConnection(kind).flatMap(ConnectionPrice::price),
                "connections." + kind.label() + ".price",
                "is missing");
    }

    public Optional<BigDecimal> findConnectionHours(ConnectionKind kind) {
        return noted(
                book.findConnection(kind).flatMap(ConnectionPrice::hours),
                "connections." + kind.label() + ".hours",
                "is missing");
    }

    /** Labor of one connection. */
    public Optional<Money> findConnectionLabor(ConnectionKind kind) {
        return labor(findConnectionHours(kind), BigDecimal.ONE);
    }

    /** Material and labor of one connection. */
    public Optional<Money> findInstalled(ConnectionKind kind) {
        Optional<Money> material = findConnection(kind);
        Optional<Money> labor = findConnectionLabor(kind);
        return material.flatMap(price -> labor.map(price::plus));
    }

    public String connectionSource(ConnectionKind kind) {
        return book.findConnection(kind).map(price -> named(price.source())).orElse("");
    }

    /** Whether a connection has both its price and its hours. */
    public boolean hasConnection(ConnectionKind kind) {
        return book.findConnection(kind)
                .filter(price -> price.price().isPresent() && price.hours().isPresent())
                .isPresent();
    }

    /** The tap that costs least; exothermic where neither is stated. */
    public ConnectionKind cheapestTap() {
        boolean irreversible = hasConnection(ConnectionKind.IRREVERSIBLE_TAP);
        if (!irreversible || !hasConnection(ConnectionKind.EXOTHERMIC_TAP)) {
            return irreversible ? ConnectionKind.IRREVERSIBLE_TAP : ConnectionKind.EXOTHERMIC_TAP;
        }
        Optional<Money> compressed = findInstalled(ConnectionKind.IRREVERSIBLE_TAP);
        Optional<Money> welded = findInstalled(ConnectionKind.EXOTHERMIC_TAP);
        boolean weldIsCheaper = compressed
                .flatMap(one -> welded.map(other -> other.compareTo(one) < 0))
                .orElse(false);
        return weldIsCheaper ? ConnectionKind.EXOTHERMIC_TAP : ConnectionKind.IRREVERSIBLE_TAP;
    }

    private Optional<Money> labor(Optional<BigDecimal> hours, BigDecimal factor) {
        if (hours.isEmpty()) {
            return Optional.empty();
        }
        Optional<LaborPrice> price = noted(book.labor(), "labor.perHour", "is missing");
        return price.map(rate -> Money.of(hours.get().multiply(factor).multiply(rate.perHour())));
    }

    private <T> Optional<T> noted(Optional<T> found, String name, String message) {
        if (found.isEmpty()) {
            note(name, message);
        }
        return found;
    }

    /** Notes something that a sum would take. */
    public void note(String name, String message) {
        String path = book.field().isEmpty() ? name : book.field() + "." + name;
        missing.add(book.file() + ": " + path + ": " + message);
    }

    /** What was asked for and is not stated, each as file, field and message. */
    public List<String> missing() {
        return List.copyOf(missing);
    }

    private String named(String source) {
        return source.isEmpty() ? book.name() : source;
    }
}
