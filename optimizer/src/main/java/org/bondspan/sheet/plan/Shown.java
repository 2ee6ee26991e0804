package org.bondspan.sheet.plan;

import java.util.List;
import org.bondspan.finding.Finding;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.End;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Role;
import org.bondspan.layout.SiteCheck;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/**
 * What is drawn over a building: an answer, or a proposal that was reviewed.
 *
 * @param unreached what stands beside an electrode that is unreached
 */
record Shown(
        List<Run> conductors,
        List<Meeting> joints,
        List<ElectrodeState> electrodes,
        String unreached,
        List<Finding> findings) {
    private static final String UNREACHED = "CANNOT BE REACHED";

    Shown {
        conductors = List.copyOf(conductors);
        joints = List.copyOf(joints);
        electrodes = List.copyOf(electrodes);
        findings = List.copyOf(findings);
    }

    /**
     * A conductor.
     *
     * @param line its positions from end to end; may be empty where nothing tells them
     * @param words what stands beside it
     */
    record Run(String id, Role role, WireSize size, End from, End to, List<Position> line, List<String> words) {
        Run {
            line = List.copyOf(line);
            words = List.copyOf(words);
        }
    }

    /** A joint between conductors; without an id it has no words. */
    record Meeting(String id, Position place, Symbol symbol) {}

    static Shown of(SiteCheck check) {
        return new Shown(List.of(), List.of(), check.electrodes(), UNREACHED, check.findings());
    }

    static Shown of(Site site, Layout layout) {
        List<Run> conductors = layout.conductors().stream()
                .map(conductor -> new Run(
                        conductor.id(),
                        conductor.role(),
                        conductor.size(),
                        conductor.from(),
                        conductor.to(),
                        conductor.line(),
                        List.of(
                                conductor.id() + "  " + conductor.size().label(),
                                Numbers.print(conductor.length().total(), site.lengthUnit()))))
                .toList();
        List<Meeting> joints = layout.joints().stream()
                .map(joint -> new Meeting(joint.id(), joint.place(), symbol(joint.method())))
                .toList();
        return new Shown(conductors, joints, layout.electrodes(), UNREACHED, layout.findings());
    }

    private static Symbol symbol(String method) {
        return switch (method) {
            case "exothermic" -> Symbol.EXOTHERMIC;
            case "irreversible" -> Symbol.IRREVERSIBLE;
            default -> Symbol.BUSBAR;
        };
    }
}
