package org.bondspan.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.End;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Layout;
import org.bondspan.price.ConnectionKind;
import org.bondspan.price.PriceBook;
import org.bondspan.site.Electrode;
import org.bondspan.site.Level;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.Wall;
import org.bondspan.units.Length;
import org.bondspan.units.Weight;

/** Rows of what is counted: connections, taps, splices, walls passed. */
final class PieceRows {
    private final Site site;
    private final Layout layout;
    private final Optional<PriceBook> book;
    private final Optional<Pricing> pricing;

    PieceRows(Site site, Layout layout, Optional<PriceBook> book, Optional<Pricing> pricing) {
        this.site = site;
        this.layout = layout;
        this.book = book;
        this.pricing = pricing;
    }

    List<Row> list() {
        List<Row> rows = new ArrayList<>();
        for (Conductor conductor : layout.conductors()) {
            if (conductor.length().jumper().isZero()) {
                findKind(conductor.from()).ifPresent(kind -> rows.add(connection(conductor, kind, conductor.from())));
                findKind(conductor.to()).ifPresent(kind -> rows.add(connection(conductor, kind, conductor.to())));
            } else {
                rows.add(connection(conductor, ConnectionKind.METER_JUMPER, conductor.from()));
            }
        }
        layout.joints().forEach(joint -> rows.add(joint(joint)));
        layout.conductors().forEach(conductor -> splices(conductor).ifPresent(rows::add));
        layout.conductors().forEach(conductor -> rows.addAll(walls(conductor)));
        return rows;
    }

    /** How a conductor is fastened where it ends; empty where it is tapped, which its joint counts. */
    private Optional<ConnectionKind> findKind(End end) {
        if (end instanceof End.AtService) {
            return Optional.of(ConnectionKind.SERVICE_LUG);
        }
        if (end instanceof End.AtElectrode at) {
            return site.electrodes().stream()
                    .filter(electrode -> electrode.id().equals(at.electrode()))
                    .map(Electrode::type)
                    .map(ConnectionKind::onElectrode)
                    .findFirst();
        }
        if (end instanceof End.OnPath on) {
            return site.paths().stream()
                    .filter(path -> path.id().equals(on.path()) && !(path instanceof InstalledConductor))
                    .map(SitePath::medium)
                    .map(ConnectionKind::onPath)
                    .findFirst();
        }
        return Optional.empty();
    }

    private Row connection(Conductor conductor, ConnectionKind kind, End at) {
        return row(RowKind.CONNECTION, conductor.id(), kind, 1, Optional.of(at), Optional.of(conductor));
    }

    private Row row(
            RowKind rowKind,
            String item,
            ConnectionKind kind,
            int count,
            Optional<End> at,
            Optional<Conductor> conductor) {
        return new Row(
                rowKind,
                item,
                kind.words(),
                conductor.map(Conductor::size),
                "",
                at,
                Optional.empty(),
                Quantity.ofPieces(count),
                Weight.ZERO,
                pricing.map(prices -> prices.pieces(kind, count)).orElse(RowMoney.NONE));
    }

    private Row joint(Joint joint) {
        ConnectionKind kind = switch (joint.method()) {
            case "busbar" -> ConnectionKind.BUSBAR_LUG;
            case "irreversible" -> ConnectionKind.IRREVERSIBLE_TAP;
            default -> ConnectionKind.EXOTHERMIC_TAP;
        };
        int count = kind == ConnectionKind.BUSBAR_LUG ? joint.conductors().size() : taps(joint);
        return row(RowKind.TAP, joint.id(), kind, count, Optional.of(new End.AtPlace(joint.place())), Optional.empty());
    }

    /**
     * Of k ends that meet, one conductor going through, k - 2; each conductor onto an installed one is tapped to it.
     */
    private int taps(Joint joint) {
        List<Conductor> meeting = layout.conductors().stream()
                .filter(conductor -> joint.conductors().contains(conductor.id()))
                .toList();
        if (meeting.size() < joint.conductors().size()) {
            return meeting.size();
        }
        long landed = meeting.stream()
                .filter(conductor -> landsAt(conductor.from(), conductor, 0, joint.place())
                        || landsAt(conductor.to(), conductor, conductor.line().size() - 1, joint.place()))
                .count();
        return (int) Math.max(1, meeting.size() + landed - 2);
    }

    /** Whether that end lands on something at the very place. */
    private boolean landsAt(End end, Conductor conductor, int vertex, Position place) {
        return findKind(end).isPresent()
                && vertex >= 0
                && vertex < conductor.line().size()
                && conductor.line().get(vertex).equals(place)
                && conductor.length().makeUp().isZero();
    }

    private Optional<Row> splices(Conductor conductor) {
        Optional<Length> reel =
                book.flatMap(prices -> prices.findConductor(conductor.size())).flatMap(price -> price.reel());
        long pieces = reel.map(
                        length -> -Math.floorDiv(-conductor.length().total().nanometres(), length.nanometres()))
                .orElse(1L);
        return pieces < 2
                ? Optional.empty()
                : Optional.of(row(
                        RowKind.SPLICE,
                        conductor.id(),
                        ConnectionKind.SPLICE,
                        Math.toIntExact(pieces - 1),
                        Optional.empty(),
                        Optional.of(conductor)));
    }

    private List<Row> walls(Conductor conductor) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        conductor.crosses().forEach(wall -> counts.merge(wall, 1, Integer::sum));
        List<Row> rows = new ArrayList<>();
        for (Level level : site.levels()) {
            for (Wall wall : level.walls()) {
                Integer count = counts.get(wall.id());
                if (count != null) {
                    rows.add(wall(conductor, wall, count));
                }
            }
        }
        return rows;
    }

    private Row wall(Conductor conductor, Wall wall, int count) {
        return new Row(
                RowKind.WALL,
                conductor.id(),
                "crossing of wall " + wall.id(),
                Optional.of(conductor.size()),
                "",
                Optional.empty(),
                Optional.empty(),
                Quantity.ofPieces(count),
                Weight.ZERO,
                pricing.map(prices -> prices.crossing(wall, count)).orElse(RowMoney.NONE));
    }
}
