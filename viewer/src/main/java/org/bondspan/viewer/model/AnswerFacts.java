package org.bondspan.viewer.model;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.End;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Protection;
import org.bondspan.layout.ServiceState;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;
import org.bondspan.viewer.state.Plan;

/** The facts about conductors, joints, electrodes and services of an answer. */
final class AnswerFacts {
    private final Site site;
    private final Plan plan;
    private final Wording wording;

    AnswerFacts(Plan plan) {
        this.site = plan.site();
        this.plan = plan;
        this.wording = Wording.of(site);
    }

    /** About a conductor or a joint of the answer. */
    Optional<FactSheet> findCopper(String id) {
        return FactSheets.first(plan.conductors(), Conductor::id, id)
                .map(this::conductor)
                .or(() -> FactSheets.first(plan.layout().map(Layout::joints).orElse(List.of()), Joint::id, id)
                        .map(this::joint));
    }

    /** About an electrode or a service. */
    Optional<FactSheet> findThing(String id) {
        return FactSheets.first(plan.states().electrodes(), ElectrodeState::id, id)
                .map(this::electrode)
                .or(() -> FactSheets.first(plan.states().services(), ServiceState::id, id)
                        .map(this::service));
    }

    private FactSheet conductor(Conductor conductor) {
        Length total = conductor.length().total();
        return new FactSheet.Writer(conductor.id() + "  " + conductor.size().label(), Wording.of(conductor.role()))
                .fact("length", wording.of(total))
                .fact("of it", parts(conductor))
                .fact("weight", wording.of(Weight.of(conductor.size(), total)))
                .fact("from", wording.of(conductor.from()))
                .fact("to", wording.of(conductor.to()))
                .fact("serves", Wording.listed(conductor.serves()))
                .fact("size", conductor.why())
                .fact("sections", String.join(", ", conductor.basis()))
                .fact("protection", conductor.protection() == Protection.RACEWAY ? "in raceway, 250.64(B)" : "")
                .fact("passes", String.join(", ", conductor.crosses()))
                .fact("run", wording.of(conductor.line()))
                .sheet();
    }

    /** Every part that is not nothing. */
    private String parts(Conductor conductor) {
        StringBuilder words = new StringBuilder();
        addPart(words, "plan", conductor.length().plan());
        addPart(words, "vertical", conductor.length().vertical());
        addPart(words, "make-up", conductor.length().makeUp());
        addPart(words, "jumper around a break", conductor.length().jumper());
        return words.toString();
    }

    private void addPart(StringBuilder words, String name, Length length) {
        if (!length.isZero()) {
            words.append(words.isEmpty() ? "" : ", ")
                    .append(wording.of(length))
                    .append(' ')
                    .append(name);
        }
    }

    private FactSheet joint(Joint joint) {
        return new FactSheet.Writer(joint.id(), "joint, " + method(joint.method()))
                .fact("place", wording.of(joint.place()))
                .fact("joins", String.join(", ", joint.conductors()))
                .fact("sections", String.join(", ", joint.basis()))
                .sheet();
    }

    private static String method(String method) {
        return switch (method) {
            case "exothermic" -> "exothermic weld";
            case "irreversible" -> "irreversible compression";
            default -> method;
        };
    }

    private FactSheet electrode(ElectrodeState electrode) {
        List<Connection> connections = FactSheets.first(site.electrodes(), Electrode::id, electrode.id())
                .map(Electrode::connections)
                .orElse(List.of());
        return new FactSheet.Writer(electrode.id(), "electrode, " + Wording.spaced(electrode.type()))
                .fact("state", Wording.of(electrode.state(), plan))
                .fact("why", electrode.reason())
                .fact("calls for", electrode.need().map(WireSize::label).orElse(""))
                .fact("sections", String.join(", ", electrode.basis()))
                .fact("way to it", String.join(", ", electrode.way()))
                .fact("landed by", String.join(", ", landing(plan, electrode.id())))
                .fact(
                        "may land at",
                        wording.of(
                                connections.stream().map(Connection::position).toList()))
                .sheet();
    }

    private FactSheet service(ServiceState state) {
        Service service =
                FactSheets.first(site.services(), Service::id, state.id()).orElseThrow();
        return new FactSheet.Writer(state.id(), "service")
                .fact("supply", state.supply())
                .fact(
                        "one phase",
                        service.ungrounded().sets() + " x "
                                + service.ungrounded().size().label() + " "
                                + service.ungrounded().material().label())
                .fact("area", Numbers.printArea(state.area()))
                .fact("calls for", state.need().label() + " copper, Table 250.66")
                .fact("landed by", String.join(", ", landing(plan, state.id())))
                .fact(
                        "may land at",
                        wording.of(service.connections().stream()
                                .map(Connection::position)
                                .toList()))
                .sheet();
    }

    /** The conductors that land on that. */
    static List<String> landing(Plan plan, String id) {
        return plan.conductors().stream()
                .filter(conductor -> landsOn(conductor.from(), id) || landsOn(conductor.to(), id))
                .map(Conductor::id)
                .toList();
    }

    private static boolean landsOn(End end, String id) {
        return (end instanceof End.AtService at && at.service().equals(id))
                || (end instanceof End.AtElectrode electrode
                        && electrode.electrode().equals(id))
                || (end instanceof End.OnPath path && path.path().equals(id));
    }
}
