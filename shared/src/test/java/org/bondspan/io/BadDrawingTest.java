package org.bondspan.io;

import org.junit.jupiter.api.Test;

/**
 * Mistakes in what is drawn, and between things that must fit together. The rules are those of the published format.
 */
class BadDrawingTest {
    private static final String OUTLINE = "[[0, 0], [100, 0], [100, 60], [0, 60], [0, 0]]";
    private static final String LINE = "[[5, 5], [5, 30], [20, 30, 12]]";

    @Test
    void outlineThatCrossesItself() {
        Edit.of(OUTLINE, "[[0, 0], [100, 60],\n [100, 0], [0, 60]]")
                .saysOnLine(
                        18,
                        "levels[0].outline[2]: the outline crosses or touches itself: the edge from vertex 0 meets the edge"
                                + " from vertex 2. Draw the outline once around, without crossing; vertices count from 0.");
        Edit.of("[[40, 20], [60, 20], [60, 40], [40, 40]]", "[[40, 20], [60, 20], [50, 20]]")
                .says(
                        "levels[0].closedAreas[0].outline[2]: the outline crosses or touches itself: the edge from vertex 0"
                                + " meets the edge from vertex 2. Draw the outline once around, without crossing; vertices count"
                                + " from 0.");
    }

    @Test
    void outlineOfTooFewVertices() {
        String few =
                "levels[0].outline: has fewer than three different vertices. An outline encloses an area: draw it.";
        Edit.of(OUTLINE, "[[0, 0], [100, 0]]").says(few);
        Edit.of(OUTLINE, "[[0, 0], [100, 0], [0, 0]]").says(few);
        Edit.of(OUTLINE, "[[0, 0], [0.01, 0.02], [0.05, 0]]").says(few);
        Edit.of(OUTLINE, "[]").says(few);
    }

    @Test
    void placesThatAreNoPlaces() {
        String pair = ": must be two numbers [x, y]. Write x to the east and y to the north, in ft.";
        Edit.of(OUTLINE, "[[0, 0], [100], [100, 60, 2], [0, \"a\"], 5]")
                .saysAll(
                        "full.site.json:17: levels[0].outline[1]" + pair,
                        "full.site.json:17: levels[0].outline[2]" + pair,
                        "full.site.json:17: levels[0].outline[3][1]: must be a number, not a text."
                                + " Write digits without quotes and without unit, such as 12.5.",
                        "full.site.json:17: levels[0].outline[4]" + pair);
        Edit.of("\"at\": [10, 10]", "\"at\": {\"x\": 10}").says("risers[0].at" + pair);
        Edit.of("\"at\": [10, 10], ", "").says("risers[0].at: is missing. Write [x, y] in ft.");
    }

    @Test
    void lineOfTooFewVertices() {
        Edit.of(LINE, "[[5, 5]]")
                .says("paths[0].line: has fewer than two vertices. Draw it from vertex to vertex: [[x, y], [x, y]].");
        String same = "paths[0].line[1]: is the same place as the vertex before it. Remove one of the two.";
        Edit.of(LINE, "[[5, 5], [5, 5]]").says(same);
        Edit.of(LINE, "[[5, 5], [5.01, 5, 9]]").says(same);
        Edit.of(LINE, "[[5, 5], [5, 5, 12]]").isAccepted();
    }

    /** The pipe runs 30 ft in plan and 6 ft up. */
    @Test
    void breakBeyondTheEndOfThePipe() {
        Edit.of("\"distance\": 3", "\"distance\": 36").isAccepted();
        Edit.of("\"distance\": 3", "\"distance\": 36.001")
                .says("paths[3].breaks[0].distance: lies beyond the end of the pipe."
                        + " Measure from the point of entrance along the line.");
    }

    @Test
    void frameMembersThatDoNotConnect() {
        Edit.of("[[70, 0], [90, 0]]", "[[70, 0], [75, 0]]")
                .saysOnLine(
                        61,
                        "paths[2].columns[1]: is not connected with the first member of the frame."
                                + " Draw the beam that joins them, or make it a frame of its own.");
        Edit.of("[[[70, 0], [90, 0]]]", "[[[70, 0], [90, 0]], [[70, 1], [90, 1]]]")
                .says("paths[2].beams[1]: is not connected with the first member of the frame."
                        + " Draw the beam that joins them, or make it a frame of its own.");
    }

    @Test
    void frameDrawnTwoWaysOrNotAtAll() {
        Edit.of("\"columns\": [[70, 0], [80, 0]]", "\"grid\": {\"x\": [1], \"y\": [1]}, \"columns\": [[80, 0]]")
                .says("paths[2].grid: is given beside columns or beams."
                        + " Draw a frame one way: as a grid, or by its members.");
        Edit.of("\"grid\": {\"x\": [0, 25, 50], \"y\": [0, 30], \"evidence\": \"S-101\"},", "")
                .says("paths[1].grid: is missing. Draw the frame as a grid, or by its columns and beams.");
        Edit.of("\"columns\": [[70, 0], [80, 0]],\n     \"beams\": [[[70, 0], [90, 0]]], ", "\"columns\": [], ")
                .says("paths[2].columns: the frame has no member. Draw its columns and beams.");
        Edit.of("[0, 25, 50]", "[]").says("paths[1].grid.x: is empty. List where the grid lines lie, in ft.");
        Edit.of("[[70, 0], [90, 0]]", "[[70, 0], [70.02, 0]]")
                .says("paths[2].beams[0]: begins and ends at the same place. Give both ends of the beam.");
    }

    @Test
    void frameHeightsOutOfOrder() {
        Edit.of("\"top\": 14", "\"top\": -3")
                .says("paths[1].top: lies below the bottom. Give both as heights above the floor in ft.");
        Edit.of("\"beamHeight\": 13", "\"beamHeight\": 14.01")
                .says("paths[1].beamHeight: lies outside bottom to top. Beams join the columns between their ends.");
    }

    @Test
    void serviceWithoutConnection() {
        Edit.of("[{\"id\": \"A\", \"level\": \"L1\", \"at\": [5, 5], \"height\": 4, \"evidence\": \"E-002\"}]", "[]")
                .says("services[0].connections: is empty."
                        + " Give at least one accessible point on the grounded service conductor, 250.24(A).");
    }

    @Test
    void severalServicesNameTheirSupplies() {
        Edit.of("\"supply\": \"lateral 2\",", "")
                .says("services[1].supply: is missing."
                        + " With several services each names the service drop or lateral that feeds it.");
        Edit.of("\"supply\": \"lateral 2\"", "\"supply\": \"lateral 1\"")
                .saysOnLine(
                        28,
                        "services[1].ungrounded: is of aluminum, but service \"S1\" on the same supply is of copper."
                                + " Services of one supply have one material; name another supply where there is one.");
    }

    @Test
    void electrodeOnWhichNothingCanLand() {
        Edit.of("\"connections\": [{\"level\": \"L1\", \"at\": [100, 60]}]", "\"connections\": []")
                .says("electrodes[6].connections: is empty. Give at least one place where a conductor can land on it.");
        Edit.of(", \"frame\": \"F1\"}", "}")
                .says(
                        "electrodes[2].connections: is missing. Give at least one place where a conductor can land on it.");
        Edit.of(", \"connections\": [{\"level\": \"L1\", \"at\": [100, 20]}]", "")
                .says(
                        "electrodes[10].connections: is missing. Give at least one place where a conductor can land on it.");
    }

    @Test
    void waterPipeWithoutPathSaysHowFarItsConnectionsLieInside() {
        Edit electrode = Edit.of(", \"use\": \"fire\"", "");
        new Edit(electrode.text().replace(", \"fromEntrance\": 2", ""), electrode.line() + 1)
                .says(
                        "electrodes[1].connections[0].fromEntrance: is missing, as no metal path continues \"E2\". Give the"
                                + " distance along the pipe from the point of entrance; 250.68(C)(1) lets the first 5 ft be used.");
    }

    @Test
    void firePipeWithoutTheDecisionOfTheProject() {
        Edit.of("\"fireLine\": \"bond-only\",", "")
                .saysOnLine(
                        33,
                        "electrodes[1].use: is \"fire\", but the site has no fireLine. Write \"fireLine\": \"electrode\" or"
                                + " \"bond-only\" into the site, as the project decides: NFPA 70 and NFPA 13 and 24 differ.");
    }

    @Test
    void twoPathsOfOneElectrode() {
        Edit.of(
                        "{\"id\": \"B1\", \"medium\": \"footing-rebar\"",
                        "{\"id\": \"B1\", \"medium\": \"water-pipe\", \"electrode\": \"E1\"")
                .says("paths[6].electrode: the path \"W1\" names the electrode \"E1\" too."
                        + " Draw one path for each electrode.");
        Edit.of(
                        "{\"id\": \"B1\", \"medium\": \"footing-rebar\"",
                        "{\"id\": \"B1\", \"medium\": \"ring\", \"electrode\": \"E6\"")
                .says("paths[6].electrode: the path \"G1\" names the electrode \"E6\" too."
                        + " Draw one path for each electrode.");
    }
}
