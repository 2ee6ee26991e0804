package org.bondspan.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.bondspan.code.Obligation.Kind;
import org.bondspan.site.Material;
import org.bondspan.site.PhaseConductors;
import org.bondspan.site.Service;
import org.bondspan.units.Seeds;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes of stretches: published cases, the rule on sums, and a naive restatement on random splits. */
class StretchNeedTest {
    private static final List<WireSize> SERVICE_SIZES = List.of(
            WireSize.AWG_4, WireSize.AWG_1, WireSize.AWG_2_0, WireSize.AWG_4_0, WireSize.KCMIL_350, WireSize.KCMIL_500);
    private static final List<Need> NEEDS =
            List.of(Need.TABLE, Need.DRIVEN, Need.ENCASED, Need.ring(WireSize.AWG_2), Need.ring(WireSize.AWG_1_0));

    static LongStream seeds() {
        return Seeds.upTo(200);
    }

    /**
     * 600 A of 2 x 500 kcmil aluminum: forum thread 5782 gives 2/0 copper by the table, 6 to rods or a plate alone, 4
     * to a concrete-encased electrode. 4/0 aluminum: thread 106695 gives 4 copper, 6 to rods alone. 4/0 copper: IAEI
     * magazine, "Sole Connections", has 2 to the pipe and 6 to the rod. 600 A and a ring alone: thread 2575808, 2 to a
     * ring of 2.
     */
    @ParameterizedTest(name = "{0} x {1} {2}, {3}: {4}")
    @CsvSource({
        "2, 500 kcmil, ALUMINUM, table, 2/0 AWG, 250.66",
        "2, 500 kcmil, ALUMINUM, driven, 6 AWG, 250.66(A)",
        "2, 500 kcmil, ALUMINUM, encased, 4 AWG, 250.66(B)",
        "1, 4/0 AWG, ALUMINUM, table, 4 AWG, 250.66",
        "1, 4/0 AWG, ALUMINUM, driven, 6 AWG, 250.66(A)",
        "1, 4/0 AWG, COPPER, table, 2 AWG, 250.66",
        "1, 4/0 AWG, COPPER, driven, 6 AWG, 250.66(A)",
        "2, 500 kcmil, ALUMINUM, ring, 2 AWG, 250.66(C)",
        // the limits are caps: a small service takes the smaller size of the table
        "1, 1/0 AWG, COPPER, encased, 6 AWG, 250.66",
        "1, 2 AWG, COPPER, driven, 8 AWG, 250.66",
        "1, 1/0 AWG, COPPER, driven, 6 AWG, 250.66",
        "1, 2/0 AWG, COPPER, ring, 4 AWG, 250.66"
    })
    void sizesAConductorToOneThing(
            int sets, String size, Material material, String kind, String copper, String section) {
        Need need = switch (kind) {
            case "driven" -> Need.DRIVEN;
            case "encased" -> Need.ENCASED;
            case "ring" -> Need.ring(WireSize.AWG_2);
            default -> Need.TABLE;
        };
        StretchNeed needs =
                new StretchNeed(List.of(service("S", "drop", material, size(size), sets)), List.of(thing("E", need)));
        assertThat(needs.across(0b01)).isEqualTo(size(copper));
        assertThat(needs.across(0b10)).isEqualTo(size(copper));
        assertThat(needs.ofWhole(need)).isEqualTo(size(copper));
        assertThat(needs.basisOfWhole(need).section()).isEqualTo(section);
        assertThat(needs.explain(0b01).rule().section()).isEqualTo(section);
    }

    /**
     * A teaching page of the 2020 text of 250.66(A): from a rod on to a concrete-encased electrode, 4 AWG all the way.
     */
    @Test
    void doesNotLimitARodsSizeWhereTheConductorGoesOn() {
        StretchNeed needs = new StretchNeed(
                List.of(service("S", "drop", Material.COPPER, WireSize.KCMIL_500, 4)),
                List.of(thing("rod", Need.DRIVEN), thing("footing", Need.ENCASED), thing("pipe", Need.TABLE)));
        assertThat(needs.across(0b0011 | 0b1000)).as("to the footing alone").isEqualTo(WireSize.AWG_4);
        assertThat(needs.across(0b0110)).as("rod and footing beyond").isEqualTo(WireSize.AWG_4);
        assertThat(needs.across(0b1010)).as("rod and water pipe beyond").isEqualTo(WireSize.AWG_3_0);
        assertThat(needs.across(0b0010)).as("the rod alone").isEqualTo(WireSize.AWG_6);
    }

    /** 250.64(D)(1): the common conductor by the sum of one supply's conductors, each tap by its own disconnect. */
    @Test
    void addsServicesOfOneSupplyOnTheCommonConductorOnly() {
        StretchNeed needs = new StretchNeed(
                List.of(
                        service("S1", "lateral", Material.COPPER, WireSize.AWG_3_0, 1),
                        service("S2", "lateral", Material.COPPER, WireSize.KCMIL_500, 1)),
                List.of(thing("pipe", Need.TABLE)));
        assertThat(needs.across(0b001)).as("tap of 167.8 kcmil").isEqualTo(WireSize.AWG_4);
        assertThat(needs.across(0b010)).as("tap of 500 kcmil").isEqualTo(WireSize.AWG_1_0);
        assertThat(needs.across(0b100)).as("common of 667.8 kcmil").isEqualTo(WireSize.AWG_2_0);
        assertThat(needs.isByPairs()).isFalse();
        assertThat(needs.explain(0b100).severalServices()).isTrue();
        assertThat(needs.explain(0b001).severalServices()).isFalse();
        assertThat(needs.explain(0b100).why())
                .contains("for pipe", "S1 has 1 x 3/0 AWG and S2 has 1 x 500 kcmil, in all 667.8 kcmil of");
    }

    @Test
    void doesNotAddServicesOfTwoSupplies() {
        StretchNeed needs = new StretchNeed(
                List.of(
                        service("S1", "east", Material.COPPER, WireSize.AWG_3_0, 1),
                        service("S2", "west", Material.COPPER, WireSize.KCMIL_500, 1)),
                List.of(thing("pipe", Need.TABLE)));
        assertThat(needs.across(0b100)).isEqualTo(WireSize.AWG_1_0);
        assertThat(needs.ofWhole(Need.TABLE)).isEqualTo(WireSize.AWG_1_0);
        assertThat(needs.isByPairs()).isTrue();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void equalsANaiveRestatement(long seed) {
        Random random = new Random(seed);
        List<Service> services = randomServices(random);
        List<Obligation> things = randomThings(random);
        StretchNeed needs = new StretchNeed(services, things);
        for (int i = 0; i < 20; i++) {
            // at least one bit is set and one is not: a stretch of a tie parts something
            long side = random.nextLong(1, (1L << (services.size() + things.size())) - 1);
            WireSize naive = naive(services, things, side);
            assertThat(needs.across(side)).isEqualTo(naive);
            assertThat(needs.across(~side)).isEqualTo(naive);
            assertThat(needs.explain(side).size()).isEqualTo(naive);
            assertThat(needs.listSizes()).contains(naive);
        }
        for (int j = 0; j < things.size(); j++) {
            WireSize alone = naive(services, things, 1L << (services.size() + j));
            assertThat(needs.ofWhole(things.get(j).need())).isEqualTo(alone);
        }
    }

    /** Every pair of a supply and a thing, over both ways that the stretch may part them. */
    private static WireSize naive(List<Service> services, List<Obligation> things, long side) {
        List<WireSize> sizes = new ArrayList<>(List.of(WireSize.AWG_8));
        for (Service one : services) {
            for (int j = 0; j < things.size(); j++) {
                boolean thingInside = (side & 1L << (services.size() + j)) != 0;
                long sum = 0;
                for (int i = 0; i < services.size(); i++) {
                    boolean serviceInside = (side & 1L << i) != 0;
                    if (services.get(i).supply().equals(one.supply()) && serviceInside != thingInside) {
                        sum += services.get(i).ungrounded().area();
                    }
                }
                if (sum > 0) {
                    WireSize table = table(one.ungrounded().material(), sum);
                    sizes.add(things.get(j)
                            .need()
                            .limit()
                            .filter(limit -> limit.circularMils() < table.circularMils())
                            .orElse(table));
                }
            }
        }
        return Collections.max(sizes);
    }

    /** Table 250.66 as thresholds in circular mils, written out once more. */
    private static WireSize table(Material material, long area) {
        long[] limits = material == Material.COPPER
                ? new long[] {66_360, 105_600, 167_800, 350_000, 600_000, 1_100_000}
                : new long[] {105_600, 167_800, 250_000, 500_000, 900_000, 1_750_000};
        String[] copper = {"8 AWG", "6 AWG", "4 AWG", "2 AWG", "1/0 AWG", "2/0 AWG", "3/0 AWG"};
        int row = 0;
        while (row < limits.length && area > limits[row]) {
            row++;
        }
        return size(copper[row]);
    }

    private static List<Service> randomServices(Random random) {
        int supplies = 1 + random.nextInt(3);
        List<Service> services = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(5); i++) {
            int supply = random.nextInt(supplies);
            Material material = supply == 1 ? Material.ALUMINUM : Material.COPPER;
            WireSize size = SERVICE_SIZES.get(random.nextInt(SERVICE_SIZES.size()));
            services.add(service("S" + i, "drop " + supply, material, size, 1 + random.nextInt(4)));
        }
        return services;
    }

    private static List<Obligation> randomThings(Random random) {
        List<Obligation> things = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(6); i++) {
            things.add(thing("E" + i, NEEDS.get(random.nextInt(NEEDS.size()))));
        }
        return things;
    }

    @Test
    void needsTheSmallestSizeWhereNothingIsParted() {
        StretchNeed needs = new StretchNeed(
                List.of(service("S", "drop", Material.COPPER, WireSize.KCMIL_500, 4)),
                List.of(thing("pipe", Need.TABLE)));
        assertThat(needs.across(0b00)).isEqualTo(WireSize.AWG_8);
        assertThat(needs.across(0b11)).isEqualTo(WireSize.AWG_8);
    }

    @Test
    void takesAnyNumberOfServicesAndThings() {
        List<Service> services = List.of(service("S", "drop", Material.COPPER, WireSize.KCMIL_500, 4));
        List<Obligation> most = Collections.nCopies(61, thing("rod", Need.DRIVEN));
        List<Obligation> things = new ArrayList<>(most);
        things.add(thing("pipe", Need.TABLE));
        StretchNeed needs = new StretchNeed(services, things);
        assertThat(needs.across(1L << 62)).isEqualTo(WireSize.AWG_3_0);
        assertThat(needs.across(1L << 61)).isEqualTo(WireSize.AWG_6);
        things.addAll(Collections.nCopies(99, thing("footing", Need.ENCASED)));
        StretchNeed more = new StretchNeed(services, things);
        BitSet side = new BitSet();
        side.set(63, 162);
        assertThat(more.across(side)).isEqualTo(WireSize.AWG_4);
        assertThat(more.explain(side).why()).contains("footing");
        side.set(62);
        assertThat(more.across(side)).isEqualTo(WireSize.AWG_3_0);
        side.flip(0, 162);
        assertThat(more.across(side)).isEqualTo(WireSize.AWG_3_0);
    }

    private static WireSize size(String label) {
        return WireSize.find(label).orElseThrow();
    }

    private static Service service(String id, String supply, Material material, WireSize size, int sets) {
        return new Service(id, supply, new PhaseConductors(material, size, sets), List.of());
    }

    private static Obligation thing(String id, Need need) {
        return new Obligation(Kind.ELECTRODE, List.of(id), Rule.ELECTRODE_SYSTEM, need, List.of());
    }
}
