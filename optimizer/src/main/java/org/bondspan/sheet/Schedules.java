package org.bondspan.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bondspan.code.MeasuredLines;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.End;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Protection;
import org.bondspan.layout.SizeTotal;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.Typeface;
import org.bondspan.sheet.table.Schedule;
import org.bondspan.site.Evidence;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/** The tables beside a plan. */
final class Schedules {
    private final Site site;
    private final Layout layout;
    private final LengthUnit unit;
    private final String level;
    private final Set<String> drawn;
    private final Picture picture;

    /** For the level of that picture. */
    Schedules(SheetContent content, Picture picture) {
        this.site = content.site();
        this.layout = content.layout();
        this.unit = layout.lengthUnit();
        this.level = picture.level();
        this.picture = picture;
        this.drawn = picture.items().stream().map(Item::id).collect(Collectors.toSet());
    }

    /** All tables of the level, without those that are empty. */
    List<Schedule> list() {
        List<Schedule> all = List.of(
                conductors(),
                sizes(),
                totals(),
                measured(),
                joints(),
                electrodes(),
                bonds(),
                keynotes(),
                excluded(),
                assumed(),
                notChecked(),
                cautions());
        return Stream.concat(all.stream(), Stream.of(lettering(all))).toList();
    }

    /** Says that some characters are not printed, where that is so. */
    Schedule lettering(List<Schedule> schedules) {
        Stream<String> cells =
                schedules.stream().flatMap(each -> each.rows().stream().flatMap(List::stream));
        Stream<String> notes = picture.notes().stream().flatMap(note -> note.lines().stream());
        Stream<String> titles = Stream.of(site.name(), site.adoption(), level);
        boolean isLacking =
                Stream.of(titles, notes, cells).flatMap(words -> words).anyMatch(Typeface::lacksSomeOf);
        return new Schedule("Lettering", List.of("~"), isLacking ? List.of(List.of(Typeface.LACKING)) : List.of());
    }

    /** What a figure shows of them. */
    List<Schedule> figures() {
        return List.of(conductors(), totals());
    }

    private List<Conductor> conductorsHere() {
        return layout.conductors().stream()
                .filter(conductor ->
                        conductor.line().stream().anyMatch(at -> at.level().equals(level)))
                .toList();
    }

    private Schedule conductors() {
        List<List<String>> rows = new ArrayList<>();
        for (Conductor conductor : conductorsHere()) {
            rows.add(List.of(
                    conductor.id(),
                    conductor.size().label(),
                    initials(conductor),
                    words(conductor.from()) + " to " + words(conductor.to()),
                    Numbers.print(conductor.length().total().in(unit))));
        }
        boolean isSomeInRaceway =
                conductorsHere().stream().anyMatch(conductor -> conductor.protection() == Protection.RACEWAY);
        return new Schedule(
                "Conductors on this level, bare copper",
                List.of("id", "size", isSomeInRaceway ? "~as" : "as", "~from and to", ">length, " + unit.symbol()),
                rows);
    }

    /** Sections by size, conductors with the same ones in one row. */
    private Schedule sizes() {
        Map<List<String>, List<String>> ids = new LinkedHashMap<>();
        for (Conductor conductor : conductorsHere()) {
            List<String> found = List.of(conductor.size().label(), String.join(", ", conductor.basis()));
            ids.computeIfAbsent(found, key -> new ArrayList<>()).add(conductor.id());
        }
        List<List<String>> rows = new ArrayList<>();
        ids.forEach((found, same) -> rows.add(List.of(found.get(0), String.join(", ", same), found.get(1))));
        return new Schedule("How sizes were found", List.of("size", "~conductors", "~sections, NFPA 70"), rows);
    }

    private static String initials(Conductor conductor) {
        String role = switch (conductor.role()) {
            case GROUNDING_ELECTRODE_CONDUCTOR -> "GEC";
            case BONDING_JUMPER -> "BJ";
            case BONDING_CONDUCTOR -> "BC";
        };
        return conductor.protection() == Protection.RACEWAY ? role + ", in raceway" : role;
    }

    private static String words(End end) {
        if (end instanceof End.AtService at) {
            return at.service() + at.connection().map(id -> " " + id).orElse("");
        }
        if (end instanceof End.AtElectrode at) {
            return at.electrode() + at.connection().map(id -> " " + id).orElse("");
        }
        if (end instanceof End.OnPath on) {
            return on.path();
        }
        if (end instanceof End.OnConductor on) {
            return "tap on " + on.conductor();
        }
        return end instanceof End.AtJoint at ? at.joint() : "place";
    }

    private Schedule totals() {
        List<List<String>> rows = new ArrayList<>();
        for (SizeTotal total : layout.sizes()) {
            rows.add(List.of(
                    total.size().label(), Numbers.print(total.length(), unit), Numbers.print(total.weight(), unit)));
        }
        layout.copper().ifPresent(copper -> {
            rows.add(List.of("all", Numbers.print(copper.length(), unit), Numbers.print(copper.weight(), unit)));
            rows.add(List.of("with waste", Numbers.print(copper.purchaseLength(), unit), ""));
        });
        return new Schedule("Totals of the whole site", List.of("size", ">length", ">weight"), rows);
    }

    /** Lines whose measured length is not that of the drawing. */
    private Schedule measured() {
        List<List<String>> rows = new ArrayList<>();
        for (SitePath.CopperLine copper : site.listPaths(SitePath.CopperLine.class)) {
            MeasuredLines.findLength(copper)
                    .filter(length -> copper.line().level().equals(level))
                    .ifPresent(length -> rows.add(List.of(copper.id(), Numbers.print(length.in(unit)))));
        }
        return new Schedule(
                "Measured lines: lengths govern, not the drawing",
                List.of("~line", ">measured, " + unit.symbol()),
                rows);
    }

    private Schedule joints() {
        Map<String, List<String>> joints = new TreeMap<>();
        for (Joint joint : layout.joints()) {
            if (joint.place().level().equals(level)) {
                String sizes = joint.conductors().stream()
                        .flatMap(id -> layout.conductors().stream()
                                .filter(conductor -> conductor.id().equals(id)))
                        .map(Conductor::size)
                        .sorted(Comparator.<WireSize>naturalOrder().reversed())
                        .map(WireSize::label)
                        .collect(Collectors.joining(", "));
                joints.computeIfAbsent(joint.method() + "|" + sizes, key -> new ArrayList<>())
                        .add(joint.id());
            }
        }
        List<List<String>> rows = new ArrayList<>();
        joints.forEach((key, ids) -> rows.add(List.of(
                key.substring(0, key.indexOf('|')),
                key.substring(key.indexOf('|') + 1),
                String.valueOf(ids.size()),
                String.join(", ", ids))));
        return new Schedule("Joints on this level", List.of("method", "~sizes that meet", ">no.", "~ids"), rows);
    }

    private Schedule electrodes() {
        return new Schedule(
                "Electrodes on this level",
                List.of("id", "~type", "~state", "size"),
                layout.electrodes().stream()
                        .filter(state -> drawn.contains(state.id()) || isNowhere(state.id()))
                        .map(state -> List.of(
                                state.id(),
                                state.type().replace('-', ' '),
                                state.state().label().replace('-', ' '),
                                state.need().map(WireSize::label).orElse("-")))
                        .toList());
    }

    /** Whether the site file gives no place of an electrode: then it stands on the sheet of each level. */
    private boolean isNowhere(String id) {
        boolean isPipe = site.listPaths(SitePath.WaterPiping.class).stream()
                .anyMatch(pipe -> pipe.electrode().filter(id::equals).isPresent());
        return !isPipe
                && site.electrodes().stream()
                        .anyMatch(electrode -> electrode.id().equals(id)
                                && electrode.connections().isEmpty());
    }

    private Schedule bonds() {
        return new Schedule(
                "Frames and piping",
                List.of("id", "~state", "size"),
                layout.bonds().stream()
                        .map(state -> List.of(
                                state.path(),
                                state.state().label().replace('-', ' '),
                                state.need().map(WireSize::label).orElse("-")))
                        .toList());
    }

    private Schedule keynotes() {
        List<Finding> findings = layout.findings();
        return new Schedule(
                "Keynotes (in hexagons)",
                List.of("", "", "~"),
                IntStream.range(0, findings.size())
                        .mapToObj(i -> List.of(
                                String.valueOf(i + 1),
                                findings.get(i).severity().label(),
                                findings.get(i).rule() + ", " + findings.get(i).subject() + ": "
                                        + findings.get(i).message()))
                        .toList());
    }

    private Schedule excluded() {
        return new Schedule(
                "Not permitted to carry",
                List.of("path", "~why", "rule"),
                layout.excluded().stream()
                        .filter(path -> drawn.contains(path.path()) || !hasLine(path.path()))
                        .map(path -> List.of(path.path(), path.reason(), String.join(", ", path.basis())))
                        .toList());
    }

    private boolean hasLine(String id) {
        return site.paths().stream()
                .anyMatch(path -> path.id().equals(id) && path.findLine().isPresent());
    }

    private Schedule assumed() {
        return new Schedule(
                "Assumed facts, not verified",
                List.of("~"),
                layout.assumed().stream().map(Evidence::of).map(List::of).toList());
    }

    private Schedule notChecked() {
        return new Schedule(
                "Not checked",
                List.of("~"),
                layout.notChecked().stream().map(List::of).toList());
    }

    private Schedule cautions() {
        return new Schedule(
                "Cautions",
                List.of("~"),
                layout.cautions().stream().map(List::of).toList());
    }

    /** What numbers in circles stand for. */
    static Schedule numbered(List<Note> notes) {
        return new Schedule(
                "Numbers in circles",
                List.of("", "~"),
                IntStream.range(0, notes.size())
                        .mapToObj(i -> List.of(
                                String.valueOf(i + 1),
                                String.join(", ", notes.get(i).lines())))
                        .toList());
    }
}
