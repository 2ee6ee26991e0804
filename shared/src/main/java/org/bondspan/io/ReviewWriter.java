package org.bondspan.io;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.bondspan.layout.Copper;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.LeastCopper;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.layout.Status;
import org.jspecify.annotations.Nullable;

/** Writes what a review says of a proposal; order, units and rounding as in {@link LayoutWriter}. */
public final class ReviewWriter {
    /** What review files call their format. */
    public static final String FORMAT = "bondspan-review/1";

    private final ReviewOutcome outcome;
    private final Written written;

    private ReviewWriter(ReviewOutcome outcome) {
        this.outcome = outcome;
        this.written = new Written(outcome.lengthUnit());
    }

    /** The text of a review file, ending in a line break. */
    public static String toJson(ReviewOutcome outcome) {
        return JsonPrinter.print(new ReviewWriter(outcome).review());
    }

    private Map<String, @Nullable Object> review() {
        Map<String, @Nullable Object> review = new LinkedHashMap<>();
        review.put("format", FORMAT);
        review.put("site", outcome.site());
        review.put("codeEdition", outcome.codeEdition().year());
        review.put("lengthUnit", outcome.lengthUnit().symbol());
        review.put("verdict", outcome.complies() ? "complies" : "violates");
        review.put("findings", Written.all(outcome.findings(), Written::finding));
        review.put("notChecked", outcome.notChecked());
        review.put("copper", outcome.copper().map(this::copper).orElse(null));
        least(outcome.least(), review);
        review.put("conductors", Written.all(outcome.conductors(), this::conductor));
        review.put("ways", Written.all(outcome.ways(), ReviewWriter::way));
        review.put("cautions", outcome.cautions());
        review.put("adoption", outcome.adoption());
        review.put("assumed", Written.all(outcome.assumed(), Written::evidence));
        return review;
    }

    private void least(LeastCopper least, Map<String, @Nullable Object> review) {
        review.put("least", least.weight().map(written::weight).orElse(null));
        review.put("leastStatus", least.status().map(Status::label).orElse(null));
        review.put("lowerBound", least.lowerBound().map(written::weight).orElse(null));
        review.put(
                "gapPercent",
                least.weight().map(weight -> Written.number(least.gapPercent())).orElse(null));
    }

    private Map<String, @Nullable Object> copper(Copper copper) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("length", written.length(copper.length()));
        object.put("weight", written.weight(copper.weight()));
        return object;
    }

    private Map<String, @Nullable Object> conductor(JudgedConductor conductor) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("id", conductor.id());
        object.put("size", conductor.size().label());
        object.put("material", conductor.material().label());
        object.put("needed", Written.size(conductor.needed()));
        object.put("neededFor", conductor.neededFor());
        object.put("length", conductor.length().map(written::length).orElse(null));
        object.put("lengthFrom", lengthFrom(conductor.lengthFrom()));
        return object;
    }

    private static @Nullable String lengthFrom(LengthFrom from) {
        return from == LengthFrom.NOTHING ? null : from.name().toLowerCase(Locale.ROOT);
    }

    private static Map<String, @Nullable Object> way(JudgedWay way) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("service", way.service());
        object.put("thing", way.thing());
        object.put("lawful", way.lawful());
        object.put("passes", way.passes());
        object.put("thinnest", way.thinnest().orElse(null));
        return object;
    }
}
