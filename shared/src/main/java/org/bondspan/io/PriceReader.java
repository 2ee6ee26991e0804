package org.bondspan.io;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.bondspan.io.json.Node;
import org.bondspan.price.ConductorPrice;
import org.bondspan.price.ConnectionKind;
import org.bondspan.price.ConnectionPrice;
import org.bondspan.price.CopperPrice;
import org.bondspan.price.HeightFactor;
import org.bondspan.price.Installation;
import org.bondspan.price.LaborPrice;
import org.bondspan.price.PriceBook;
import org.bondspan.price.RacewayPrice;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;

/**
 * Reads price books, and the prices of a site file. Either the whole file is in order, or an {@link InputException}
 * names each mistake with its line, its field and a way out. Prices that are not stated stay missing.
 */
public final class PriceReader {
    /** What price books call their format. */
    public static final String FORMAT = "bondspan-prices/1";

    private static final BigDecimal MOST_MONEY = new BigDecimal("1e7");
    private static final BigDecimal MOST_HOURS = new BigDecimal("1e6");
    private static final BigDecimal MOST_RATIO = BigDecimal.valueOf(100);
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    private final Fields fields;
    private final String file;
    private final String field;

    private PriceReader(Fields fields, String file, String field) {
        this.fields = fields;
        this.file = file;
        this.field = field;
    }

    /** Throws {@link InputException}. */
    public static PriceBook read(Path file) {
        return parse(InputFile.text(file), file.toString());
    }

    /** The text of a price book; its name is for messages. Throws {@link InputException}. */
    public static PriceBook parse(String text, String fileName) {
        Problems problems = new Problems(fileName);
        Node.Struct root = FileRoot.parse(text, fileName, problems, List.of(FORMAT), "price book");
        LengthUnit unit = FileRoot.findUnit(root).orElse(LengthUnit.FOOT);
        Scope scope = new Scope(
                "price book",
                problems,
                new Values(unit, problems),
                PlaceSurvey.of(root, unit),
                new Ids(),
                new Sources(),
                List.of());
        Fields fields = Fields.ofFile(root, scope);
        FileRoot.read(fields, FORMAT);
        PriceBook book = new PriceReader(fields, fileName, "").book();
        fields.done();
        problems.throwIfAny();
        return book;
    }

    /** The prices of a site file, where it has any. */
    static Optional<PriceBook> find(Fields site, String fileName) {
        return site.findObject("prices", "prices", fields -> new PriceReader(fields, fileName, "prices").book());
    }

    private PriceBook book() {
        Map<WireSize, ConductorPrice> conductors = new EnumMap<>(WireSize.class);
        fields.each("conductors", "conductor", each -> conductor(each, conductors));
        return new PriceBook(
                file,
                field,
                fields.findText("name").orElse(file),
                fields.findText("note").orElse(""),
                currency(),
                fields.findObject("copper", "copper price", PriceReader::copper),
                fields.findObject("labor", "labor price", PriceReader::labor),
                conductors,
                fields.findObject("raceway", "raceway price", PriceReader::raceway),
                fields.findObject("connections", "connections", PriceReader::connections)
                        .orElse(Map.of()),
                fields.each("heights", "height", PriceReader::height));
    }

    private String currency() {
        String currency = fields.findText("currency").orElse("USD");
        if (!CURRENCY.matcher(currency).matches()) {
            fields.report("currency", "is not a currency", "Write three capital letters, such as \"USD\"");
        }
        return currency;
    }

    private static CopperPrice copper(Fields fields) {
        return new CopperPrice(
                upTo(fields, "perPound", MOST_MONEY, "Give the price of copper per lb"),
                upTo(fields, "ratio", MOST_RATIO, "Give the price of conductor divided by that of the copper in it"),
                day(fields),
                source(fields));
    }

    /** ISO 8601, a day that there is. */
    private static String day(Fields fields) {
        String advice = "Give the day of the price, such as \"2025-01-31\"";
        String day = fields.name("date", advice);
        try {
            if (!day.isEmpty()) {
                LocalDate.parse(day);
            }
        } catch (DateTimeParseException e) {
            fields.report("date", "is not a day", advice);
        }
        return day;
    }

    private static LaborPrice labor(Fields fields) {
        return new LaborPrice(upTo(fields, "perHour", MOST_MONEY, "Give the price of one hour"), source(fields));
    }

    private static WireSize conductor(Fields fields, Map<WireSize, ConductorPrice> conductors) {
        WireSize size = fields.size("size", "Give its size, such as \"3/0 AWG\"");
        Map<Installation, BigDecimal> hours =
                fields.findObject("hours", "hours", PriceReader::hours).orElse(Map.of());
        ConductorPrice price =
                new ConductorPrice(findMoney(fields, "per1000ft"), hours, fields.findDistance("reel"), source(fields));
        if (price.reel().filter(reel -> reel.isZero()).isPresent()) {
            fields.report("reel", "is 0", "Give the longest length in one piece, or leave it out");
        }
        if (conductors.putIfAbsent(size, price) != null
                && fields.findSize("size").isPresent()) {
            fields.report("size", "is listed twice", "Remove one of the two");
        }
        return size;
    }

    private static Map<Installation, BigDecimal> hours(Fields fields) {
        Map<Installation, BigDecimal> hours = new EnumMap<>(Installation.class);
        for (Installation installation : Installation.values()) {
            findUpTo(fields, installation.label(), MOST_HOURS).ifPresent(value -> hours.put(installation, value));
        }
        return hours;
    }

    private static RacewayPrice raceway(Fields fields) {
        return new RacewayPrice(
                fields.findText("description").orElse("raceway"),
                findMoney(fields, "per1000ft"),
                findUpTo(fields, "hours", MOST_HOURS),
                source(fields));
    }

    private static Map<ConnectionKind, ConnectionPrice> connections(Fields fields) {
        Map<ConnectionKind, ConnectionPrice> prices = new EnumMap<>(ConnectionKind.class);
        for (ConnectionKind kind : ConnectionKind.values()) {
            fields.findObject(kind.label(), kind.label(), PriceReader::connection)
                    .ifPresent(price -> prices.put(kind, price));
        }
        return prices;
    }

    private static ConnectionPrice connection(Fields fields) {
        return new ConnectionPrice(findMoney(fields, "price"), findUpTo(fields, "hours", MOST_HOURS), source(fields));
    }

    private static HeightFactor height(Fields fields) {
        return new HeightFactor(
                fields.distance("above", "Give the height above the floor, in {unit}, from which the factor counts"),
                upTo(fields, "factor", MOST_RATIO, "Give how many times as long labor takes there"));
    }

    private static String source(Fields fields) {
        return fields.findText("source").orElse("");
    }

    private static BigDecimal upTo(Fields fields, String name, BigDecimal most, String advice) {
        fields.require(name, advice);
        return findUpTo(fields, name, most).orElse(BigDecimal.ZERO);
    }

    private static Optional<BigDecimal> findUpTo(Fields fields, String name, BigDecimal most) {
        Optional<BigDecimal> value = fields.findMeasure(name);
        if (value.isPresent() && value.get().compareTo(most) > 0) {
            fields.report(name, "is more than " + most.toPlainString(), "Check its digits and its unit");
            return Optional.empty();
        }
        return value;
    }

    /** An amount of money in whole cents. */
    static Optional<Money> findMoney(Fields fields, String name) {
        Optional<BigDecimal> value = findUpTo(fields, name, MOST_MONEY);
        if (value.isPresent() && value.get().stripTrailingZeros().scale() > 2) {
            fields.report(name, "has fractions of a cent", "Write it with two decimals at most");
        }
        return value.map(Money::of);
    }
}
