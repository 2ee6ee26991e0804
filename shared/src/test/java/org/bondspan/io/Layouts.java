package org.bondspan.io;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.BondState;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Cost;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.End;
import org.bondspan.layout.Excluded;
import org.bondspan.layout.Joint;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Link;
import org.bondspan.layout.Objective;
import org.bondspan.layout.Piece;
import org.bondspan.layout.Protection;
import org.bondspan.layout.Role;
import org.bondspan.layout.RunLength;
import org.bondspan.layout.ServiceState;
import org.bondspan.layout.SizeTotal;
import org.bondspan.layout.State;
import org.bondspan.layout.Status;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Evidence;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;

/** Results made by hand. */
final class Layouts {
    private Layouts() {}

    /** Two conductors on 33 1/3 ft (10.16 m), with one of everything that a result can hold. */
    static Layout ofEverything(LengthUnit unit) {
        Length third = Length.ofNanometres(LengthUnit.FOOT.nanometres() * 100 / 3);
        Position bus = new Position("L1", new PlanPoint(0, 0), Length.ofFeet(4));
        Position tap = new Position("L1", new PlanPoint(third.nanometres(), 0), Length.ofFeet(4));
        Weight weight = Weight.of(WireSize.AWG_4, third);
        return new Layout(
                "Hall 3",
                "County of Example",
                CodeEdition.NEC_2020,
                unit,
                Status.LEAST,
                Optional.of(new Copper(third, weight, third.increasedBy(BigDecimal.TEN))),
                List.of(new SizeTotal(WireSize.AWG_4, third, weight)),
                Optional.of(weight),
                BigDecimal.ZERO,
                List.of(
                        new Conductor(
                                "C1",
                                WireSize.AWG_4,
                                Role.GROUNDING_ELECTRODE_CONDUCTOR,
                                Protection.NONE,
                                new End.AtService("S1", Optional.of("A")),
                                new End.AtJoint("J1"),
                                List.of(bus, tap),
                                new RunLength(third, Length.ZERO, Length.ZERO, Length.ZERO),
                                List.of("E1", "F1"),
                                List.of("250.66"),
                                "the rebar electrode needs at most 4 AWG",
                                List.of(new Piece(third, Length.ofFeet(4), Length.ofFeet(4))),
                                List.of("W1", "W1")),
                        new Conductor(
                                "C2",
                                WireSize.AWG_8,
                                Role.BONDING_JUMPER,
                                Protection.RACEWAY,
                                new End.OnConductor("C1", third),
                                new End.AtElectrode("E1", Optional.empty()),
                                List.of(tap),
                                RunLength.ZERO,
                                List.of(),
                                List.of(),
                                "",
                                List.of(),
                                List.of())),
                List.of(new Link(
                        "F1",
                        "structural-frame",
                        new End.OnPath("F1", Optional.empty()),
                        new End.AtPlace(tap),
                        Optional.of(bus),
                        Optional.empty(),
                        Length.ZERO,
                        List.of("250.68(C)(2)"))),
                List.of(new Joint("J1", tap, List.of("C1", "C2"), "exothermic", List.of("250.64(C)"))),
                List.of(new ServiceState("S1", "S1", 2_000_000, WireSize.AWG_3_0)),
                List.of(
                        new ElectrodeState(
                                "E1",
                                "concrete-encased",
                                State.BONDED,
                                Optional.of(WireSize.AWG_4),
                                List.of("250.52(A)(3)"),
                                "qualifies",
                                List.of("C1", "C2")),
                        new ElectrodeState(
                                "E2",
                                "gas-pipe",
                                State.NOT_AN_ELECTRODE,
                                Optional.empty(),
                                List.of("250.52(B)"),
                                "never permitted",
                                List.of())),
                List.of(new BondState(
                        "F1",
                        State.BONDED,
                        Optional.of(WireSize.AWG_3_0),
                        List.of("250.104(C)"),
                        "bonded by C1",
                        List.of())),
                List.of(new Excluded("G1", "gas-pipe", "not permitted as an electrode", List.of("250.52(B)"))),
                List.of(new Finding("250.12", Severity.CAUTION, "F1", "Clean the steel to \"bright\" metal")),
                List.of(new Evidence("electrode E1", "assumed")),
                List.of("separately derived systems, 250.30"),
                List.of("A licensed professional reviews"),
                Objective.COST,
                Optional.of(new Cost(
                        "USD",
                        Money.ofCents(12_345),
                        Money.ofCents(7_000),
                        Money.ofCents(5_000),
                        Money.ofCents(346),
                        Money.ofCents(-1),
                        Money.ofCents(12_340),
                        weight,
                        Money.ofCents(13_000),
                        Status.BEST_FOUND)));
    }

    static Layout impossible() {
        return new Layout(
                "Hall 4",
                "",
                CodeEdition.NEC_2014,
                LengthUnit.METRE,
                Status.IMPOSSIBLE,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                BigDecimal.ZERO,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Finding("250.50", Severity.VIOLATION, "E1", "cannot be reached")),
                List.of(),
                List.of(),
                List.of(),
                Objective.COPPER,
                Optional.empty());
    }
}
