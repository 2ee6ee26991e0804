package org.bondspan.io.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bondspan.site.PlanPoint;

/**
 * Whether the members of a frame hang together in plan: beams where they share an end, touch or cross, columns (pieces
 * of no length) with the beams that they lie on.
 */
public final class FrameJoints {
    private final List<Segment> members;
    private final int[] leader;

    private FrameJoints(List<Segment> members) {
        this.members = members;
        this.leader = IntStream.range(0, members.size()).toArray();
    }

    /** The first member that is not connected with the first one. Near linear where members share ends. */
    public static OptionalInt findLoose(List<Segment> members) {
        FrameJoints joints = new FrameJoints(members);
        joints.joinSharedEnds();
        if (joints.findLoose().isPresent()) {
            joints.joinWhatMeets();
        }
        return joints.findLoose();
    }

    private OptionalInt findLoose() {
        return IntStream.range(0, members.size())
                .filter(i -> leaderOf(i) != leaderOf(0))
                .findFirst();
    }

    private void joinSharedEnds() {
        Map<PlanPoint, Integer> at = new HashMap<>();
        for (int i = 0; i < members.size(); i++) {
            joinAt(members.get(i).from(), i, at);
            joinAt(members.get(i).to(), i, at);
        }
    }

    private void joinAt(PlanPoint place, int member, Map<PlanPoint, Integer> at) {
        Integer earlier = at.putIfAbsent(place, member);
        if (earlier != null) {
            join(member, earlier);
        }
    }

    /** Sweeps from west to east and tests each member against those that reach as far. */
    private void joinWhatMeets() {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, members.size()).boxed().toList());
        order.sort(Comparator.comparing(i -> members.get(i).first(), Segment.SWEEP));
        List<Integer> open = new ArrayList<>();
        for (int i : order) {
            Segment member = members.get(i);
            open.removeIf(j -> members.get(j).last().x() < member.first().x());
            for (int j : open) {
                if (leaderOf(i) != leaderOf(j) && member.meets(members.get(j))) {
                    join(i, j);
                }
            }
            open.add(i);
        }
    }

    private void join(int a, int b) {
        leader[leaderOf(a)] = leaderOf(b);
    }

    private int leaderOf(int member) {
        int i = member;
        while (leader[i] != i) {
            leader[i] = leader[leader[i]];
            i = leader[i];
        }
        return i;
    }
}
