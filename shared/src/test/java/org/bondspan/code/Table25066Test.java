package org.bondspan.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.bondspan.site.Material;
import org.bondspan.site.PhaseConductors;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against published examples, published mistakes and a second public copy of the table. "Forum" is a public forum of
 * electricians and inspectors, with the number of the thread.
 */
class Table25066Test {
    /**
     * The table as quoted in forum thread 8561, upper ends of the bands: copper and aluminum service conductors, copper
     * and aluminum grounding electrode conductor; sizes from 250 on in kcmil. A textbook prints the same.
     */
    private static final List<List<String>> SECOND_COPY = List.of(
            List.of("2", "1/0", "8", "6"),
            List.of("1/0", "3/0", "6", "4"),
            List.of("3/0", "250", "4", "2"),
            List.of("350", "500", "2", "1/0"),
            List.of("600", "900", "1/0", "3/0"),
            List.of("1100", "1750", "2/0", "4/0"),
            List.of("over", "over", "3/0", "250"));

    @ParameterizedTest(name = "{0} x {1} {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "3 | 600 kcmil | copper | 3/0 AWG | EC&M, Code Q&A 62: 1200 A; the same item in forum thread 4152",
                "1 | 350 kcmil | copper | 2 AWG | EC&M, Code Quiz 106",
                "1 | 250 kcmil | copper | 2 AWG | a public building code forum, thread 26483",
                "1 | 3/0 AWG | copper | 4 AWG | Modern Residential Wiring (2011), p. 177: 200 A",
                "1 | 4/0 AWG | aluminum | 4 AWG | forum thread 106695",
                "2 | 500 kcmil | aluminum | 2/0 AWG | forum thread 5782: 600 A",
                "2 | 1 AWG | copper | 4 AWG | forum thread 34434: treated as 3/0",
                "4 | 250 kcmil | copper | 2/0 AWG | forum thread 3042184",
                "4 | 350 kcmil | copper | 3/0 AWG | a public quiz gives the area, 1400 kcmil",
                "4 | 500 kcmil | copper | 3/0 AWG | EC&M quiz of the day: 3/0 is the largest there is",
                "1 | 4/0 AWG | copper | 2 AWG | IAEI magazine, Sole Connections: to the water pipe; answer seen in part"
            })
    void givesThePublishedCopperConductor(int sets, String size, String material, String copper, String source) {
        assertThat(copperFor(sets, size, material)).as(source).isEqualTo(size(copper));
    }

    @Test
    void givesThePublishedAluminumConductor() {
        // forum thread 106695: 4/0 aluminum takes 4 AWG copper or 2 AWG aluminum
        assertThat(row(1, "4/0 AWG", "aluminum").aluminum()).isEqualTo(WireSize.AWG_2);
    }

    @ParameterizedTest(name = "{0} x {1} {2} is not {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "4 | 500 kcmil | aluminum | 4 AWG | 3/0 AWG | a practice-exam site",
                "2 | 3/0 AWG | copper | 1/0 AWG | 2 AWG | forum thread 153038",
                "1 | 350 kcmil | copper | 1/0 AWG | 2 AWG | forum thread 54673, read from the aluminum column"
            })
    void doesNotGiveWhatIsPublishedInError(
            int sets, String size, String material, String wrong, String right, String source) {
        assertThat(copperFor(sets, size, material))
                .as(source)
                .isNotEqualTo(size(wrong))
                .isEqualTo(size(right));
    }

    /**
     * Main, system and supply-side bonding jumpers follow Table 250.102(C)(1): the same bands up to 1100 kcmil copper,
     * then 12.5 percent of the area. Forum thread 27781 gives 250 kcmil to 4 sets of 500 kcmil.
     */
    @Test
    void isNotTheTableOfBondingJumpersBeyondItsLastLimit() {
        long area = phase(4, "500 kcmil", "copper").area();
        assertThat(WireSize.findAtLeast(area / 8)).contains(WireSize.KCMIL_250);
        assertThat(Table25066.copperFor(Material.COPPER, area)).isEqualTo(WireSize.AWG_3_0);
        assertThat(Table25066.isBeyond(Material.COPPER, area)).isTrue();
    }

    /** Published sizes of such jumpers within the bands that both tables share. */
    @ParameterizedTest(name = "{0} x {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "3 | 250 kcmil | 2/0 AWG | a public building code forum, thread 26483",
                "2 | 350 kcmil | 2/0 AWG | forum thread 194660: 225 kVA, system bonding jumper",
                "1 | 350 kcmil | 2 AWG | the same: supply-side jumper of one raceway",
                "1 | 4/0 AWG | 2 AWG | forum thread 2591021: 75 kVA, supply-side jumper"
            })
    void sharesTheBandsOfBondingJumpers(int sets, String size, String jumper, String source) {
        PhaseConductors phase = phase(sets, size, "copper");
        assertThat(Table25066.isBeyond(phase.material(), phase.area())).isFalse();
        assertThat(copperFor(sets, size, "copper")).as(source).isEqualTo(size(jumper));
    }

    static Stream<Integer> rows() {
        return Stream.iterate(0, i -> i + 1).limit(SECOND_COPY.size());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void equalsASecondPublicCopy(int i) {
        List<String> copy = SECOND_COPY.get(i);
        Table25066.Row expected =
                new Table25066.Row(limit(copy.get(0)), limit(copy.get(1)), entry(copy.get(2)), entry(copy.get(3)));
        assertThat(Table25066.ROWS.get(i)).isEqualTo(expected);
        assertThat(Table25066.ROWS).hasSameSizeAs(SECOND_COPY);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void stepsUpOneCircularMilAboveEachBand(int i) {
        List<String> copy = SECOND_COPY.get(i);
        for (Material material : Material.values()) {
            long limit = limit(copy.get(material == Material.COPPER ? 0 : 1));
            assertThat(Table25066.rowFor(material, limit).copper()).isEqualTo(entry(copy.get(2)));
            assertThat(Table25066.rowFor(material, limit).aluminum()).isEqualTo(entry(copy.get(3)));
            if (i + 1 < SECOND_COPY.size()) {
                List<String> next = SECOND_COPY.get(i + 1);
                assertThat(Table25066.rowFor(material, limit + 1).copper()).isEqualTo(entry(next.get(2)));
                assertThat(Table25066.rowFor(material, limit + 1).aluminum()).isEqualTo(entry(next.get(3)));
                assertThat(Table25066.isBeyond(material, limit + 1)).isEqualTo(i + 2 == SECOND_COPY.size());
            }
        }
    }

    /** A distributor's copy prints "1 or smaller" as the first aluminum band; 1/0 would then take 6 AWG. */
    @Test
    void doesNotFollowTheMisprintedFirstAluminumBand() {
        assertThat(copperFor(1, "1 AWG", "aluminum")).isEqualTo(WireSize.AWG_8);
        assertThat(copperFor(1, "1/0 AWG", "aluminum"))
                .isEqualTo(WireSize.AWG_8)
                .isNotEqualTo(WireSize.AWG_6);
        assertThat(row(1, "1/0 AWG", "aluminum").aluminum()).isEqualTo(WireSize.AWG_6);
        assertThat(copperFor(1, "2/0 AWG", "aluminum")).isEqualTo(WireSize.AWG_6);
    }

    /** Both named sizes of the bands that have two. */
    @ParameterizedTest
    @CsvSource({
        "1 AWG, copper, 6 AWG, 4 AWG", "1/0 AWG, copper, 6 AWG, 4 AWG", "2/0 AWG, copper, 4 AWG, 2 AWG",
        "3/0 AWG, copper, 4 AWG, 2 AWG", "2/0 AWG, aluminum, 6 AWG, 4 AWG", "3/0 AWG, aluminum, 6 AWG, 4 AWG",
        "4/0 AWG, aluminum, 4 AWG, 2 AWG", "250 kcmil, aluminum, 4 AWG, 2 AWG", "14 AWG, copper, 8 AWG, 6 AWG"
    })
    void coversTheNamedSizesOfABand(String service, String material, String copper, String aluminum) {
        assertThat(row(1, service, material).copper()).isEqualTo(size(copper));
        assertThat(row(1, service, material).aluminum()).isEqualTo(size(aluminum));
    }

    /** Parallel sets of one phase add up: forum thread 8561 and EC&M, Code Q&A 62. */
    @ParameterizedTest
    @CsvSource({"1, 133100, 4 AWG", "2, 266200, 2 AWG", "3, 399300, 1/0 AWG", "10, 1331000, 3/0 AWG"})
    void addsUpParallelSets(int sets, long circularMils, String copper) {
        PhaseConductors phase = phase(sets, "2/0 AWG", "copper");
        assertThat(phase.area()).isEqualTo(circularMils);
        assertThat(copperFor(sets, "2/0 AWG", "copper")).isEqualTo(size(copper));
    }

    @ParameterizedTest
    @EnumSource
    void isNeverSmallerForALargerService(Material material) {
        long[] areas = Arrays.stream(WireSize.values())
                .mapToLong(WireSize::circularMils)
                .flatMap(area -> Arrays.stream(new long[] {area, 2 * area, 3 * area, 7 * area}))
                .sorted()
                .toArray();
        for (int i = 1; i < areas.length; i++) {
            Table25066.Row smaller = Table25066.rowFor(material, areas[i - 1]);
            Table25066.Row larger = Table25066.rowFor(material, areas[i]);
            assertThat(larger.copper().isAtLeast(smaller.copper())).isTrue();
            assertThat(larger.aluminum().isAtLeast(smaller.aluminum())).isTrue();
        }
    }

    /** EC&M quiz of the day: no grounding electrode conductor need be larger than 3/0 copper, 250 kcmil aluminum. */
    @ParameterizedTest
    @EnumSource
    void endsAtThreeAughtCopper(Material material) {
        assertThat(Table25066.rowFor(material, 1_000L * 2_000_000).copper()).isEqualTo(WireSize.AWG_3_0);
        assertThat(Table25066.rowFor(material, Long.MAX_VALUE).aluminum()).isEqualTo(WireSize.KCMIL_250);
    }

    @Test
    void refusesAServiceWithoutConductors() {
        assertThatThrownBy(() -> Table25066.rowFor(Material.COPPER, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Table25066.rowFor(Material.ALUMINUM, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static WireSize copperFor(int sets, String size, String material) {
        PhaseConductors phase = phase(sets, size, material);
        return Table25066.copperFor(phase.material(), phase.area());
    }

    private static Table25066.Row row(int sets, String size, String material) {
        PhaseConductors phase = phase(sets, size, material);
        return Table25066.rowFor(phase.material(), phase.area());
    }

    private static PhaseConductors phase(int sets, String size, String material) {
        return new PhaseConductors(Material.valueOf(material.toUpperCase(Locale.ROOT)), size(size), sets);
    }

    private static WireSize size(String label) {
        return WireSize.find(label).orElseThrow();
    }

    /** As the table writes it: gauges up to 4/0, then kcmil. */
    private static WireSize entry(String text) {
        return WireSize.find(text + " AWG")
                .or(() -> WireSize.find(text + " kcmil"))
                .orElseThrow();
    }

    private static long limit(String text) {
        return switch (text) {
            case "over" -> Long.MAX_VALUE;
            case "1100" -> 1_100_000;
            default -> entry(text).circularMils();
        };
    }
}
