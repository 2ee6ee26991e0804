package org.bondspan.io.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** A JSON value and where it stands. */
public sealed interface Node {
    Spot spot();

    /** What it is, with its article: {@code "a number"}. */
    String kind();

    record Text(Spot spot, String value) implements Node {
        @Override
        public String kind() {
            return "a text";
        }
    }

    /**
     * A number.
     *
     * @param value empty when its magnitude is beyond 1e12; magnitudes below 1e-40 are 0
     */
    record Decimal(Spot spot, Optional<BigDecimal> value) implements Node {
        @Override
        public String kind() {
            return "a number";
        }
    }

    record Flag(Spot spot, boolean value) implements Node {
        @Override
        public String kind() {
            return String.valueOf(value);
        }
    }

    record Nothing(Spot spot) implements Node {
        @Override
        public String kind() {
            return "null";
        }
    }

    record Array(Spot spot, List<Node> items) implements Node {
        public Array {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** A name within an object, where the name stands, and its value. */
    record Member(Spot spot, String name, Node value) {}

    /** An object: its members in file order, names that occur twice included. */
    record Struct(Spot spot, List<Member> members) implements Node {
        public Struct {
            members = List.copyOf(members);
        }

        /** The first member of that name. */
        public Optional<Node> find(String name) {
            return members.stream()
                    .filter(member -> member.name().equals(name))
                    .map(Member::value)
                    .findFirst();
        }

        @Override
        public String kind() {
            return "an object";
        }
    }
}
