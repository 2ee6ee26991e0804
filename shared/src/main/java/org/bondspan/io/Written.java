package org.bondspan.io;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.bondspan.finding.Finding;
import org.bondspan.layout.End;
import org.bondspan.site.Evidence;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.Numbers;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;
import org.jspecify.annotations.Nullable;

/** Single values as files hold them: numbers rounded to 0.01 in the unit of the file, places, ends, findings. */
final class Written {
    private final LengthUnit unit;

    Written(LengthUnit unit) {
        this.unit = unit;
    }

    static BigDecimal number(BigDecimal value) {
        return Numbers.rounded(value);
    }

    static BigDecimal money(Money money) {
        return number(money.amount());
    }

    static @Nullable String size(Optional<WireSize> size) {
        return size.map(WireSize::label).orElse(null);
    }

    static <T> List<Object> all(List<T> items, Function<T, ? extends Object> write) {
        return items.stream().<Object>map(write).toList();
    }

    static Map<String, @Nullable Object> finding(Finding finding) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("rule", finding.rule());
        object.put("severity", finding.severity().label());
        object.put("subject", finding.subject());
        object.put("message", finding.message());
        return object;
    }

    BigDecimal length(Length length) {
        return number(length.in(unit));
    }

    BigDecimal weight(Weight weight) {
        return number(weight.in(unit));
    }

    Map<String, @Nullable Object> position(Position position) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("level", position.level());
        object.put("at", point(position.at()));
        object.put("height", length(position.height()));
        return object;
    }

    private List<BigDecimal> point(PlanPoint point) {
        return List.of(length(Length.ofNanometres(point.x())), length(Length.ofNanometres(point.y())));
    }

    Map<String, @Nullable Object> end(End end) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        if (end instanceof End.AtService at) {
            object.put("service", at.service());
            at.connection().ifPresent(connection -> object.put("connection", connection));
        } else if (end instanceof End.AtElectrode at) {
            object.put("electrode", at.electrode());
            at.connection().ifPresent(connection -> object.put("connection", connection));
        } else if (end instanceof End.OnPath on) {
            object.put("path", on.path());
            on.distance().ifPresent(distance -> object.put("distance", length(distance)));
        } else if (end instanceof End.OnConductor on) {
            object.put("conductor", on.conductor());
            object.put("at", length(on.at()));
        } else if (end instanceof End.AtJoint at) {
            object.put("joint", at.joint());
        } else if (end instanceof End.AtPlace at) {
            object.put("place", position(at.place()));
        }
        return object;
    }

    static Map<String, @Nullable Object> evidence(Evidence evidence) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("of", evidence.of());
        object.put("text", evidence.text());
        return object;
    }
}
