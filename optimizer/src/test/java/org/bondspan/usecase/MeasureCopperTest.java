package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.MeasuredWay;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.usecase.MeasureCopper.PlaceOnPlan;
import org.junit.jupiter.api.Test;

/** Distances by hand: runs on a floor follow its axes, so that a run is as long as both legs of its rectangle. */
class MeasureCopperTest {
    private static final String SERVICE = """
            "services": [{"id": "S", $copper(500 kcmil), $at(0, 0)}],
            "electrodes": [{"id": "R", $rod, $at(0, 10)}]""";

    private static PlaceOnPlan place(String level, long x, long y) {
        return new PlaceOnPlan(
                level,
                new PlanPoint(Length.ofFeet(x).nanometres(), Length.ofFeet(y).nanometres()));
    }

    private static Optional<Length> between(Site site, PlaceOnPlan from, PlaceOnPlan to) {
        return MeasureCopper.between(site, from, to).map(MeasuredWay::length);
    }

    private static Site site(String levels, String body) {
        return SiteReader.parse(Sites.site(levels, body), "test");
    }

    @Test
    void runsAlongTheAxesOfAnOpenFloor() {
        Site site = SiteReader.parse(Sites.openFloor(100, 50, SERVICE), "test");
        MeasuredWay way = MeasureCopper.between(site, place("L1", 13, 7), place("L1", 90, 41))
                .orElseThrow();
        assertThat(way.length()).isEqualTo(Length.ofFeet(77 + 34));
        assertThat(way.line().get(0).at()).isEqualTo(place("L1", 13, 7).at());
        assertThat(way.line().get(way.line().size() - 1).at())
                .isEqualTo(place("L1", 90, 41).at());
    }

    /** From (5, 20) past a closed area of 20 to 80 by 0 to 40 to (95, 20): 90 across, and 20 up and down. */
    @Test
    void goesRoundAClosedArea() {
        Site site = site("""
                {"id": "L1", "outline": %s, "open": {"height": 0},
                 "closedAreas": [{"id": "pit", "outline": [[20, 0], [80, 0], [80, 40], [20, 40]]}]}""".formatted(Sites.rectangle(100, 50)), SERVICE);
        assertThat(between(site, place("L1", 5, 20), place("L1", 95, 20))).contains(Length.ofFeet(90 + 20 + 20));
    }

    /** To the riser at (50, 0), 12 ft up between the floors, and on. */
    @Test
    void climbsARiserBetweenLevels() {
        Site site = site(
                """
                {"id": "L1", "outline": %1$s, "open": {"height": 0}},
                {"id": "L2", "floor": 12, "outline": %1$s, "open": {"height": 0}}""".formatted(Sites.rectangle(100, 50)),
                "\"risers\": [{\"id\": \"shaft\", \"at\": [50, 0], \"levels\": [\"L1\", \"L2\"]}], "
                        + SERVICE.replace("$at(0, 0)", "\"connections\": [{\"at\": [0, 0], \"level\": \"L1\"}]")
                                .replace("$at(0, 10)", "\"connections\": [{\"at\": [0, 10], \"level\": \"L1\"}]"));
        assertThat(between(site, place("L1", 10, 0), place("L2", 60, 5))).contains(Length.ofFeet(40 + 12 + 10 + 5));
    }

    /** The line is drawn 100 ft long and measured 150: the nearest junctions are its ends. */
    @Test
    void takesAMeasuredLineAtItsMeasure() {
        Site site = SiteReader.parse(Sites.linesOnly(100, 50, SERVICE + """
                , "paths": [{"id": "tray", "medium": "copper", "line": [[0, 0], [100, 0]], "length": 150}]"""), "test");
        assertThat(between(site, place("L1", 1, 3), place("L1", 99, 3))).contains(Length.ofFeet(150));
    }

    @Test
    void findsNoRunWhereNothingIsPermitted() {
        Site site = SiteReader.parse(Sites.linesOnly(100, 50, SERVICE), "test");
        assertThat(MeasureCopper.between(site, place("L1", 1, 3), place("L1", 99, 3)))
                .isEmpty();
    }

    @Test
    void doesNotKnowLevelsThatTheSiteLacks() {
        Site site = SiteReader.parse(Sites.openFloor(100, 50, SERVICE), "test");
        assertThatThrownBy(() -> MeasureCopper.between(site, place("L9", 1, 3), place("L1", 9, 3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("L9");
    }
}
