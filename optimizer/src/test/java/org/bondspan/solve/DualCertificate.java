package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;

/**
 * Holds cuts against their definition alone: nobody has to trust how they were found. Cuts round leaves, of some width
 * each, bound what a tree pays at a grade from below when
 *
 * <ul>
 *   <li>every cut has a leaf inside that, wherever it is parted from the root, needs this grade or more;
 *   <li>the cuts that one enters by an edge, in either direction, are together no wider than what the edge costs at
 *       this grade more than at the grade below, and likewise for landing a leaf, or the root beyond its least.
 * </ul>
 *
 * This is weak duality of linear programs for the directed cut formulation (Wong, 1984, read about). The cuts of a moat
 * are nested, so those that contain one node and not another are the difference of their depths.
 */
final class DualCertificate {

    private final Core core;
    private final int grade;
    private final List<Moat> moats;

    private DualCertificate(Core core, int grade, List<Moat> moats) {
        this.core = core;
        this.grade = grade;
        this.moats = moats;
    }

    /** Checks the cuts of one grade; returns what they prove, the least landing of the root apart. */
    static long check(Core core, int grade, List<Moat> moats) {
        DualCertificate certificate = new DualCertificate(core, grade, moats);
        certificate.checkNeeds();
        certificate.checkEdges();
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            certificate.checkLandings(leaf);
        }
        return moats.stream().mapToLong(Moat::width).sum();
    }

    /** Tries every side with the root outside and a leaf of the moat inside; there are few leaves. */
    private void checkNeeds() {
        for (Moat moat : moats) {
            assertThat(moat.leaves() >>> core.root() & 1).isZero();
            assertThat(moat.leaves()).isNotZero();
        }
        for (long side = 1; side < core.everything(); side++) {
            if ((side >>> core.root() & 1) == 0 && cutsAround(side)) {
                assertThat(core.need().grade(BitSet.valueOf(new long[] {side}))).isGreaterThanOrEqualTo(grade);
            }
        }
    }

    private boolean cutsAround(long side) {
        return moats.stream().anyMatch(moat -> (moat.leaves() & side) != 0);
    }

    private void checkEdges() {
        for (int edge = 0; edge < core.edges(); edge++) {
            if (core.edgeWeight(edge, grade) >= 0) {
                long price = core.edgeWeight(edge, grade) - (grade == 0 ? 0 : core.edgeWeight(edge, grade - 1));
                assertThat(entered(core.edgeEnd(edge, 0), core.edgeEnd(edge, 1)))
                        .isLessThanOrEqualTo(price);
                assertThat(entered(core.edgeEnd(edge, 1), core.edgeEnd(edge, 0)))
                        .isLessThanOrEqualTo(price);
            }
        }
    }

    private long entered(int from, int to) {
        return moats.stream()
                .mapToLong(moat -> Math.max(0, moat.depth(to) - moat.depth(from)))
                .sum();
    }

    private void checkLandings(int number) {
        Leaf leaf = core.leaf(number);
        for (int i = 0; i < leaf.size(); i++) {
            int node = leaf.node(i);
            long entered = number == core.root()
                    ? moats.stream().mapToLong(moat -> moat.depth(node)).sum()
                    : moats.stream()
                            .filter(moat -> (moat.leaves() >>> number & 1) != 0)
                            .mapToLong(moat -> moat.width() - moat.depth(node))
                            .sum();
            long price = leaf.cost(i).weight() - (number == core.root() ? leaf.leastWeight() : 0);
            assertThat(entered).isLessThanOrEqualTo(grade == 0 ? price : 0);
        }
    }
}
