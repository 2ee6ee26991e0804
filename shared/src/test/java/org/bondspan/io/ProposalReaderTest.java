package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.JointMethod;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.layout.Proposal.ProposedLink;
import org.bondspan.site.Material;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Proposals and results as the published format has them; one foot is 0.3048 m, as agreed in 1959. */
class ProposalReaderTest {
    private static final Site SITE = Fixtures.fullSite();

    @Test
    void readsConductorsWithAllThatIsStated() {
        assertThat(full().conductors())
                .containsExactly(
                        new ProposedConductor(
                                "C1",
                                WireSize.AWG_3_0,
                                Material.COPPER,
                                new End.AtService("S1", Optional.of("A")),
                                new End.OnPath("W1", Optional.of(feet("4.5"))),
                                List.of(position("L1", "5", "5", "4"), position("L1", "5", "50", "0")),
                                Optional.of(feet("52.25")),
                                Enclosure.FERROUS_RACEWAY,
                                true,
                                false,
                                true),
                        new ProposedConductor(
                                "C2",
                                WireSize.AWG_2,
                                Material.ALUMINUM,
                                new End.OnConductor("C1", feet("20")),
                                new End.AtElectrode("E6", Optional.of("N")),
                                List.of(),
                                Optional.of(Length.ZERO),
                                Enclosure.BURIED,
                                false,
                                true,
                                false),
                        plain(
                                "C3",
                                WireSize.AWG_6,
                                new End.AtJoint("J1"),
                                new End.AtElectrode("E7", Optional.empty()),
                                Enclosure.NONE),
                        plain(
                                "C4",
                                WireSize.KCMIL_2000,
                                new End.AtJoint("anywhere"),
                                new End.AtPlace(position("L2", "12.5", "40", "-0.5")),
                                Enclosure.RACEWAY),
                        plain(
                                "P1",
                                WireSize.AWG_14,
                                new End.AtJoint("anywhere"),
                                new End.OnPath("B1", Optional.empty()),
                                Enclosure.NONE));
    }

    @Test
    void readsLinksAndJoints() {
        assertThat(full().links())
                .containsExactly(new ProposedLink(
                        "B2",
                        new End.OnPath("B2", Optional.of(Length.ZERO)),
                        new End.AtService("S2", Optional.empty())));
        assertThat(full().joints())
                .containsExactly(
                        new ProposedJoint(
                                Optional.of("J1"),
                                Optional.of(position("L1", "5", "20", "0")),
                                List.of("C1", "C3"),
                                JointMethod.MECHANICAL),
                        joint(List.of("C4", "P1"), JointMethod.BUSBAR),
                        joint(List.of("C1"), JointMethod.EXOTHERMIC),
                        joint(List.of(), JointMethod.IRREVERSIBLE));
    }

    /** 10 m are 32.8084 ft; what is not stated has the unit of its site. */
    @Test
    void readsLengthsInTheUnitOfTheFileElseInThatOfTheSite() {
        String stated = "{\"format\": \"bondspan-proposal/1\", %s\"conductors\": [{\"id\": \"C1\", \"size\": \"4 AWG\","
                + " \"from\": {\"service\": \"S1\"}, \"to\": {\"electrode\": \"E5\"}, \"length\": 10}]}";
        assertThat(lengthOf(stated.formatted("")).in(LengthUnit.FOOT)).isEqualByComparingTo("10");
        assertThat(lengthOf(stated.formatted("\"lengthUnit\": \"ft\", ")).in(LengthUnit.FOOT))
                .isEqualByComparingTo("10");
        assertThat(lengthOf(stated.formatted("\"lengthUnit\": \"m\", ")).in(LengthUnit.METRE))
                .isEqualByComparingTo("10");
    }

    @Test
    void levelMayBeLeftOutWhereThereIsOne() {
        Site oneLevel = SiteReader.parse(Fixtures.text("smallest.site.json"), "smallest.site.json");
        Proposal proposal = ProposalReader.parse("""
                {"format": "bondspan-proposal/1", "conductors": [
                  {"id": "C1", "size": "6 AWG", "from": {"place": {"at": [1, 2]}}, "to": {"place": {"at": [1, 2]}}}]}
                """, "a.proposal.json", oneLevel);
        assertThat(proposal.conductors().get(0).to())
                .isEqualTo(new End.AtPlace(new Position(
                        oneLevel.levels().get(0).id(),
                        new PlanPoint(feet("1").nanometres(), feet("2").nanometres()),
                        Length.ZERO)));
    }

    @Test
    void proposalOfNothingIsAProposal() {
        assertThat(read("{\"format\": \"bondspan-proposal/1\", \"conductors\": []}"))
                .isEqualTo(new Proposal(List.of(), List.of(), List.of()));
    }

    /** The writer rounds 33 1/3 ft to 33.33 ft. */
    @Test
    void readsResultsAsProposals() {
        Proposal proposal = read(LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT)));
        Position tap = position("L1", "33.33", "0", "4");
        assertThat(proposal)
                .isEqualTo(new Proposal(
                        List.of(
                                new ProposedConductor(
                                        "C1",
                                        WireSize.AWG_4,
                                        Material.COPPER,
                                        new End.AtService("S1", Optional.of("A")),
                                        new End.AtJoint("J1"),
                                        List.of(position("L1", "0", "0", "4"), tap),
                                        Optional.of(feet("33.33")),
                                        Enclosure.NONE,
                                        false,
                                        false,
                                        false),
                                new ProposedConductor(
                                        "C2",
                                        WireSize.AWG_8,
                                        Material.COPPER,
                                        new End.OnConductor("C1", feet("33.33")),
                                        new End.AtElectrode("E1", Optional.empty()),
                                        List.of(tap),
                                        Optional.of(Length.ZERO),
                                        Enclosure.RACEWAY,
                                        false,
                                        false,
                                        false)),
                        List.of(new ProposedLink("F1", new End.OnPath("F1", Optional.empty()), new End.AtPlace(tap))),
                        List.of(new ProposedJoint(
                                Optional.of("J1"), Optional.of(tap), List.of("C1", "C2"), JointMethod.EXOTHERMIC))));
    }

    /** 33 1/3 ft are 10.16 m exactly. */
    @Test
    void readsMetricResultsInMetres() {
        Proposal proposal = read(LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.METRE)));
        Length total = proposal.conductors().get(0).length().orElseThrow();
        assertThat(total).isEqualTo(Length.of(new BigDecimal("10.16"), LengthUnit.METRE));
        assertThat(proposal.joints().get(0).place().orElseThrow().at().x()).isEqualTo(total.nanometres());
    }

    @Test
    void impossibleResultProposesNothing() {
        assertThat(read(LayoutWriter.toJson(Layouts.impossible())))
                .isEqualTo(new Proposal(List.of(), List.of(), List.of(), Optional.of("Hall 4")));
    }

    /** Whoever tries what the review finds changes a result by hand. */
    @Test
    void resultMayBeAlteredByWhatProposalsKnow() {
        Edit.ofResult("\"role\": \"bonding-jumper\"", "\"material\": \"aluminum\", \"exposedToDamage\": true")
                .isAccepted();
        Edit.ofResult("\"exothermic\"", "\"mechanical\"").isAccepted();
        Edit.ofResult("\"protection\": \"raceway\"", "\"protection\": \"ferrous-raceway\"")
                .isAccepted();
    }

    @Test
    void readsFiles(@TempDir Path directory) throws IOException {
        Path file = directory.resolve("a.proposal.json");
        Files.writeString(file, Fixtures.text(Edit.PROPOSAL));
        assertThat(ProposalReader.read(file, SITE)).isEqualTo(full());
    }

    private static Proposal full() {
        return read(Fixtures.text(Edit.PROPOSAL));
    }

    private static Proposal read(String text) {
        return ProposalReader.parse(text, "a.proposal.json", SITE);
    }

    private static Length lengthOf(String text) {
        return read(text).conductors().get(0).length().orElseThrow();
    }

    private static ProposedConductor plain(String id, WireSize size, End from, End to, Enclosure enclosure) {
        return new ProposedConductor(
                id, size, Material.COPPER, from, to, List.of(), Optional.empty(), enclosure, false, false, false);
    }

    private static ProposedJoint joint(List<String> conductors, JointMethod method) {
        return new ProposedJoint(Optional.empty(), Optional.empty(), conductors, method);
    }

    private static Position position(String level, String x, String y, String height) {
        return new Position(level, new PlanPoint(feet(x).nanometres(), feet(y).nanometres()), feet(height));
    }

    private static Length feet(String feet) {
        return Length.of(new BigDecimal(feet), LengthUnit.FOOT);
    }
}
