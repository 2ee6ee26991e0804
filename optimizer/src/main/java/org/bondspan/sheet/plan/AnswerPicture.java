package org.bondspan.sheet.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.End;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.WaterPiping;

/** Draws an answer, or a proposal, on a level: conductors, joints, landings, electrodes as they fare, services. */
final class AnswerPicture {
    private final Site site;
    private final Shown shown;
    private final Level level;
    private final List<Item> items;
    private final List<Note> notes;

    AnswerPicture(Site site, Shown shown, Level level, List<Item> items, List<Note> notes) {
        this.site = site;
        this.shown = shown;
        this.level = level;
        this.items = items;
        this.notes = notes;
    }

    void add() {
        shown.conductors().forEach(this::addConductor);
        shown.joints().forEach(this::addJoint);
        shown.electrodes().forEach(this::addElectrode);
        site.services().forEach(this::addService);
    }

    private void addConductor(Shown.Run conductor) {
        LineKind kind = LineKind.of(conductor.role());
        List<PlanPoint> anchors = new ArrayList<>();
        for (List<PlanPoint> run : LevelRuns.of(conductor.line(), level.id())) {
            items.add(new Item.Run(
                    conductor.id(), Layer.CONDUCTORS, kind, LineKind.pen(conductor.role(), conductor.size()), run));
            anchors.addAll(Anchors.along(run));
        }
        LevelRuns.verticals(conductor.line(), level.id())
                .forEach(at -> mark(conductor.id(), Layer.CONDUCTORS, Symbol.UP_OR_DOWN, at));
        List<Position> line = conductor.line();
        if (!line.isEmpty()) {
            addLanding(conductor.id(), conductor.from(), line.get(0));
            addLanding(conductor.id(), conductor.to(), line.get(line.size() - 1));
        }
        if (!anchors.isEmpty()) {
            notes.add(new Note(conductor.id(), Layer.CONDUCTORS, Note.Kind.CONDUCTOR, conductor.words(), anchors));
        }
    }

    private void addLanding(String conductor, End end, Position at) {
        boolean lands = end instanceof End.AtElectrode || end instanceof End.AtService || end instanceof End.OnPath;
        if (lands && isHere(at)) {
            boolean isAtEquipment = items.stream()
                    .anyMatch(item -> item instanceof Item.Mark mark
                            && mark.symbol() == Symbol.BREAK
                            && mark.at().equals(at.at()));
            mark(conductor, Layer.JOINTS, isAtEquipment ? Symbol.BREAK_WITH_JUMPER : Symbol.LANDING, at.at());
        }
    }

    private void addJoint(Shown.Meeting joint) {
        if (isHere(joint.place())) {
            mark(joint.id(), Layer.JOINTS, joint.symbol(), joint.place().at());
            if (!joint.id().isEmpty()) {
                note(
                        joint.id(),
                        Layer.JOINTS,
                        Note.Kind.JOINT,
                        List.of(joint.place().at()),
                        joint.id());
            }
        }
    }

    private void addElectrode(ElectrodeState state) {
        Electrode electrode = site.electrodes().stream()
                .filter(candidate -> candidate.id().equals(state.id()))
                .findFirst()
                .orElseThrow();
        List<PlanPoint> open = here(electrode.connections());
        List<PlanPoint> places = electrodePlaces(electrode, open);
        open.stream()
                .filter(at -> !places.contains(at))
                .forEach(at -> mark(electrode.id(), Layer.ELECTRODES, Symbol.CONNECTION, at));
        if (places.isEmpty()) {
            return;
        }
        ElectrodeLetters letters = ElectrodeLetters.of(electrode);
        places.forEach(
                at -> items.add(new Item.Mark(electrode.id(), Layer.ELECTRODES, symbol(state), letters.name(), at)));
        String fate = switch (state.state()) {
            case BONDED -> letters.words();
            case NOT_NEEDED -> "need not be connected";
            case NOT_AN_ELECTRODE -> "no electrode";
            case UNREACHED -> shown.unreached();
        };
        note(electrode.id(), Layer.ELECTRODES, Note.Kind.ELECTRODE, places, electrode.id(), fate);
    }

    /** Where the pipe enters, else where conductors land, else wherever one might. */
    private List<PlanPoint> electrodePlaces(Electrode electrode, List<PlanPoint> open) {
        for (WaterPiping piping : site.listPaths(WaterPiping.class)) {
            if (piping.electrode().filter(electrode.id()::equals).isPresent()) {
                return piping.line().level().equals(level.id())
                        ? List.of(piping.line().vertices().get(0).at())
                        : List.of();
            }
        }
        List<Position> landed = ends().filter(end -> end.end() instanceof End.AtElectrode at
                        && at.electrode().equals(electrode.id()))
                .map(Landed::at)
                .toList();
        return landed.isEmpty()
                ? open
                : distinct(landed.stream().filter(this::isHere).map(Position::at));
    }

    private static Symbol symbol(ElectrodeState state) {
        return switch (state.state()) {
            case BONDED -> Symbol.ELECTRODE;
            case NOT_NEEDED -> Symbol.ELECTRODE_LEFT_OUT;
            case NOT_AN_ELECTRODE -> Symbol.NO_ELECTRODE;
            case UNREACHED -> Symbol.ELECTRODE_UNREACHED;
        };
    }

    private void addService(Service service) {
        List<PlanPoint> open = here(service.connections());
        List<Position> landed = ends().filter(end ->
                        end.end() instanceof End.AtService at && at.service().equals(service.id()))
                .map(Landed::at)
                .toList();
        List<PlanPoint> places = landed.isEmpty()
                ? open
                : distinct(landed.stream().filter(this::isHere).map(Position::at));
        open.stream()
                .filter(at -> !places.contains(at))
                .forEach(at -> mark(service.id(), Layer.SERVICES, Symbol.CONNECTION, at));
        if (places.isEmpty()) {
            return;
        }
        places.forEach(at -> mark(service.id(), Layer.SERVICES, Symbol.SERVICE, at));
        note(
                service.id(),
                Layer.SERVICES,
                Note.Kind.SERVICE,
                places,
                service.id(),
                service.ungrounded().sets() + " x "
                        + service.ungrounded().size().label() + " "
                        + service.ungrounded().material().label());
    }

    /** An end of a conductor and where it is. */
    private record Landed(End end, Position at) {}

    private Stream<Landed> ends() {
        return shown.conductors().stream()
                .filter(conductor -> !conductor.line().isEmpty())
                .flatMap(conductor -> Stream.of(
                        new Landed(conductor.from(), conductor.line().get(0)),
                        new Landed(
                                conductor.to(),
                                conductor.line().get(conductor.line().size() - 1))));
    }

    private List<PlanPoint> here(List<Connection> connections) {
        return distinct(connections.stream()
                .map(Connection::position)
                .filter(this::isHere)
                .map(Position::at));
    }

    private static List<PlanPoint> distinct(Stream<PlanPoint> places) {
        Set<PlanPoint> distinct = new LinkedHashSet<>();
        places.forEach(distinct::add);
        return List.copyOf(distinct);
    }

    private boolean isHere(Position position) {
        return position.level().equals(level.id());
    }

    private void mark(String id, Layer layer, Symbol symbol, PlanPoint at) {
        items.add(new Item.Mark(id, layer, symbol, "", at));
    }

    private void note(String id, Layer layer, Note.Kind kind, List<PlanPoint> anchors, String... lines) {
        notes.add(new Note(id, layer, kind, List.of(lines), anchors));
    }
}
