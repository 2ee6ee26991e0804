package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.bondspan.site.Busbar;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.DrivenPipe;
import org.bondspan.site.Electrode.EncasedMetal;
import org.bondspan.site.Electrode.FrameTie;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.NotPermitted;
import org.bondspan.site.Electrode.OtherListed;
import org.bondspan.site.Electrode.OtherUndergroundMetal;
import org.bondspan.site.Electrode.Plate;
import org.bondspan.site.Electrode.PlateMetal;
import org.bondspan.site.Electrode.Rod;
import org.bondspan.site.Electrode.Terminals;
import org.bondspan.site.Electrode.TieMeans;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Electrode.WaterUse;
import org.bondspan.site.Evidence;
import org.bondspan.site.FireLine;
import org.bondspan.site.Level;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.Material;
import org.bondspan.site.PhaseConductors;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Riser;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.Beam;
import org.bondspan.site.SitePath.Break;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.Medium;
import org.bondspan.site.SitePath.NeverCarries;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.site.Wall;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;

class SiteReaderTest {
    private static final Site FULL = SiteReader.parse(Fixtures.text("full.site.json"), "full.site.json");
    private static final Site SMALLEST =
            SiteReader.parse(Fixtures.text("smallest.site.json"), "plans/smallest.site.json");
    private static final Site METRIC = SiteReader.parse(Fixtures.text("metric.site.json"), "metric.site.json");

    @Test
    void readsWhatIsSaidOfTheWholeSite() {
        assertThat(FULL.name()).isEqualTo("Hall 3");
        assertThat(FULL.note()).isEqualTo("All fields of the format");
        assertThat(FULL.adoption()).isEqualTo("County of Example, 2020 edition, no amendments");
        assertThat(FULL.lengthUnit()).isEqualTo(LengthUnit.FOOT);
        assertThat(FULL.codeEdition()).isEqualTo(CodeEdition.NEC_2023);
        assertThat(FULL.qualifiedPersonsOnly()).isTrue();
        assertThat(FULL.existingBuilding()).isTrue();
        assertThat(FULL.fireLine()).contains(FireLine.BOND_ONLY);
        assertThat(FULL.makeUpPerEnd()).isEqualTo(Length.ofFeet(3));
        assertThat(FULL.wastePercent()).isEqualByComparingTo("7.5");
    }

    @Test
    void readsLevelsRisersAndBusbars() {
        List<PlanPoint> outline = List.of(at("0", "0"), at("100", "0"), at("100", "60"), at("0", "60"));
        ClosedArea area = new ClosedArea("K", List.of(at("40", "20"), at("60", "20"), at("60", "40"), at("40", "40")));
        Wall wall = new Wall("WL", List.of(at("30", "0"), at("30", "60")), Optional.of(Money.ofCents(14_550)));
        assertThat(FULL.levels())
                .containsExactly(
                        new Level("L1", Length.ZERO, outline, Optional.of(feet("10.5")), List.of(area), List.of(wall)),
                        new Level("L2", feet("14"), outline, Optional.empty(), List.of(), List.of()));
        assertThat(FULL.risers()).containsExactly(new Riser("R1", at("10", "10"), List.of("L1", "L2")));
        assertThat(FULL.busbars()).containsExactly(new Busbar("MGB", position("L1", "20", "30", "12")));
    }

    @Test
    void readsServices() {
        assertThat(FULL.services())
                .containsExactly(
                        new Service(
                                "S1",
                                "lateral 1",
                                new PhaseConductors(Material.COPPER, WireSize.KCMIL_500, 4),
                                List.of(connection("A", position("L1", "5", "5", "4")))),
                        new Service(
                                "S2",
                                "lateral 2",
                                new PhaseConductors(Material.ALUMINUM, WireSize.AWG_3_0, 1),
                                List.of(
                                        connection(position("L1", "8", "5", "0")),
                                        connection(position("L2", "8", "5", "-0.5")))));
    }

    @Test
    void readsElectrodesOfEveryType() {
        Connection valve = new Connection(Optional.of("V"), position("L1", "99", "5", "1"), Optional.of(feet("2")));
        assertThat(FULL.electrodes())
                .containsExactly(
                        new WaterPipeElectrode(new Terminals("E1", List.of()), feet("25"), WaterUse.DOMESTIC),
                        new WaterPipeElectrode(new Terminals("E2", List.of(valve)), feet("12"), WaterUse.FIRE),
                        new InGroundMetal(new Terminals("E3", List.of()), feet("15"), Optional.of("F1")),
                        new ConcreteEncased(
                                new Terminals("E4", landing("0", "30")),
                                feet("20"),
                                EncasedMetal.REBAR,
                                Optional.of(new BigDecimal("0.5")),
                                Optional.empty(),
                                new BigDecimal("2"),
                                false,
                                true,
                                true,
                                false,
                                Optional.of(new FrameTie("F1", TieMeans.TIE_WIRE))),
                        new ConcreteEncased(
                                new Terminals("E5", landing("0", "40")),
                                feet("30.25"),
                                EncasedMetal.COPPER,
                                Optional.empty(),
                                Optional.of(WireSize.AWG_4),
                                new BigDecimal("3"),
                                false,
                                false,
                                false,
                                true,
                                Optional.empty()),
                        new GroundRing(
                                new Terminals(
                                        "E6",
                                        List.of(
                                                connection("N", position("L1", "50", "60", "0")),
                                                connection("S", position("L1", "50", "0", "0")))),
                                WireSize.AWG_2,
                                feet("320"),
                                Optional.of(feet("2.5"))),
                        new Rod(
                                new Terminals("E7", landing("100", "60")),
                                feet("10"),
                                new BigDecimal("0.625"),
                                true,
                                Optional.of(new BigDecimal("18"))),
                        new DrivenPipe(
                                new Terminals("E8", landing("100", "50")),
                                feet("8"),
                                new BigDecimal("0.75"),
                                Optional.of(new BigDecimal("30.5"))),
                        new Plate(
                                new Terminals("E9", landing("100", "40")),
                                new BigDecimal("2"),
                                PlateMetal.NONFERROUS,
                                new BigDecimal("0.06"),
                                Optional.of(BigDecimal.ZERO)),
                        new OtherListed(new Terminals("E10", landing("100", "30"))),
                        new OtherUndergroundMetal(new Terminals("E11", landing("100", "20")), true),
                        new NotPermitted(new Terminals("E12", List.of()), "gas-pipe"),
                        new NotPermitted(new Terminals("E13", List.of()), "aluminum"),
                        new NotPermitted(new Terminals("E14", landing("100", "10")), "pool-steel"));
    }

    @Test
    void readsPathsOfEveryMedium() {
        assertThat(FULL.paths())
                .containsExactly(
                        new CopperLine(
                                "P1",
                                line("L1", vertex("5", "5", "9"), vertex("5", "30", "9"), vertex("20", "30", "12")),
                                Optional.of(feet("62.5"))),
                        new StructuralFrame(
                                "F1",
                                List.of("L1", "L2"),
                                List.of(
                                        at("0", "0"),
                                        at("0", "30"),
                                        at("25", "0"),
                                        at("25", "30"),
                                        at("50", "0"),
                                        at("50", "30")),
                                List.of(
                                        new Beam(at("0", "0"), at("0", "30")),
                                        new Beam(at("0", "0"), at("25", "0")),
                                        new Beam(at("25", "0"), at("25", "30")),
                                        new Beam(at("0", "30"), at("25", "30")),
                                        new Beam(at("25", "0"), at("50", "0")),
                                        new Beam(at("50", "0"), at("50", "30")),
                                        new Beam(at("25", "30"), at("50", "30"))),
                                feet("-2"),
                                feet("14"),
                                feet("13"),
                                false,
                                true,
                                false),
                        new StructuralFrame(
                                "F2",
                                List.of("L2"),
                                List.of(at("70", "0"), at("80", "0")),
                                List.of(new Beam(at("70", "0"), at("90", "0"))),
                                Length.ZERO,
                                feet("12"),
                                feet("12"),
                                true,
                                false,
                                true),
                        new WaterPiping(
                                "W1",
                                Optional.of("E1"),
                                line("L1", vertex("0", "50", "2"), vertex("30", "50", "2"), vertex("30", "50", "8")),
                                true,
                                true,
                                false,
                                List.of(new Break(feet("3"), "meter", feet("2.5"), true))),
                        new RingPath(
                                "G1",
                                "E6",
                                Optional.of(line(
                                        "L1",
                                        vertex("0", "0", "-2.5"),
                                        vertex("50", "0", "-2.5"),
                                        vertex("100", "0", "-2.5"))),
                                true),
                        new InstalledConductor(
                                "C1", line("L1", vertex("100", "30", "0"), vertex("100", "20", "0")), WireSize.AWG_2),
                        new NeverCarries(
                                "B1", Medium.FOOTING_REBAR, line("L1", vertex("0", "0", "0"), vertex("100", "0", "0"))),
                        new NeverCarries(
                                "B2", Medium.GAS_PIPE, line("L1", vertex("0", "10", "0"), vertex("100", "10", "0"))),
                        new NeverCarries(
                                "B3", Medium.ROOF_DECK, line("L2", vertex("0", "0", "12"), vertex("100", "0", "12"))),
                        new NeverCarries(
                                "B4", Medium.OTHER, line("L1", vertex("0", "12", "0"), vertex("100", "12", "0"))));
    }

    @Test
    void namesWhatEachPieceOfEvidenceIsOf() {
        assertThat(FULL.evidence())
                .containsExactly(
                        new Evidence("site", "survey of the owner"),
                        new Evidence("level L1", "A-101"),
                        new Evidence("open floor of level L1", "assumed"),
                        new Evidence("closed area K of level L1", "A-102"),
                        new Evidence("riser R1", "field verified"),
                        new Evidence("phase conductors of service S1", "E-001"),
                        new Evidence("connection A of service S1", "E-002"),
                        new Evidence("electrode E1", "assumed"),
                        new Evidence("tie to the frame of electrode E4", "S-201"),
                        new Evidence("grid of path F1", "S-101"),
                        new Evidence("break 1 of path W1", "photo 7"),
                        new Evidence("path B4", "assumed"),
                        new Evidence("busbar MGB", "E-003"));
    }

    @Test
    void fillsInWhatMayBeLeftOut() {
        assertThat(SMALLEST)
                .isEqualTo(new Site(
                        "smallest",
                        false,
                        "",
                        "",
                        LengthUnit.FOOT,
                        CodeEdition.NEC_2020,
                        false,
                        false,
                        Optional.empty(),
                        Length.ZERO,
                        BigDecimal.ZERO,
                        List.of(new Level(
                                "L1",
                                Length.ZERO,
                                List.of(at("0", "0"), at("40", "0"), at("40", "30")),
                                Optional.empty(),
                                List.of(),
                                List.of())),
                        List.of(),
                        List.of(new Service(
                                "S1",
                                "S1",
                                new PhaseConductors(Material.COPPER, WireSize.AWG_2, 1),
                                List.of(connection(position("L1", "1", "1", "0"))))),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty()));
    }

    @Test
    void readsMetresExactly() {
        Connection bus = METRIC.services().get(0).connections().get(0);
        assertThat(bus.position())
                .isEqualTo(new Position(
                        "G", new PlanPoint(304_800_000L, 1_000_000_000L), Length.ofNanometres(1_200_000_000L)));
        assertThat(METRIC.levels().get(0).openHeight()).contains(Length.ofNanometres(2_400_000_000L));
    }

    /** 1 ft is 0.3048 m exactly (Federal Register notice of 1959-07-01), so 2 sq ft are 0.18580608 square metres. */
    @Test
    void holdsQualifyingFactsOfMetricSitesAgainstFeetExactly() {
        assertThat(METRIC.listElectrodes(Plate.class).get(0).squareFeet()).isEqualByComparingTo("2");
        assertThat(METRIC.listElectrodes(Rod.class).get(0).rodLength()).isEqualTo(Length.ofFeet(8));
    }

    @Test
    void putsEverythingOnTheOnlyLevel() {
        assertThat(METRIC.listPaths(StructuralFrame.class).get(0).levels()).containsExactly("G");
        assertThat(METRIC.listPaths(CopperLine.class).get(0).line().level()).isEqualTo("G");
    }

    @Test
    void makesNearPlacesOneInTheOrderOfTheText() {
        String text = """
                {"format": "bondspan-site/1",
                 "services": [{"id": "S", "ungrounded": {"material": "copper", "size": "2 AWG", "sets": 1},
                               "connections": [{"at": [20.04, 0.01], "height": 4}]}],
                 "levels": [{"id": "L", "outline": [[0, 0], [20, 0], [20, 10], [0, 10]]}],
                 "paths": [{"id": "F", "medium": "structural-frame", "grid": {"x": [20.05, 0.02], "y": [10, 0]},
                            "top": 9, "continuous": true}]}
                """;
        Site site = SiteReader.parse(text, "near.site.json");
        PlanPoint bus = site.services().get(0).connections().get(0).position().at();
        assertThat(bus).isEqualTo(at("20.04", "0.01"));
        assertThat(site.levels().get(0).outline()).containsExactly(at("0", "0"), bus, at("20", "10"), at("0", "10"));
        assertThat(site.listPaths(StructuralFrame.class).get(0).columns())
                .containsExactly(at("0", "0"), at("0", "10"), bus, at("20", "10"));
    }

    private static Length feet(String feet) {
        return Length.of(new BigDecimal(feet), LengthUnit.FOOT);
    }

    private static PlanPoint at(String x, String y) {
        return new PlanPoint(feet(x).nanometres(), feet(y).nanometres());
    }

    private static Position position(String level, String x, String y, String height) {
        return new Position(level, at(x, y), feet(height));
    }

    private static Connection connection(Position position) {
        return new Connection(Optional.empty(), position, Optional.empty());
    }

    private static Connection connection(String id, Position position) {
        return new Connection(Optional.of(id), position, Optional.empty());
    }

    private static List<Connection> landing(String x, String y) {
        return List.of(connection(position("L1", x, y, "0")));
    }

    private static LineVertex vertex(String x, String y, String height) {
        return new LineVertex(at(x, y), feet(height));
    }

    private static Line line(String level, LineVertex... vertices) {
        return new Line(level, List.of(vertices));
    }
}
