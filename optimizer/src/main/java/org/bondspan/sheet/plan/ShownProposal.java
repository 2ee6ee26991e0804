package org.bondspan.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bondspan.code.EndPlaces;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.Obligation;
import org.bondspan.code.Qualification;
import org.bondspan.code.SitePlaces;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.End;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.layout.Role;
import org.bondspan.layout.State;
import org.bondspan.site.Electrode;
import org.bondspan.site.Material;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;

/**
 * A reviewed proposal as it is drawn. A conductor without a line is drawn straight from end to end, as far as its ends
 * tell where they are; one that lands on a service is called a grounding electrode conductor, any other a bonding
 * jumper, since proposals do not say.
 */
final class ShownProposal {
    private final Site site;
    private final Proposal proposal;
    private final EndPlaces ends;

    private ShownProposal(Site site, Proposal proposal) {
        this.site = site;
        this.proposal = proposal;
        this.ends = new EndPlaces(site, new SitePlaces(site), proposal);
    }

    static Shown of(Site site, Proposal proposal, ReviewOutcome outcome) {
        ShownProposal shown = new ShownProposal(site, proposal);
        GroundingElectrodeSystem system = GroundingElectrodeSystem.of(site);
        Map<String, Optional<Length>> lengths =
                outcome.conductors().stream().collect(Collectors.toMap(JudgedConductor::id, JudgedConductor::length));
        return new Shown(
                proposal.conductors().stream()
                        .map(conductor -> shown.run(conductor, lengths.getOrDefault(conductor.id(), Optional.empty())))
                        .toList(),
                proposal.joints().stream().flatMap(shown::meeting).toList(),
                site.electrodes().stream()
                        .map(electrode -> shown.state(electrode, system, outcome.ways()))
                        .toList(),
                "NO SUFFICIENT LAWFUL WAY",
                outcome.findings());
    }

    private Shown.Run run(ProposedConductor conductor, Optional<Length> length) {
        boolean atService = Stream.of(conductor.from(), conductor.to()).anyMatch(end -> end instanceof End.AtService);
        String material = conductor.material() == Material.COPPER
                ? ""
                : " " + conductor.material().label();
        return new Shown.Run(
                conductor.id(),
                atService ? Role.GROUNDING_ELECTRODE_CONDUCTOR : Role.BONDING_JUMPER,
                conductor.size(),
                conductor.from(),
                conductor.to(),
                line(conductor),
                List.of(
                        conductor.id() + "  " + conductor.size().label() + material,
                        length.map(known -> Numbers.print(known, site.lengthUnit()))
                                .orElse("length not stated")));
    }

    private List<Position> line(ProposedConductor conductor) {
        if (!conductor.line().isEmpty()) {
            return conductor.line();
        }
        List<Position> places = new ArrayList<>();
        ends.list(conductor.from()).stream().findFirst().ifPresent(places::add);
        ends.list(conductor.to()).stream().findFirst().ifPresent(places::add);
        return places;
    }

    private Stream<Shown.Meeting> meeting(ProposedJoint joint) {
        Symbol symbol = switch (joint.method()) {
            case EXOTHERMIC -> Symbol.EXOTHERMIC;
            case IRREVERSIBLE -> Symbol.IRREVERSIBLE;
            case BUSBAR -> Symbol.BUSBAR;
            case MECHANICAL -> Symbol.MECHANICAL;
        };
        return joint.place().stream().map(place -> new Shown.Meeting(joint.id().orElse(""), place, symbol));
    }

    /**
     * What becomes of it, as the review judged; of several of which one is enough, those that copper lands on count.
     */
    private ElectrodeState state(Electrode electrode, GroundingElectrodeSystem system, List<JudgedWay> ways) {
        State state = system.obligations().stream()
                .filter(obligation -> obligation.members().contains(electrode.id()))
                .findFirst()
                .map(obligation -> state(electrode, obligation, ways))
                .orElse(Qualification.of(electrode).qualifies() ? State.NOT_NEEDED : State.NOT_AN_ELECTRODE);
        return new ElectrodeState(electrode.id(), electrode.type(), state, Optional.empty(), List.of(), "", List.of());
    }

    private State state(Electrode electrode, Obligation obligation, List<JudgedWay> ways) {
        boolean lawful = ways.stream()
                .filter(way -> way.thing().equals(obligation.name()))
                .allMatch(JudgedWay::lawful);
        if (!lawful) {
            return State.UNREACHED;
        }
        return obligation.members().size() == 1 || isLandedOn(electrode) ? State.BONDED : State.NOT_NEEDED;
    }

    private boolean isLandedOn(Electrode electrode) {
        return proposal.conductors().stream()
                .flatMap(conductor -> Stream.of(conductor.from(), conductor.to()))
                .anyMatch(end ->
                        end instanceof End.AtElectrode at && at.electrode().equals(electrode.id()));
    }
}
