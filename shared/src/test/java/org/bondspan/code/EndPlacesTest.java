package org.bondspan.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bondspan.io.ProposalReader;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.junit.jupiter.api.Test;

/** Contract 3 and 4: what each kind of end says of its place; worked by hand on a plan in feet. */
class EndPlacesTest {
    private static final Site SITE = SiteReader.parse("""
            {"format": "bondspan-site/1",
             "levels": [{"id": "L1", "outline": [[0, 0], [90, 0], [90, 50], [0, 50]]},
                        {"id": "L2", "floor": 12, "outline": [[0, 0], [90, 0], [90, 50], [0, 50]]}],
             "services": [{"id": "S", "ungrounded": {"material": "copper", "size": "500 kcmil", "sets": 1},
               "connections": [{"id": "a", "level": "L1", "at": [0, 0]}, {"id": "b", "level": "L1", "at": [0, 9]}]}],
             "electrodes": [
               {"id": "W", "type": "water-pipe", "earthContact": 20,
                 "connections": [{"level": "L1", "at": [80, 0], "fromEntrance": 3}]},
               {"id": "R", "type": "rod", "rodLength": 8, "diameter": 0.625,
                 "connections": [{"level": "L1", "at": [60, 40]}]}],
             "paths": [{"id": "P", "medium": "water-pipe", "electrode": "W", "level": "L1",
               "line": [[90, 0, 2], [70, 0, 2]]}]}""", "test.site.json");

    private static EndPlaces places(String conductors, String joints) {
        String text = "{\"format\": \"bondspan-proposal/1\", \"conductors\": [%s], \"joints\": [%s]}"
                .formatted(conductors, joints);
        Proposal proposal = ProposalReader.parse(text, "test.proposal.json", SITE);
        return new EndPlaces(SITE, new SitePlaces(SITE), proposal);
    }

    private static String conductor(String id, String from, String to, String rest) {
        return "{\"id\": \"%s\", \"size\": \"6 AWG\", \"from\": {%s}, \"to\": {%s}%s}".formatted(id, from, to, rest);
    }

    private static final String FROM_A = "\"service\": \"S\", \"connection\": \"a\"";
    private static final String TO_R = "\"electrode\": \"R\"";

    private static Position at(String level, long x, long y, long height) {
        PlanPoint point =
                new PlanPoint(Length.ofFeet(x).nanometres(), Length.ofFeet(y).nanometres());
        return new Position(level, point, Length.ofFeet(height));
    }

    private static End tap(String conductor, long feet) {
        return new End.OnConductor(conductor, Length.ofFeet(feet));
    }

    @Test
    void anEndAtOneOfSeveralConnectionsIsNotTold() {
        EndPlaces places = places("", "");
        End anywhere = new End.AtService("S", Optional.empty());
        assertThat(places.find(anywhere)).isEmpty();
        assertThat(places.list(anywhere)).containsExactly(at("L1", 0, 0, 0), at("L1", 0, 9, 0));
        assertThat(places.find(new End.AtService("S", Optional.of("b")))).contains(at("L1", 0, 9, 0));
    }

    /** Its own connections are then not used, contract 2.3. */
    @Test
    void aWaterPipeElectrodeWithAPathIsReachedAtTheEntrance() {
        assertThat(places("", "").find(new End.AtElectrode("W", Optional.empty())))
                .contains(at("L1", 90, 0, 2));
    }

    @Test
    void aJointWithoutAPlaceLiesWhereALineIsDrawnToIt() {
        String drawn = conductor("C1", FROM_A, "\"joint\": \"J\"", """
                , "line": [{"level": "L1", "at": [0, 0]}, {"level": "L1", "at": [30, 0]}]""");
        String other = conductor("C2", "\"joint\": \"J\"", TO_R, "");
        assertThat(places(drawn + "," + other, "").find(new End.AtJoint("J"))).contains(at("L1", 30, 0, 0));
        assertThat(places(other + "," + drawn, """
                {"id": "J", "place": {"level": "L1", "at": [20, 0]}, "conductors": ["C1", "C2"],
                 "method": "exothermic"}""").find(new End.AtJoint("J"))).contains(at("L1", 20, 0, 0));
    }

    /** 10 ft along L1, 12 ft up to L2, 5 ft along it: at 14 ft it is 4 ft up, at 25 ft it is 3 ft along L2. */
    @Test
    void aTapOnADrawnRiserIsFoundBetweenTheFloors() {
        EndPlaces places = places(conductor("C1", FROM_A, TO_R, """
                        , "line": [{"level": "L1", "at": [0, 0]}, {"level": "L1", "at": [10, 0]},
                                   {"level": "L2", "at": [10, 0]}, {"level": "L2", "at": [15, 0]}]"""), "");
        assertThat(places.find(tap("C1", 14))).contains(at("L1", 10, 0, 4));
        assertThat(places.find(tap("C1", 25))).contains(at("L2", 13, 0, 0));
        assertThat(places.find(tap("C1", 99))).contains(at("L2", 15, 0, 0));
    }

    /** From (0, 0) to (60, 40) it is 72.11 ft. */
    @Test
    void aTapOnWhatIsNotDrawnIsSupposedOnTheStraightRun() {
        EndPlaces places = places(conductor("C1", FROM_A, TO_R, ""), "");
        assertThat(places.find(tap("C1", 0))).isEmpty();
        assertThat(places.findIfStraight(tap("C1", 0))).contains(at("L1", 0, 0, 0));
        assertThat(places.findIfStraight(tap("C1", 72))).isPresent();
        assertThat(places.findIfStraight(tap("C1", 73))).isEmpty();
    }

    @Test
    void whatStatesALengthMayRunAnywhereAndSoMayWhatTapsIt() {
        String stated = conductor("C1", FROM_A, TO_R, ", \"length\": 100");
        String on = conductor("C2", "\"conductor\": \"C1\", \"at\": 10", TO_R, "");
        EndPlaces places = places(on + "," + stated, "");
        assertThat(List.of(tap("C1", 10), tap("C2", 10)))
                .allSatisfy(tap -> assertThat(places.findIfStraight(tap)).isEmpty())
                .allSatisfy(tap -> assertThat(places.list(tap)).hasSize(1));
    }

    /** Each taps the one before it at both ends: by plain recursion 2 to the power of 5,000 steps, 5,000 deep. */
    @Test
    void longChainsOfTapsAreFollowed() {
        String chain = IntStream.range(1, 5_000)
                .mapToObj(i -> {
                    String tap = "\"conductor\": \"C%d\", \"at\": ".formatted(i - 1);
                    return conductor("C" + i, tap + 0, tap + 1, "");
                })
                .collect(Collectors.joining(","));
        EndPlaces places = places(chain + "," + conductor("C0", FROM_A, TO_R, ""), "");
        assertThat(places.findIfStraight(tap("C4999", 0))).contains(at("L1", 0, 0, 0));
    }
}
