package org.bondspan.io;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.bondspan.layout.BondState;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Cost;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.Excluded;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Link;
import org.bondspan.layout.Objective;
import org.bondspan.layout.Piece;
import org.bondspan.layout.RunLength;
import org.bondspan.layout.ServiceState;
import org.bondspan.layout.SizeTotal;
import org.jspecify.annotations.Nullable;

/**
 * Writes results. Fields stand in the order of the published format; numbers are rounded to 0.01 here and nowhere
 * before, lengths in the unit of the site, weights in lb for feet and kg for metres.
 */
public final class LayoutWriter {
    /** What result files call their format. */
    public static final String FORMAT = "bondspan-result/1";

    private final Layout layout;
    private final Written written;

    private LayoutWriter(Layout layout) {
        this.layout = layout;
        this.written = new Written(layout.lengthUnit());
    }

    /** The text of a result file, ending in a line break. */
    public static String toJson(Layout layout) {
        return JsonPrinter.print(new LayoutWriter(layout).result());
    }

    private Map<String, @Nullable Object> result() {
        Map<String, @Nullable Object> result = new LinkedHashMap<>();
        result.put("format", FORMAT);
        result.put("site", layout.site());
        result.put("codeEdition", layout.codeEdition().year());
        result.put("objective", layout.objective().label());
        result.put("lengthUnit", layout.lengthUnit().symbol());
        result.put("status", layout.status().label());
        result.put("copper", layout.copper().map(this::copper).orElse(null));
        result.put("sizes", Written.all(layout.sizes(), this::size));
        result.put("lowerBound", lowerBound());
        result.put("gapPercent", Written.number(layout.gapPercent()));
        result.put("conductors", Written.all(layout.conductors(), this::conductor));
        result.put("links", Written.all(layout.links(), this::link));
        result.put("joints", Written.all(layout.joints(), this::joint));
        result.put("services", Written.all(layout.services(), LayoutWriter::service));
        result.put("electrodes", Written.all(layout.electrodes(), LayoutWriter::electrode));
        result.put("bonds", Written.all(layout.bonds(), LayoutWriter::bond));
        result.put("excluded", Written.all(layout.excluded(), LayoutWriter::excluded));
        result.put("findings", Written.all(layout.findings(), Written::finding));
        result.put("notChecked", layout.notChecked());
        result.put("cautions", layout.cautions());
        result.put("adoption", layout.adoption());
        result.put("assumed", Written.all(layout.assumed(), Written::evidence));
        layout.cost().ifPresent(cost -> result.put("cost", cost(cost)));
        return result;
    }

    private @Nullable BigDecimal lowerBound() {
        return layout.objective() == Objective.COST
                ? layout.cost().map(cost -> Written.money(cost.lowerBound())).orElse(null)
                : layout.lowerBound().map(written::weight).orElse(null);
    }

    private Map<String, @Nullable Object> cost(Cost cost) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("currency", cost.currency());
        object.put("total", Written.money(cost.total()));
        object.put("material", Written.money(cost.material()));
        object.put("labor", Written.money(cost.labor()));
        object.put("crossings", Written.money(cost.crossings()));
        object.put("rounding", Written.money(cost.rounding()));
        object.put("leastCopperWeight", written.weight(cost.leastCopper()));
        object.put("leastCopperCost", Written.money(cost.leastCopperCost()));
        object.put("leastCopperStatus", cost.leastCopperStatus().label());
        return object;
    }

    private Map<String, @Nullable Object> copper(Copper copper) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("length", written.length(copper.length()));
        object.put("weight", written.weight(copper.weight()));
        object.put("purchaseLength", written.length(copper.purchaseLength()));
        return object;
    }

    private Map<String, @Nullable Object> size(SizeTotal total) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("size", total.size().label());
        object.put("length", written.length(total.length()));
        object.put("weight", written.weight(total.weight()));
        return object;
    }

    private Map<String, @Nullable Object> conductor(Conductor conductor) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("id", conductor.id());
        object.put("size", conductor.size().label());
        object.put("role", conductor.role().label());
        object.put("protection", conductor.protection().label());
        object.put("from", written.end(conductor.from()));
        object.put("to", written.end(conductor.to()));
        object.put("line", Written.all(conductor.line(), written::position));
        object.put("length", runLength(conductor.length()));
        object.put("serves", conductor.serves());
        object.put("basis", conductor.basis());
        object.put("why", conductor.why());
        object.put("pieces", Written.all(conductor.pieces(), this::piece));
        if (!conductor.crosses().isEmpty()) {
            object.put("crosses", conductor.crosses());
        }
        return object;
    }

    private Map<String, @Nullable Object> piece(Piece piece) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("length", written.length(piece.length()));
        object.put("lowest", written.length(piece.lowest()));
        object.put("highest", written.length(piece.highest()));
        return object;
    }

    private Map<String, @Nullable Object> runLength(RunLength length) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("plan", written.length(length.plan()));
        object.put("vertical", written.length(length.vertical()));
        object.put("makeUp", written.length(length.makeUp()));
        object.put("jumper", written.length(length.jumper()));
        object.put("total", written.length(length.total()));
        return object;
    }

    private Map<String, @Nullable Object> link(Link link) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("path", link.path());
        object.put("medium", link.medium());
        object.put("from", written.end(link.from()));
        object.put("to", written.end(link.to()));
        object.put("length", written.length(link.length()));
        object.put("basis", link.basis());
        link.fromPlace().ifPresent(place -> object.put("fromPlace", written.position(place)));
        link.toPlace().ifPresent(place -> object.put("toPlace", written.position(place)));
        return object;
    }

    private Map<String, @Nullable Object> joint(Joint joint) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("id", joint.id());
        object.put("place", written.position(joint.place()));
        object.put("conductors", joint.conductors());
        object.put("method", joint.method());
        object.put("basis", joint.basis());
        return object;
    }

    private static Map<String, @Nullable Object> service(ServiceState service) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("id", service.id());
        object.put("supply", service.supply());
        object.put("area", service.area());
        object.put("need", service.need().label());
        return object;
    }

    private static Map<String, @Nullable Object> electrode(ElectrodeState electrode) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("id", electrode.id());
        object.put("type", electrode.type());
        object.put("state", electrode.state().label());
        object.put("need", Written.size(electrode.need()));
        object.put("basis", electrode.basis());
        object.put("reason", electrode.reason());
        object.put("way", electrode.way());
        return object;
    }

    private static Map<String, @Nullable Object> bond(BondState bond) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("path", bond.path());
        object.put("state", bond.state().label());
        object.put("need", Written.size(bond.need()));
        object.put("basis", bond.basis());
        object.put("reason", bond.reason());
        object.put("way", bond.way());
        return object;
    }

    private static Map<String, @Nullable Object> excluded(Excluded excluded) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("path", excluded.path());
        object.put("medium", excluded.medium());
        object.put("reason", excluded.reason());
        object.put("basis", excluded.basis());
        return object;
    }
}
