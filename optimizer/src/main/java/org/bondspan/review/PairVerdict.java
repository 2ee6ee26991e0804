package org.bondspan.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.review.Node.Kind;
import org.bondspan.review.WaySearch.Toll;
import org.bondspan.units.WireSize;

/**
 * How a proposal joins one pair at best. A lawful way of sufficient size settles it. Without one, the way of the
 * largest thinnest stretch that is lawful but for its sizes counts, and so does every way of sufficient size that is
 * lawful but for what it passes; without either, the way with the least that is wrong. Where every way passes the bus
 * of another service the pair is not joined, but the best of them is kept: what else is wrong with it is told too.
 */
final class PairVerdict {
    /** Ways over rings without leave come last: they are not counted at all. */
    private static final int RING = 1_000;

    private final Pair pair;
    private final Node start;
    private final Set<Node> goals;
    private final Optional<Way> best;
    private final Optional<String> bus;
    private final Set<Offence> unlawful = new LinkedHashSet<>();
    private final boolean lawful;

    /** What it takes to go by something, by what is unlawful about it and by how many sizes it is too small. */
    private interface Price {
        int of(List<Offence> offences, int shortfall);
    }

    /** The buses of other services, as a way finds them. */
    private enum Buses {
        CLOSED,
        OPEN
    }

    PairVerdict(Pair pair, Node start, Set<Node> goals) {
        this.pair = pair;
        this.start = start;
        this.goals = goals;
        Optional<Way> widest = findWidest(Buses.CLOSED);
        this.lawful = widest.filter(way -> shortfall(way) == 0).isPresent();
        List<Way> large = lawful ? List.of() : listLargeEnough();
        this.best = widest.or(() -> large.stream().findFirst())
                .or(() -> find(anything(Buses.CLOSED)))
                .or(() -> findWidest(Buses.OPEN))
                .or(() -> find(anything(Buses.OPEN)));
        this.bus = best.flatMap(PairVerdict::findBus);
        large.forEach(way -> unlawful.addAll(way.offences()));
        best.ifPresent(way -> unlawful.addAll(way.offences()));
    }

    private Optional<Way> find(Toll toll) {
        return WaySearch.find(start, goals, toll);
    }

    /** The lawful way whose sizes fall short by the least, if by anything. */
    private Optional<Way> findWidest(Buses buses) {
        for (int shortfall = 0; shortfall < WireSize.values().length; shortfall++) {
            Optional<Way> way = find(lawful(shortfall, buses));
            if (way.isPresent()) {
                return way;
            }
        }
        return Optional.empty();
    }

    /** Ways of sufficient size with nothing unlawful in common. */
    private List<Way> listLargeEnough() {
        List<Way> ways = new ArrayList<>();
        Set<Offence> before = new LinkedHashSet<>();
        for (Optional<Way> way = find(largeEnough(before)); way.isPresent(); way = find(largeEnough(before))) {
            ways.add(way.get());
            before.addAll(way.get().offences());
        }
        return ways;
    }

    Pair pair() {
        return pair;
    }

    boolean isGoal(Node node) {
        return goals.contains(node);
    }

    /** Whether there is a lawful way of sufficient size. */
    boolean isLawful() {
        return lawful;
    }

    /** The best way; empty where nothing joins the pair at all. */
    Optional<Way> best() {
        return best;
    }

    /** What is unlawful, sizes aside, on the ways that the pair has to rely on. */
    Set<Offence> unlawful() {
        return unlawful;
    }

    /** Whether anything joins the pair, lawful or not; a ring without leave and the bus of another service do not. */
    boolean isJoined() {
        return best.isPresent()
                && bus.isEmpty()
                && best.get().offences().stream()
                        .noneMatch(offence -> offence.check() == CheckedRule.RING_WITHOUT_LEAVE);
    }

    /** The service whose bus the best way passes, where no other way joins the pair. */
    Optional<String> findBus() {
        return bus;
    }

    private static Optional<String> findBus(Way way) {
        return way.passed().stream()
                .filter(node -> node.kind() == Kind.SERVICE)
                .map(Node::id)
                .findFirst();
    }

    /** What passes the bus of another service has to be run otherwise: it adds to no need of several services. */
    private boolean isRelied() {
        return best.isPresent() && bus.isEmpty();
    }

    /** Whether it is joined and every way as good as the best runs along one of those conductors. */
    boolean needs(Set<String> conductors) {
        return isRelied()
                && conductors.stream().anyMatch(best.get()::uses)
                && findRound(conductors).isEmpty();
    }

    /** Whether it is joined and every way as good as the best passes that metal. */
    boolean needs(Node node) {
        return isRelied()
                && best.get().passed().contains(node)
                && find(asGood().closedAt(node)).isEmpty();
    }

    /** Whether it is joined and every way as good as the best runs along that stretch. */
    boolean needs(Span span) {
        return isRelied()
                && best.get().spans().contains(span)
                && find(asGood().closedAlong(span::equals)).isEmpty();
    }

    /** A way as good as the best that leaves out some conductors. */
    Optional<Way> findRound(Set<String> conductors) {
        return find(asGood().closedAlong(span -> span.isOfAny(conductors)));
    }

    private Toll asGood() {
        Buses buses = bus.isPresent() ? Buses.OPEN : Buses.CLOSED;
        return best.filter(way -> way.offences().isEmpty())
                .map(way -> lawful(shortfall(way), buses))
                .orElseGet(() -> anything(buses));
    }

    /** By how many sizes a way falls short at its thinnest. */
    private int shortfall(Way way) {
        return Math.max(
                way.spans().stream().mapToInt(this::shortfall).max().orElse(0),
                way.passed().stream().mapToInt(this::shortfall).max().orElse(0));
    }

    private int shortfall(Span span) {
        return span.conductor()
                .map(pair::shortfall)
                .or(() -> span.installed().map(conductor -> pair.shortfall(conductor.size())))
                .orElse(0);
    }

    private int shortfall(Node node) {
        return node.capacity().map(pair::shortfall).orElse(0);
    }

    /** Nothing unlawful, sizes short by at most so many steps. */
    private Toll lawful(int mostShortfall, Buses buses) {
        return new PairToll(
                (offences, shortfall) ->
                        offences.isEmpty() && shortfall <= mostShortfall ? Math.min(1, shortfall) : Toll.CLOSED,
                buses);
    }

    /** Sizes sufficient, unlawful otherwise, but not in what is known already. */
    private Toll largeEnough(Set<Offence> known) {
        return new PairToll(
                (offences, shortfall) ->
                        shortfall > 0 || offences.stream().anyMatch(known::contains) ? Toll.CLOSED : price(offences),
                Buses.CLOSED);
    }

    /** Anything goes, the less of it the better. */
    private Toll anything(Buses buses) {
        return new PairToll((offences, shortfall) -> price(offences) + Math.min(1, shortfall), buses);
    }

    private static int price(List<Offence> offences) {
        return offences.stream()
                .mapToInt(offence -> offence.check() == CheckedRule.RING_WITHOUT_LEAVE ? RING : 1)
                .sum();
    }

    /** One price for stretches and for what is passed. */
    private final class PairToll implements Toll {
        private final Price price;
        private final Buses buses;

        PairToll(Price price, Buses buses) {
            this.price = price;
            this.buses = buses;
        }

        @Override
        public int along(Span span) {
            return price.of(span.offences(), shortfall(span));
        }

        @Override
        public int through(Node node) {
            boolean closed = node.kind() == Kind.SERVICE && buses == Buses.CLOSED;
            return closed ? CLOSED : price.of(node.offences(), shortfall(node));
        }
    }
}
