package org.bondspan.review;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.JointMethod;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.layout.Proposal.ProposedLink;
import org.bondspan.site.Material;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.WireSize;

/**
 * Proposals with little writing, one line for each part.
 *
 * <pre>
 * C1 3/0 AWG S > W@5 raceway         from service S to pipe W, 5 ft along it, in raceway
 * C2 6 AWG C1~7 > R aluminum         a tap on C1, 7 ft from its start
 * C3 6 AWG J:J1 > F.stub length 12   from joint J1 to connection "stub" of F
 * C4 2 AWG (0,0) > (10,0,3) line     from place to place, drawn straight
 * link P: A > B
 * joint J1 mechanical C1 C2
 * </pre>
 */
final class Draft {
    private static final Pattern CONDUCTOR =
            Pattern.compile("(\\w+) (\\S+ (?:AWG|kcmil)) (\\S+) > (\\S+)((?: [\\w.-]+)*)");
    private static final Pattern LINK = Pattern.compile("link (\\S+): (\\S+) > (\\S+)");
    private static final Pattern JOINT = Pattern.compile("joint (?:(J\\w+) )?(\\w+)((?: \\w+)+)");

    private final Site site;
    private final List<ProposedConductor> conductors = new ArrayList<>();
    private final List<ProposedLink> links = new ArrayList<>();
    private final List<ProposedJoint> joints = new ArrayList<>();

    private Draft(Site site) {
        this.site = site;
    }

    static Proposal of(Site site, String text) {
        Draft draft = new Draft(site);
        text.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(draft::add);
        return new Proposal(draft.conductors, draft.links, draft.joints);
    }

    private void add(String line) {
        Matcher link = LINK.matcher(line);
        Matcher joint = JOINT.matcher(line);
        Matcher conductor = CONDUCTOR.matcher(line);
        if (link.matches()) {
            links.add(new ProposedLink(link.group(1), end(link.group(2)), end(link.group(3))));
        } else if (joint.matches()) {
            joints.add(new ProposedJoint(
                    Optional.ofNullable(joint.group(1)),
                    Optional.empty(),
                    List.of(joint.group(3).strip().split(" ")),
                    JointMethod.valueOf(joint.group(2).toUpperCase(Locale.ROOT))));
        } else if (conductor.matches()) {
            conductors.add(conductor(conductor));
        } else {
            throw new IllegalArgumentException("cannot read: " + line);
        }
    }

    private ProposedConductor conductor(Matcher part) {
        List<String> words = List.of(part.group(5).strip().split(" "));
        End from = end(part.group(3));
        End to = end(part.group(4));
        List<Position> line =
                words.contains("line") ? List.of(((End.AtPlace) from).place(), ((End.AtPlace) to).place()) : List.of();
        Optional<Length> length =
                words.contains("length") ? Optional.of(feet(words.get(words.indexOf("length") + 1))) : Optional.empty();
        return new ProposedConductor(
                part.group(1),
                WireSize.find(part.group(2)).orElseThrow(),
                words.contains("aluminum") ? Material.ALUMINUM : Material.COPPER,
                from,
                to,
                line,
                length,
                enclosure(words),
                words.contains("exposed"),
                words.contains("outdoors"),
                words.contains("bonded"));
    }

    private static Enclosure enclosure(List<String> words) {
        if (words.contains("ferrous")) {
            return Enclosure.FERROUS_RACEWAY;
        }
        if (words.contains("raceway")) {
            return Enclosure.RACEWAY;
        }
        return words.contains("buried") ? Enclosure.BURIED : Enclosure.NONE;
    }

    private End end(String text) {
        if (text.startsWith("(")) {
            return new End.AtPlace(place(text));
        }
        if (text.startsWith("J:")) {
            return new End.AtJoint(text.substring(2));
        }
        String[] tap = text.split("~", -1);
        if (tap.length == 2) {
            return new End.OnConductor(tap[0], feet(tap[1]));
        }
        String[] along = text.split("@", -1);
        if (along.length == 2
                || site.paths().stream().anyMatch(path -> path.id().equals(text))) {
            return new End.OnPath(along[0], along.length == 2 ? Optional.of(feet(along[1])) : Optional.empty());
        }
        String[] parts = text.split("\\.", -1);
        Optional<String> connection = parts.length == 2 ? Optional.of(parts[1]) : Optional.empty();
        boolean service = site.services().stream().anyMatch(known -> known.id().equals(parts[0]));
        return service ? new End.AtService(parts[0], connection) : new End.AtElectrode(parts[0], connection);
    }

    private static Position place(String text) {
        String[] numbers = text.substring(1, text.length() - 1).split(",", -1);
        return new Position(
                "L1",
                new PlanPoint(feet(numbers[0]).nanometres(), feet(numbers[1]).nanometres()),
                numbers.length > 2 ? feet(numbers[2]) : Length.ZERO);
    }

    private static Length feet(String number) {
        return Length.of(new BigDecimal(number), LengthUnit.FOOT);
    }
}
