package org.bondspan.io;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.bondspan.io.json.Node;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.WireSize;

/** Turns single values of a file into what they mean; what does not fit is reported and empty. */
final class Values {
    /** Greatest magnitude of a length, in the unit of the file. */
    private static final BigDecimal MAX_LENGTH = new BigDecimal("1e8");

    /** Greatest sum of lengths: four of them in metres fit 64 bits of nanometres. */
    private static final BigDecimal MAX_SUM = new BigDecimal("2e9");

    private static final Pattern SIZE_MARKS = Pattern.compile("awg|kcmil|mcm|gauge|no\\.|[#\\s]");

    private final LengthUnit unit;
    private final Problems problems;

    Values(LengthUnit unit, Problems problems) {
        this.unit = unit;
        this.problems = problems;
    }

    LengthUnit unit() {
        return unit;
    }

    /** Empty beyond 1e8. */
    static Optional<Long> nanometres(BigDecimal value, LengthUnit unit) {
        return within(MAX_LENGTH, value, unit).map(Length::nanometres);
    }

    private static Optional<Length> within(BigDecimal most, BigDecimal value, LengthUnit unit) {
        return value.abs().compareTo(most) > 0 ? Optional.empty() : Optional.of(Length.of(value, unit));
    }

    Optional<Node.Struct> object(Node node, String field) {
        return node instanceof Node.Struct struct
                ? Optional.of(struct)
                : wrong(node, field, "an object", "Write { ... }");
    }

    Optional<Node.Array> list(Node node, String field) {
        return node instanceof Node.Array array ? Optional.of(array) : wrong(node, field, "a list", "Write [ ... ]");
    }

    Optional<String> text(Node node, String field) {
        return node instanceof Node.Text text
                ? Optional.of(text.value())
                : wrong(node, field, "a text", "Put it in double quotes");
    }

    Optional<Boolean> flag(Node node, String field) {
        return node instanceof Node.Flag flag
                ? Optional.of(flag.value())
                : wrong(node, field, "true or false", "Write true or false, without quotes");
    }

    Optional<BigDecimal> number(Node node, String field) {
        if (!(node instanceof Node.Decimal decimal)) {
            return wrong(node, field, "a number", "Write digits without quotes and without unit, such as 12.5");
        }
        if (decimal.value().isEmpty()) {
            return reject(node, field, "is too large a number", "Check its digits and its exponent");
        }
        return decimal.value();
    }

    /** A number of inches, ohms, percent or the like, not negative. */
    Optional<BigDecimal> measure(Node node, String field) {
        return number(node, field).flatMap(value -> value.signum() >= 0 ? Optional.of(value) : negative(node, field));
    }

    Optional<Integer> whole(Node node, String field) {
        Optional<BigDecimal> value = number(node, field);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(value.get().intValueExact());
        } catch (ArithmeticException e) {
            return reject(node, field, "must be a whole number", "Write it without fraction");
        }
    }

    Optional<Length> length(Node node, String field) {
        return length(node, field, MAX_LENGTH, "Lengths are in " + unit.symbol() + ", at most 1e8");
    }

    private Optional<Length> length(Node node, String field, BigDecimal most, String advice) {
        Optional<BigDecimal> value = number(node, field);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        Optional<Length> length = within(most, value.get(), unit);
        return length.isPresent() ? length : reject(node, field, "is too large a length", advice);
    }

    /** A length that is not negative. */
    Optional<Length> distance(Node node, String field) {
        return notNegative(length(node, field), node, field);
    }

    /** What lengths come to: not negative, and more than a single length may be. */
    Optional<Length> sum(Node node, String field) {
        String advice = "Sums of lengths are in " + unit.symbol() + ", at most 2e9";
        return notNegative(length(node, field, MAX_SUM, advice), node, field);
    }

    private Optional<Length> notNegative(Optional<Length> length, Node node, String field) {
        return length.flatMap(each -> each.isLessThan(Length.ZERO) ? negative(node, field) : Optional.of(each));
    }

    /** One of the words of an enum, written in lower case with hyphens. */
    <E extends Enum<E>> Optional<E> word(Node node, String field, Class<E> type) {
        Optional<String> text = text(node, field);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<E> found = Arrays.stream(type.getEnumConstants())
                .filter(constant -> written(constant).equals(text.get()))
                .findFirst();
        return found.isPresent() ? found : unknownWord(node, field, text.get(), words(type));
    }

    private static List<String> words(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants()).map(Values::written).toList();
    }

    private static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    <T> Optional<T> unknownWord(Node node, String field, String word, List<String> words) {
        return reject(node, field, "\"" + word + "\" is not a word known here", Nearest.advice(word, words));
    }

    Optional<WireSize> size(Node node, String field) {
        if (!(node instanceof Node.Text text)) {
            return wrong(node, field, "a text", "Write a size as \"6 AWG\", \"3/0 AWG\" or \"500 kcmil\"");
        }
        Optional<WireSize> size = WireSize.find(text.value());
        return size.isPresent()
                ? size
                : reject(node, field, "there is no size \"" + text.value() + "\"", sizeAdvice(text.value()));
    }

    /** The same number or the same letters, however they are written. */
    private static String sizeAdvice(String written) {
        List<String> labels =
                Arrays.stream(WireSize.values()).map(WireSize::label).toList();
        String meant = bare(written);
        return labels.stream()
                .filter(label -> bare(label).equals(meant))
                .findFirst()
                .map(label -> "Perhaps \"" + label + "\" is meant")
                .orElse("Sizes are " + String.join(", ", labels));
    }

    private static String bare(String size) {
        return SIZE_MARKS.matcher(size.toLowerCase(Locale.ROOT)).replaceAll("");
    }

    private <T> Optional<T> negative(Node node, String field) {
        return reject(node, field, "must not be negative", "Write 0 or more");
    }

    private <T> Optional<T> wrong(Node node, String field, String wanted, String advice) {
        String way = node instanceof Node.Nothing ? "Leave the field out where it is not known" : advice;
        return reject(node, field, "must be " + wanted + ", not " + node.kind(), way);
    }

    /** Reports and is empty. */
    <T> Optional<T> reject(Node node, String field, String message, String advice) {
        problems.report(node.spot(), field, message, advice);
        return Optional.empty();
    }
}
