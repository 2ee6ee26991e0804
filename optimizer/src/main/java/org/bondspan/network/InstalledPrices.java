package org.bondspan.network;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import org.bondspan.layout.Piece;
import org.bondspan.price.Band;
import org.bondspan.price.Bands;
import org.bondspan.price.ConnectionKind;
import org.bondspan.price.Installation;
import org.bondspan.price.PriceBook;
import org.bondspan.price.Rates;
import org.bondspan.site.Electrode;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;

/**
 * What copper costs when it is installed, in whole steps of money: for a size that is needed every price that is
 * missing is noted, a larger one is only bought where it is priced.
 */
final class InstalledPrices {
    private static final WireSize LARGEST = WireSize.AWG_3_0;

    private final Site site;
    private final Rates rates;
    private final Bands bands;
    private final Set<WireSize> needed;
    private final Map<Key, OptionalLong> known = new HashMap<>();
    private final int digits;

    private record Key(WireSize size, Band band) {}

    /** @param needed sizes that the Code calls for somewhere on the site */
    InstalledPrices(Site site, PriceBook book, Collection<WireSize> needed) {
        this.site = site;
        this.rates = new Rates(book);
        this.bands = new Bands(book.heights());
        this.needed = Set.copyOf(needed);
        this.digits = Math.max(0, waste().stripTrailingZeros().scale());
    }

    private BigDecimal waste() {
        return BigDecimal.ONE.add(site.wastePercent().movePointLeft(2));
    }

    /** Sizes worth looking at, smallest first: those needed, and larger ones that have hours, up to 3/0 AWG. */
    List<WireSize> sizes() {
        NavigableSet<WireSize> sizes = new TreeSet<>(needed);
        WireSize smallest = sizes.first();
        rates.book().conductors().keySet().stream()
                .filter(size -> size.isAtLeast(smallest) && LARGEST.isAtLeast(size))
                .forEach(sizes::add);
        return List.copyOf(sizes);
    }

    /** Steps of money in one cent: powers of ten, so that waste leaves no fraction. */
    BigDecimal stepsPerCent() {
        return BigDecimal.ONE.movePointRight(digits);
    }

    List<Bands.Part> parts(WireSize size, Piece piece) {
        return bands.of(size, piece.length(), piece.lowest(), piece.highest());
    }

    /** Steps of money per 1000 ft; empty for a size that is not needed and not priced. */
    OptionalLong rate(WireSize size, Band band) {
        return known.computeIfAbsent(new Key(size, band), this::rate);
    }

    private OptionalLong rate(Key key) {
        Rates asked = needed.contains(key.size()) ? rates : new Rates(rates.book());
        boolean inRaceway = key.band().installation() == Installation.RACEWAY;
        Optional<Money> copper = asked.findConductor(key.size());
        Optional<Money> labor = asked.findLabor(key.size(), key.band());
        Optional<Money> raceway = inRaceway ? asked.findRaceway() : Optional.of(Money.ZERO);
        Optional<Money> racewayLabor =
                inRaceway ? asked.findRacewayLabor(key.band().factor()) : Optional.of(Money.ZERO);
        if (copper.isEmpty() || labor.isEmpty() || raceway.isEmpty() || racewayLabor.isEmpty()) {
            return OptionalLong.empty();
        }
        BigDecimal bought =
                BigDecimal.valueOf(copper.get().plus(raceway.get()).cents()).multiply(waste());
        BigDecimal installed =
                BigDecimal.valueOf(labor.get().plus(racewayLabor.get()).cents());
        return OptionalLong.of(bought.add(installed).multiply(stepsPerCent()).longValueExact());
    }

    /** What a piece of a size costs before rounding; empty where it is not priced. */
    Optional<ExactMoney> cost(WireSize size, Piece piece) {
        ExactMoney sum = ExactMoney.ZERO;
        for (Bands.Part part : parts(size, piece)) {
            OptionalLong rate = rate(size, part.band());
            if (rate.isEmpty()) {
                return Optional.empty();
            }
            BigDecimal steps = BigDecimal.valueOf(rate.getAsLong())
                    .multiply(BigDecimal.valueOf(part.length().nanometres()));
            sum = sum.plus(new ExactMoney(steps.movePointLeft(digits)));
        }
        return Optional.of(sum);
    }

    /** Cents for landing on what has that id: a service, an electrode, a path. */
    long landing(String of) {
        return installed(kind(of));
    }

    private ConnectionKind kind(String of) {
        if (site.services().stream().map(Service::id).anyMatch(of::equals)) {
            return ConnectionKind.SERVICE_LUG;
        }
        return site.electrodes().stream()
                .filter(electrode -> electrode.id().equals(of))
                .map(Electrode::type)
                .map(ConnectionKind::onElectrode)
                .findFirst()
                .orElseGet(() -> site.paths().stream()
                        .filter(path -> path.id().equals(of))
                        .map(SitePath::medium)
                        .map(ConnectionKind::onPath)
                        .findFirst()
                        .orElse(ConnectionKind.ELECTRODE_CLAMP));
    }

    /** A jumper around a break: its copper and its two clamps. */
    ExactMoney jumper(WireSize size, List<Piece> pieces) {
        ExactMoney clamps = ExactMoney.of(Money.ofCents(installed(ConnectionKind.METER_JUMPER)));
        return pieces.stream().flatMap(piece -> cost(size, piece).stream()).reduce(clamps, ExactMoney::plus);
    }

    /** Cents for passing a wall. */
    long crossing(String wall) {
        Optional<Money> crossing = site.levels().stream()
                .flatMap(level -> level.walls().stream())
                .filter(each -> each.id().equals(wall))
                .flatMap(each -> each.crossing().stream())
                .findFirst();
        if (crossing.isEmpty()) {
            rates.note("walls." + wall + ".crossing", "is missing in the site");
        }
        return crossing.map(Money::cents).orElse(0L);
    }

    private long installed(ConnectionKind kind) {
        return rates.findInstalled(kind).map(Money::cents).orElse(0L);
    }

    /** Cents for a tap. */
    long tap() {
        return installed(tapKind());
    }

    /** The tap that costs least. */
    ConnectionKind tapKind() {
        return rates.cheapestTap();
    }

    /** Whether so many conductors are joined for less by lugs on a busbar than by taps. */
    boolean prefersBusbar(int conductors) {
        return rates.hasConnection(ConnectionKind.BUSBAR_LUG)
                && Math.multiplyExact(installed(ConnectionKind.BUSBAR_LUG), conductors)
                        <= Math.multiplyExact(tap(), Math.max(1, conductors - 2));
    }

    /** Cents for a lug on a busbar, where it is priced. */
    OptionalLong busbarLug() {
        return rates.hasConnection(ConnectionKind.BUSBAR_LUG)
                ? OptionalLong.of(installed(ConnectionKind.BUSBAR_LUG))
                : OptionalLong.empty();
    }

    /** The size, not smaller than needed, at which a piece costs least; the smallest of several. */
    WireSize cheapest(WireSize need, Piece piece) {
        WireSize best = need;
        Optional<ExactMoney> least = cost(need, piece);
        for (WireSize size : sizes()) {
            Optional<ExactMoney> cost = size.isAtLeast(need) ? cost(size, piece) : Optional.empty();
            if (cost.isPresent()
                    && least.map(money -> cost.get().compareTo(money) < 0).orElse(false)) {
                best = size;
                least = cost;
            }
        }
        return best;
    }

    /** Prices that were asked for and are not stated. */
    List<String> missing() {
        return rates.missing();
    }
}
