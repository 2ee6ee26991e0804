package org.bondspan.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.site.SitePath.InstalledConductor;

/** What the joints of a proposal join that its ends do not tell, by conductor. */
final class JointMeetings {
    private final Map<String, List<JointStop>> stops = new LinkedHashMap<>();
    private final List<Stray> strays = new ArrayList<>();

    /** A conductor that a joint lists though nothing says that it comes there. */
    record Stray(ProposedJoint joint, String conductor) {}

    JointMeetings(SiteMetal metal, Ends ends, CopperNodes copper, Proposal proposal) {
        JoinedByEnds joined = new JoinedByEnds(metal, copper, proposal);
        Map<String, ProposedConductor> proposed = new LinkedHashMap<>();
        proposal.conductors().forEach(conductor -> proposed.putIfAbsent(conductor.id(), conductor));
        for (ProposedJoint joint : proposal.joints()) {
            JointMeeting meeting = new JointMeeting(metal, ends, copper, joined, joint, proposed);
            meeting.stops()
                    .forEach((conductor, stop) -> stops.computeIfAbsent(conductor, id -> new ArrayList<>())
                            .add(stop));
            meeting.strays().forEach(conductor -> strays.add(new Stray(joint, conductor)));
        }
    }

    List<JointStop> stops(ProposedConductor conductor) {
        return stops.getOrDefault(conductor.id(), List.of());
    }

    List<JointStop> stops(InstalledConductor conductor) {
        return stops.getOrDefault(conductor.id(), List.of());
    }

    List<Stray> strays() {
        return strays;
    }
}
