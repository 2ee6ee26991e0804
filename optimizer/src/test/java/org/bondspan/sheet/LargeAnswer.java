package org.bondspan.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.End;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Objective;
import org.bondspan.layout.Protection;
import org.bondspan.layout.Role;
import org.bondspan.layout.RunLength;
import org.bondspan.layout.State;
import org.bondspan.layout.Status;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;

/** A site and an answer of any size, to draw and not to believe: conductors from a service to rods on each level. */
final class LargeAnswer {
    private LargeAnswer() {}

    /** So many levels of 300 by 200 ft, so many conductors on each. */
    static SheetContent of(int levels, int conductorsPerLevel) {
        Site site = SiteReader.parse(file(levels, conductorsPerLevel), "large");
        List<Conductor> conductors = new ArrayList<>();
        List<ElectrodeState> states = new ArrayList<>();
        for (var electrode : site.electrodes()) {
            Position end = electrode.connections().get(0).position();
            conductors.add(conductor("C" + (conductors.size() + 1), electrode.id(), end));
            states.add(new ElectrodeState(
                    electrode.id(),
                    electrode.type(),
                    State.BONDED,
                    Optional.of(WireSize.AWG_6),
                    List.of("250.66(A)"),
                    "Qualifies.",
                    List.of()));
        }
        Layout layout = new Layout(
                site.name(),
                site.adoption(),
                site.codeEdition(),
                site.lengthUnit(),
                Status.LEAST,
                Optional.of(new Copper(Length.ZERO, Weight.ZERO, Length.ZERO)),
                List.of(),
                Optional.of(Weight.ZERO),
                BigDecimal.ZERO,
                conductors,
                List.of(),
                List.of(),
                List.of(),
                states,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Objective.COPPER,
                Optional.empty());
        return new SheetContent(site, layout, "0", "Bondspan of the test");
    }

    private static Conductor conductor(String id, String electrode, Position end) {
        PlanPoint corner = new PlanPoint(end.at().x(), 0);
        Position start = new Position(end.level(), new PlanPoint(0, 0), Length.ZERO);
        return new Conductor(
                id,
                WireSize.AWG_6,
                Role.BONDING_JUMPER,
                Protection.NONE,
                new End.AtPlace(start),
                new End.AtElectrode(electrode, Optional.empty()),
                List.of(start, new Position(end.level(), corner, Length.ZERO), end),
                new RunLength(Length.ofFeet(100), Length.ZERO, Length.ZERO, Length.ZERO),
                List.of(electrode),
                List.of("250.66(A)"),
                "",
                List.of(),
                List.of());
    }

    private static String file(int levels, int rods) {
        List<String> drawn = new ArrayList<>();
        List<String> electrodes = new ArrayList<>();
        for (int level = 0; level < levels; level++) {
            drawn.add("{\"id\": \"L%d\", \"floor\": %d, \"outline\": [[0,0],[300,0],[300,200],[0,200]]}"
                    .formatted(level, 12 * level));
            for (int rod = 0; rod < rods; rod++) {
                electrodes.add(
                        "{\"id\": \"rod-%d-%d\", \"type\": \"rod\", \"rodLength\": 8, \"diameter\": 0.75, \"connections\": [{\"level\": \"L%d\", \"at\": [%d, %d]}]}"
                                .formatted(level, rod, level, 7 + 290 * rod / rods, 20 + (rod * 61) % 170));
            }
        }
        return """
                {"format": "bondspan-site/1", "name": "Large", "levels": [%s],
                 "services": [{"id": "s", "ungrounded": {"material": "copper", "size": "500 kcmil", "sets": 1},
                   "connections": [{"level": "L0", "at": [0, 0]}]}],
                 "electrodes": [%s]}
                """.formatted(String.join(",", drawn), String.join(",", electrodes));
    }
}
