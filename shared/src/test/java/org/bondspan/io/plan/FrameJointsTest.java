package org.bondspan.io.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.site.PlanPoint;
import org.junit.jupiter.api.Test;

/** The published rule: beams connect where they share an end, touch or cross; a column with a beam that it lies on. */
class FrameJointsTest {
    @Test
    void beamsConnectWhereTheyShareAnEndTouchOrCross() {
        assertThat(FrameJoints.findLoose(List.of(beam(0, 0, 9, 0), beam(9, 0, 9, 9))))
                .isEmpty();
        assertThat(FrameJoints.findLoose(List.of(beam(0, 0, 9, 0), beam(5, 0, 5, 9))))
                .isEmpty();
        assertThat(FrameJoints.findLoose(List.of(beam(0, 0, 9, 0), beam(5, -5, 5, 9))))
                .isEmpty();
        assertThat(FrameJoints.findLoose(List.of(beam(0, 0, 9, 0), beam(4, 0, 20, 0))))
                .isEmpty();
    }

    @Test
    void columnConnectsWithBeamThatItLiesOn() {
        assertThat(FrameJoints.findLoose(List.of(column(3, 3), beam(0, 0, 9, 9))))
                .isEmpty();
        assertThat(FrameJoints.findLoose(List.of(column(3, 4), beam(0, 0, 9, 9))))
                .hasValue(1);
    }

    @Test
    void columnsAloneDoNotConnect() {
        assertThat(FrameJoints.findLoose(List.of(column(0, 0)))).isEmpty();
        assertThat(FrameJoints.findLoose(List.of(column(0, 0), column(0, 0)))).isEmpty();
        assertThat(FrameJoints.findLoose(List.of(column(0, 0), column(9, 0)))).hasValue(1);
    }

    @Test
    void connectionPassesFromMemberToMember() {
        Segment first = beam(0, 0, 2, 0);
        Segment bridge = beam(1, -1, 8, 6);
        Segment second = beam(7, -5, 7, 5);
        assertThat(FrameJoints.findLoose(List.of(first, second, bridge))).isEmpty();
        assertThat(FrameJoints.findLoose(List.of(first, bridge, second, beam(20, 0, 30, 0))))
                .hasValue(3);
    }

    private static Segment beam(long x1, long y1, long x2, long y2) {
        return new Segment(new PlanPoint(x1, y1), new PlanPoint(x2, y2));
    }

    private static Segment column(long x, long y) {
        return beam(x, y, x, y);
    }
}
