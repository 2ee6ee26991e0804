package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The contract of problems and answers, on cases small enough to be worked out by hand. */
class RoutingProblemTest {

    private static Tree least(RoutingProblem problem) {
        return ((Outcome.Least) Solver.solve(problem)).tree();
    }

    @Test
    void nothingToConnectIsAnEmptyTree() {
        assertThat(least(RoutingProblem.builder(1).build(CutNeed.ofPairs(new int[0][0])))
                        .edgeCount())
                .isZero();
    }

    @Test
    void oneTerminalAloneLandsNowhere() {
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        builder.attach(builder.addTerminal(), builder.addPlace(), 5, builder.addTariff(1));
        Tree tree = least(builder.build(CutNeed.ofPairs(new int[1][1])));
        assertThat(tree.attachment(0)).isEqualTo(-1);
        assertThat(tree.weight()).isZero();
    }

    @Test
    void piecesApartAreImpossible() {
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        int tariff = builder.addTariff(1);
        int first = builder.addPlaces(2);
        builder.attach(builder.addTerminal(), first, 0, tariff);
        builder.attach(builder.addTerminal(), first + 1, 0, tariff);
        assertThat(Solver.solve(builder.build(CutNeed.ofPairs(new int[2][2])))).isInstanceOf(Outcome.Impossible.class);
    }

    @Test
    void anEdgeTooSmallForTheNeedIsImpossible() {
        RoutingProblem.Builder builder = RoutingProblem.builder(2);
        int small = builder.addTariff(1, RoutingProblem.FORBIDDEN);
        int any = builder.addTariff(1, 2);
        int first = builder.addPlaces(2);
        builder.addEdge(first, first + 1, 1, small);
        builder.attach(builder.addTerminal(), first, 0, any);
        builder.attach(builder.addTerminal(), first + 1, 0, any);
        assertThat(Solver.solve(builder.build(CutNeed.ofPairs(new int[][] {{0, 1}, {1, 0}}))))
                .isInstanceOf(Outcome.Impossible.class);
        assertThat(Solver.solve(builder.build(CutNeed.ofPairs(new int[2][2])))).isInstanceOf(Outcome.Least.class);
    }

    @Test
    void buysTheLargerSizeWhereItIsCheaper() {
        RoutingProblem.Builder builder = RoutingProblem.builder(3);
        int odd = builder.addTariff(7, 5, 9);
        int first = builder.addPlaces(2);
        int edge = builder.addEdge(first, first + 1, 10, odd);
        builder.attach(builder.addTerminal(), first, 1, odd);
        builder.attach(builder.addTerminal(), first + 1, 0, odd);
        Tree tree = least(builder.build(CutNeed.ofPairs(new int[2][2])));
        assertThat(tree.edges()).containsExactly(edge);
        assertThat(tree.edgeRank(0)).isEqualTo(1);
        assertThat(tree.attachmentRank(0)).isEqualTo(1);
        assertThat(tree.weight()).isEqualTo(55);
        assertThat(tree.length()).isEqualTo(11);
    }

    @Test
    void aTerminalIsNeverPassedThrough() {
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        int copper = builder.addTariff(1);
        int first = builder.addPlaces(3);
        builder.addEdge(first, first + 1, 100, copper);
        builder.addEdge(first + 1, first + 2, 100, copper);
        builder.attach(builder.addTerminal(), first, 0, copper);
        builder.attach(builder.addTerminal(), first + 2, 0, copper);
        int stub = builder.addTerminal();
        builder.attach(stub, first, 0, copper);
        builder.attach(stub, first + 2, 0, copper);
        assertThat(least(builder.build(CutNeed.ofPairs(new int[3][3]))).weight())
                .isEqualTo(200);
    }

    @Test
    void countsTapsAtPlacesAndNoneOnMetal() {
        assertThat(star(false).taps()).isEqualTo(2);
        assertThat(star(true).taps()).isZero();
    }

    private static Tree star(boolean onMetal) {
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        int copper = builder.addTariff(1);
        int middle = onMetal ? builder.addMetal() : builder.addPlace();
        for (int arm = 0; arm < 4; arm++) {
            int end = builder.addPlace();
            builder.addEdge(middle, end, 3, copper);
            builder.attach(builder.addTerminal(), end, 1, copper);
        }
        return least(builder.build(CutNeed.ofPairs(new int[4][4])));
    }

    /** Of two equally heavy and long trees the one that meets on metal has a tap less. */
    @Test
    void prefersFewerTapsAmongEquals() {
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        int copper = builder.addTariff(1);
        int[] middles = {builder.addPlace(), builder.addMetal()};
        for (int arm = 0; arm < 3; arm++) {
            int end = builder.addPlace();
            builder.addEdge(middles[0], end, 3, copper);
            builder.addEdge(middles[1], end, 3, copper);
            builder.attach(builder.addTerminal(), end, 0, copper);
        }
        Tree tree = least(builder.build(CutNeed.ofPairs(new int[3][3])));
        assertThat(tree.taps()).isZero();
        assertThat(tree.weight()).isEqualTo(9);
    }

    @Test
    void aFreeFrameIsGoneAboutForNothingAndItsEdgesAreTold() {
        RoutingProblem.Builder builder = RoutingProblem.builder(2);
        int steel = builder.addTariff(0, 0);
        int copper = builder.addTariff(2, 3);
        int[] columns = IntStream.range(0, 4).map(i -> builder.addMetal()).toArray();
        for (int i = 0; i < 3; i++) {
            builder.addEdge(columns[i], columns[i + 1], 1000, steel);
        }
        builder.attach(builder.addTerminal(), columns[0], 1, copper);
        builder.attach(builder.addTerminal(), columns[2], 1, copper);
        Tree tree = least(builder.build(CutNeed.ofPairs(new int[][] {{0, 1}, {1, 0}})));
        assertThat(tree.edges()).containsExactly(0, 1);
        assertThat(tree.weight()).isEqualTo(6);
        assertThat(tree.length()).isEqualTo(2);
    }

    @Test
    void sumsThatCouldOverflowAreRefused() {
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        int heavy = builder.addTariff(1L << 40);
        int first = builder.addPlaces(2);
        builder.addEdge(first, first + 1, 1L << 40, heavy);
        assertThatThrownBy(() -> builder.build(CutNeed.ofPairs(new int[0][0])))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("too large");
    }

    @Test
    void thirtyTerminalsAtTwoPlacesAreTwo() {
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        int copper = builder.addTariff(1);
        int first = builder.addPlaces(2);
        builder.addEdge(first, first + 1, 7, copper);
        for (int t = 0; t < 30; t++) {
            builder.attach(builder.addTerminal(), first + t % 2, 1, copper);
        }
        Tree tree = least(builder.build(CutNeed.ofPairs(new int[30][30])));
        assertThat(tree.weight()).isEqualTo(37);
        assertThat(tree.taps()).isEqualTo(28);
    }

    @Test
    void wrongNeedsAreRefused() {
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        builder.addTerminal();
        builder.addTerminal();
        assertThatThrownBy(() -> builder.build(CutNeed.ofPairs(new int[3][3])))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> builder.build(CutNeed.of(side -> 1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CutNeed.ofPairs(new int[][] {{0, 1}, {0, 0}}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
