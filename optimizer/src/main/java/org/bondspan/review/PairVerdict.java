package org.bondspan.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.review.WaySearch.Toll;
import org.bondspan.units.WireSize;

/**
 * How a proposal joins one pair at best. A lawful way of sufficient size settles it. Without one, the way of the
 * largest thinnest stretch that is lawful but for its sizes counts, and so does every way of sufficient size that is
 * lawful but for what it passes; without either, the way with the least that is wrong.
 */
final class PairVerdict {
    /** Ways over rings without leave come last: they are not counted at all. */
    private static final int RING = 1_000;

    private final Pair pair;
    private final Node start;
    private final Set<Node> goals;
    private final Optional<Way> best;
    private final Optional<Way> widest;
    private final Set<Offence> unlawful = new LinkedHashSet<>();
    private final boolean lawful;

    PairVerdict(Pair pair, Node start, Set<Node> goals) {
        this.pair = pair;
        this.start = start;
        this.goals = goals;
        Optional<Way> sound = find(new LawfulToll(0));
        this.lawful = sound.isPresent();
        if (lawful) {
            this.best = sound;
            this.widest = sound;
            return;
        }
        this.widest = findWidestLawful();
        List<Way> large = listLargeEnough();
        Optional<Way> least = widest.or(() -> large.stream().findFirst()).or(() -> find(new AnyToll()));
        this.best = least;
        large.forEach(way -> unlawful.addAll(way.offences()));
        least.ifPresent(way -> unlawful.addAll(way.offences()));
    }

    private Optional<Way> find(Toll toll) {
        return WaySearch.find(start, goals, toll);
    }

    private Optional<Way> findWidestLawful() {
        for (int shortfall = 1; shortfall < WireSize.values().length; shortfall++) {
            Optional<Way> way = find(new LawfulToll(shortfall));
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
        for (Optional<Way> way = find(new LargeEnoughToll(before)); way.isPresent(); ) {
            ways.add(way.get());
            before.addAll(way.get().offences());
            way = find(new LargeEnoughToll(before));
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

    /** Whether anything joins the pair, lawful or not; a ring without leave does not. */
    boolean isJoined() {
        return best.isPresent()
                && best.get().offences().stream()
                        .noneMatch(offence -> offence.check() == CheckedRule.RING_WITHOUT_LEAVE);
    }

    /** By how many sizes the best way falls short at its thinnest. */
    private int shortfall() {
        return best.map(way -> Math.max(
                        way.spans().stream().mapToInt(this::shortfall).max().orElse(0),
                        way.passed().stream().mapToInt(this::shortfall).max().orElse(0)))
                .orElse(0);
    }

    /** Whether every way as good as the best runs along one of those conductors. */
    boolean needs(Set<String> conductors) {
        return best.isPresent()
                && conductors.stream().anyMatch(best.get()::uses)
                && findRound(conductors).isEmpty();
    }

    /** Whether every way as good as the best passes that metal. */
    boolean needs(Node node) {
        return best.isPresent()
                && best.get().passed().contains(node)
                && find(new RoundNode(asGood(), node)).isEmpty();
    }

    /** Whether every way as good as the best runs along that stretch. */
    boolean needs(Span span) {
        return best.isPresent()
                && best.get().spans().contains(span)
                && find(new RoundSpan(asGood(), span)).isEmpty();
    }

    /** A way as good as the best that leaves out some conductors. */
    Optional<Way> findRound(Set<String> conductors) {
        return find(new RoundConductors(asGood(), conductors));
    }

    private Toll asGood() {
        return widest.isPresent() ? new LawfulToll(shortfall()) : new AnyToll();
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

    private static int toll(Collection<Offence> offences) {
        int toll = 0;
        for (Offence offence : offences) {
            toll += offence.check() == CheckedRule.RING_WITHOUT_LEAVE ? RING : 1;
        }
        return toll;
    }

    /** Nothing unlawful, sizes short by at most so many steps. */
    private final class LawfulToll implements Toll {
        private final int mostShortfall;

        LawfulToll(int mostShortfall) {
            this.mostShortfall = mostShortfall;
        }

        @Override
        public int along(Span span) {
            return toll(span.offences(), shortfall(span));
        }

        @Override
        public int through(Node node) {
            return toll(node.offences(), shortfall(node));
        }

        private int toll(List<Offence> offences, int shortfall) {
            if (!offences.isEmpty() || shortfall > mostShortfall) {
                return CLOSED;
            }
            return shortfall > 0 ? 1 : 0;
        }
    }

    /** Sizes sufficient, unlawful otherwise, but not in what is known already. */
    private final class LargeEnoughToll implements Toll {
        private final Set<Offence> known;

        LargeEnoughToll(Set<Offence> known) {
            this.known = known;
        }

        @Override
        public int along(Span span) {
            return toll(span.offences(), shortfall(span));
        }

        @Override
        public int through(Node node) {
            return toll(node.offences(), shortfall(node));
        }

        private int toll(List<Offence> offences, int shortfall) {
            boolean closed = shortfall > 0 || offences.stream().anyMatch(known::contains);
            return closed ? CLOSED : PairVerdict.toll(offences);
        }
    }

    /** Anything goes, the less of it the better. */
    private final class AnyToll implements Toll {
        @Override
        public int along(Span span) {
            return toll(span.offences()) + Math.min(1, shortfall(span));
        }

        @Override
        public int through(Node node) {
            return toll(node.offences()) + Math.min(1, shortfall(node));
        }
    }

    private record RoundConductors(Toll otherwise, Set<String> conductors) implements Toll {
        @Override
        public int along(Span span) {
            boolean closed = span.conductor()
                    .map(conductor -> conductors.contains(conductor.id()))
                    .orElse(false);
            return closed ? CLOSED : otherwise.along(span);
        }

        @Override
        public int through(Node node) {
            return otherwise.through(node);
        }
    }

    private record RoundSpan(Toll otherwise, Span closed) implements Toll {
        @Override
        public int along(Span span) {
            return span == closed ? CLOSED : otherwise.along(span);
        }

        @Override
        public int through(Node node) {
            return otherwise.through(node);
        }
    }

    private record RoundNode(Toll otherwise, Node closed) implements Toll {
        @Override
        public int along(Span span) {
            return otherwise.along(span);
        }

        @Override
        public int through(Node node) {
            return node == closed ? CLOSED : otherwise.through(node);
        }
    }
}
