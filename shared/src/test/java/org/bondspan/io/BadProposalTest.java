package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Mistakes in proposals: one message with file, line, field, what is wrong and a way out. */
class BadProposalTest {
    private static final String ONE =
            "Write one of service, electrode, path, conductor, joint, place, such as {\"electrode\": \"E1\"}.";

    @Test
    void otherFormat() {
        Edit.ofProposal("bondspan-proposal/1", "bondspan-site/1")
                .says("format: is not \"bondspan-proposal/1\" or \"bondspan-result/1\"."
                        + " Write \"bondspan-proposal/1\" if this is a proposal.");
        Edit.proposal("[]")
                .saysOnLine(1, "must be an object, not a list. Write { \"format\": \"bondspan-proposal/1\", ... }.");
        Edit.proposal("{\"conductors\": []}")
                .saysOnLine(1, "format: is missing. Write \"format\": \"bondspan-proposal/1\".");
        Edit.proposal("{\"format\": \"bondspan-proposal/1\"}")
                .saysOnLine(1, "conductors: is missing. List them; an empty list proposes none.");
        Edit.proposal("{")
                .saysOnLine(
                        1,
                        "the file ends before its last bracket is closed. It may be cut off: compare it with its source.");
        assertThatThrownBy(() -> ProposalReader.read(Path.of("no.proposal.json"), Fixtures.fullSite()))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("no.proposal.json: does not exist.");
    }

    @Test
    void unknownField() {
        Edit.ofProposal("\"exposedToDamage\"", "\"exposedToDamages\"")
                .says("conductors[0].exposedToDamages: is not a field of conductor C1. Perhaps \"exposedToDamage\" is"
                        + " meant. Known here: id, size, material, from, to, line, length, protection, exposedToDamage,"
                        + " outdoors, bothEndsBonded, evidence.");
        Edit.ofProposal("\"links\"", "\"status\": \"least\", \"links\"")
                .says("status: is not a field of a proposal."
                        + " Known here: $schema, format, lengthUnit, conductors, links, joints, evidence.");
        Edit.ofProposal("\"method\": \"busbar\"", "\"method\": \"busbar\", \"basis\": []")
                .says(
                        "joints[1].basis: is not a field of joint 2. Known here: id, conductors, place, method, evidence.");
        Edit.ofProposal("\"path\": \"B2\", \"from\"", "\"path\": \"B2\", \"medium\": \"gas-pipe\", \"from\"")
                .says("links[0].medium: is not a field of link 1. Known here: path, from, to, evidence.");
        Edit.ofProposal("\"outdoors\": true", "\"role\": \"bonding-jumper\"")
                .says(
                        "conductors[1].role: is not a field of conductor C2. Known here: id, size, material, from, to, line,"
                                + " length, protection, exposedToDamage, outdoors, bothEndsBonded, evidence.");
    }

    @Test
    void unknownFieldOfAResult() {
        Edit.ofResult("\"why\"", "\"wy\"")
                .says(
                        "conductors[0].wy: is not a field of conductor C1. Perhaps \"why\" is meant. Known here: id, role,"
                                + " serves, basis, why, pieces, crosses, size, material, from, to, line, length, protection, exposedToDamage,"
                                + " outdoors, bothEndsBonded, evidence.");
        Edit.ofResult("\"vertical\"", "\"upright\"")
                .says("conductors[0].length.upright: is not a field of length of conductor C1."
                        + " Known here: plan, vertical, makeUp, jumper, total, evidence.");
        Edit.ofResult("\"gapPercent\"", "\"gapPercents\"")
                .says("gapPercents: is not a field of a result. Perhaps \"gapPercent\" is meant. Known here: $schema,"
                        + " format, lengthUnit, conductors, links, joints, site, codeEdition, objective, status, copper,"
                        + " sizes, lowerBound, gapPercent, services, electrodes, bonds, excluded, findings, notChecked,"
                        + " cautions, adoption, assumed, cost, evidence.");
    }

    @Test
    void lengthOfAnotherShape() {
        Edit.ofResult("{\"plan\": 33.33, \"vertical\": 0, \"makeUp\": 0, \"jumper\": 0, \"total\": 33.33}", "33.33")
                .says("conductors[0].length: must be an object, not a number. Write { ... }.");
        Edit.ofResult(", \"total\": 33.33", "").says("conductors[0].length.total: is missing. Give the length in ft.");
        Edit.ofProposal("\"length\": 52.25", "\"length\": {\"total\": 52.25}")
                .says("conductors[0].length: must be a number, not an object."
                        + " Write digits without quotes and without unit, such as 12.5.");
        Edit.ofProposal("\"length\": 52.25", "\"length\": -1")
                .says("conductors[0].length: must not be negative. Write 0 or more.");
    }

    @Test
    void keyWrittenTwice() {
        Edit.ofProposal("\"material\": \"aluminum\"", "\"size\": \"4 AWG\"")
                .says("conductors[1].size: is written twice in one object, first on line 13. Remove one of the two.");
    }

    @Test
    void idUsedTwice() {
        Edit.ofProposal("\"id\": \"P1\"", "\"id\": \"C3\"")
                .saysAll(
                        "full.proposal.json:21: conductors[4].id: the id \"C3\" is used twice: conductors[2].id on line 17"
                                + " has it too. Give one of them another id.",
                        "full.proposal.json:29: joints[1].conductors[1]: there is no conductor \"P1\"."
                                + " Perhaps \"C1\" is meant. Known here: C1, C2, C3, C4.");
        Edit.ofProposal("{\"conductors\": [\"C1\"]", "{\"id\": \"J1\", \"conductors\": [\"C1\"]")
                .says("joints[2].id: the id \"J1\" is used twice: joints[0].id on line 28 has it too."
                        + " Give one of them another id.");
        Edit.ofProposal("{\"id\": \"C2\", ", "{").says("conductors[1].id: is missing. Give it an id of its own.");
        Edit.ofProposal("{\"conductors\": [\"C1\"]", "{\"id\": \"\", \"conductors\": [\"C1\"]")
                .says("joints[2].id: must not be empty. Give it an id of its own.");
    }

    @Test
    void unknownId() {
        Edit.ofProposal("{\"service\": \"S2\"}", "{\"service\": \"S3\"}")
                .says("links[0].to.service: nothing in this site has the id \"S3\"; a service is wanted."
                        + " Perhaps \"S1\" is meant. Known here: S1, S2.");
        Edit.ofProposal("{\"electrode\": \"E7\"}", "{\"electrode\": \"W1\"}")
                .says("conductors[2].to.electrode: \"W1\" is a path, not an electrode. Perhaps \"E1\" is meant."
                        + " Known here: E1, E2, E3, E4, E5, E6, E7, E8, E9, E10, E11, E12, E13, E14.");
        Edit.ofProposal("{\"path\": \"B1\"}", "{\"path\": \"MGB\"}")
                .says("conductors[4].to.path: \"MGB\" is a busbar, not a path."
                        + " Known here: P1, F1, F2, W1, G1, C1, B1, B2, B3, B4.");
        Edit.ofProposal("\"links\": [\n    {\"path\": \"B2\"", "\"links\": [\n    {\"path\": \"B5\"")
                .saysOnLine(
                        25,
                        "links[0].path: nothing in this site has the id \"B5\"; a path is wanted."
                                + " Perhaps \"B1\" is meant. Known here: P1, F1, F2, W1, G1, C1, B1, B2, B3, B4.");
        Edit.ofProposal("\"level\": \"L2\"", "\"level\": \"L9\"")
                .says("conductors[3].to.place.level: nothing in this site has the id \"L9\"; a level is wanted."
                        + " Perhaps \"L1\" is meant. Known here: L1, L2.");
        Edit.ofProposal("{\"conductor\": \"C1\"", "{\"conductor\": \"G1\"")
                .says("conductors[1].from.conductor: nothing in this proposal has the id \"G1\"; a conductor is wanted."
                        + " Perhaps \"C1\" is meant. Known here: C1, C2, C3, C4, P1.");
    }

    @Test
    void unknownConnection() {
        Edit.ofProposal("\"connection\": \"N\"", "\"connection\": \"n\"")
                .says("conductors[1].to.connection: electrode E6 has no connection \"n\"."
                        + " Perhaps \"N\" is meant. Known here: N, S.");
        Edit.ofProposal("{\"service\": \"S2\"}", "{\"service\": \"S2\", \"connection\": \"A\"}")
                .says("links[0].to.connection: service S2 has no connection \"A\"."
                        + " Leave it out: its connections have no ids.");
    }

    @Test
    void unknownConductorOfAJoint() {
        Edit.ofProposal("[\"C1\", \"C3\"]", "[\"C1\", \"C8\"]")
                .says("joints[0].conductors[1]: there is no conductor \"C8\"."
                        + " Perhaps \"C1\" is meant. Known here: C1, C2, C3, C4, P1.");
    }

    /** Whoever takes a conductor out of a result need not mend its joints: the review tells the rest. */
    @Test
    void unknownConductorOfAJointOfAResult() {
        Edit.ofResult("\"conductors\": [\"C1\", \"C2\"]", "\"conductors\": [\"C1\", \"C9\"]")
                .isAccepted();
    }

    @Test
    void distanceBeyondTheEndOfAPath() {
        Edit.ofProposal("\"distance\": 4.5", "\"distance\": 4000")
                .saysOnLine(
                        9,
                        "conductors[0].to.distance: lies beyond the end of W1, which is 36.00 ft long."
                                + " Measure along its line, from the first vertex on.");
        Edit.ofProposal("\"distance\": 4.5", "\"distance\": 36").isAccepted();
    }

    @Test
    void jointThatNothingElseNames() {
        Edit.ofProposal("{\"joint\": \"J1\"}", "{\"joint\": \"J2\"}")
                .says("conductors[2].from: no joint has the id \"J2\", and no other end names it."
                        + " Perhaps \"J1\" is meant. Known here: J1, anywhere.");
        Edit.ofProposal("\"from\": {\"joint\": \"anywhere\"}", "\"from\": {\"service\": \"S1\"}")
                .saysOnLine(
                        22,
                        "conductors[4].from: no joint has the id \"anywhere\", and no other end names it."
                                + " Known here: J1.");
        Edit.ofProposal("{\"joint\": \"J1\"}", "{\"joint\": \"\"}")
                .says("conductors[2].from.joint: must not be empty. Give the id of the joint.");
    }

    @Test
    void endOfNoKindOrOfTwo() {
        Edit.ofProposal("{\"electrode\": \"E7\"}", "{}").says("conductors[2].to: says nothing. " + ONE);
        Edit.ofProposal("{\"electrode\": \"E7\"}", "{\"electrode\": \"E7\", \"path\": \"F1\"}")
                .says("conductors[2].to: says electrode and path at once. " + ONE);
        Edit.ofProposal("{\"electrode\": \"E7\"}", "\"E7\"")
                .says("conductors[2].to: must be an object, not a text. Write { ... }.");
        Edit.ofProposal(", \"to\": {\"electrode\": \"E7\"}", "").says("conductors[2].to: is missing. " + ONE);
        Edit.ofProposal("{\"electrode\": \"E7\"}", "{\"electrode\": \"E7\", \"distance\": 3}")
                .says("conductors[2].to.distance: is not a field of end of conductor C3."
                        + " Known here: electrode, connection, evidence.");
        Edit.ofProposal(", \"at\": 20", "")
                .says("conductors[1].from.at: is missing."
                        + " Give the distance from the from end of that conductor in ft.");
        Edit.ofProposal("\"at\": 20", "\"at\": -20")
                .says("conductors[1].from.at: must not be negative. Write 0 or more.");
        Edit.ofProposal("\"distance\": 4.5", "\"distance\": -4.5")
                .says("conductors[0].to.distance: must not be negative. Write 0 or more.");
    }

    @Test
    void wordOrSizeThatDoesNotExist() {
        Edit.ofProposal("\"3/0 AWG\"", "\"3/0\"")
                .says("conductors[0].size: there is no size \"3/0\". Perhaps \"3/0 AWG\" is meant.");
        Edit.ofProposal("\"size\": \"6 AWG\", ", "")
                .says("conductors[2].size: is missing. Give its size, such as \"3/0 AWG\".");
        Edit.ofProposal("\"aluminum\"", "\"aluminium\"")
                .says("conductors[1].material: \"aluminium\" is not a word known here."
                        + " Perhaps \"aluminum\" is meant. Known here: copper, aluminum.");
        Edit.ofProposal("\"ferrous-raceway\"", "\"conduit\"")
                .says("conductors[0].protection: \"conduit\" is not a word known here."
                        + " Known here: none, raceway, ferrous-raceway, buried.");
        Edit.ofProposal("\"mechanical\"", "\"mechanic\"")
                .says("joints[0].method: \"mechanic\" is not a word known here. Perhaps \"mechanical\" is meant."
                        + " Known here: exothermic, irreversible, busbar, mechanical.");
        Edit.ofProposal(", \"method\": \"exothermic\"", "")
                .says("joints[2].method: is missing."
                        + " Write \"exothermic\", \"irreversible\", \"busbar\" or \"mechanical\".");
        Edit.ofProposal("\"conductors\": [\"C1\"], ", "")
                .says("joints[2].conductors: is missing. Give the ids of the conductors that meet there.");
        Edit.ofProposal("[\"C1\", \"C3\"]", "[\"C1\", \"C1\"]")
                .says("joints[0].conductors[1]: names the conductor \"C1\" again. Remove it.");
        Edit.ofProposal("\"lengthUnit\": \"ft\"", "\"lengthUnit\": \"in\"")
                .says("lengthUnit: \"in\" is not a unit known here. Known here: ft, m.");
        Edit.ofProposal("\"bothEndsBonded\": true", "\"bothEndsBonded\": \"yes\"")
                .says("conductors[0].bothEndsBonded: must be true or false, not a text."
                        + " Write true or false, without quotes.");
    }

    @Test
    void placeThatIsNone() {
        Edit.ofProposal("{\"level\": \"L1\", \"at\": [5, 50]}", "[5, 50]")
                .says("conductors[0].line[1]: must be an object, not a list. Write { ... }.");
        Edit.ofProposal("\"at\": [5, 50]", "\"height\": 3")
                .says("conductors[0].line[1].at: is missing. Write [x, y] in ft.");
        Edit.ofProposal("\"level\": \"L1\", \"at\": [5, 50]", "\"at\": [5, 50]")
                .says("conductors[0].line[1].level: is missing. The site has several levels; name one of L1, L2.");
        Edit.ofProposal("\"at\": [12.5, 40]", "\"at\": [12.5, 2e8]")
                .says("conductors[3].to.place.at[1]: is too large a length. Lengths are in ft, at most 1e8.");
    }

    @Test
    void conductorsThatTapInACircle() {
        String advice = " Let it end at a joint, a place, or what it lands on.";
        Edit.ofProposal("{\"conductor\": \"C1\"", "{\"conductor\": \"C2\"")
                .says("conductors[1].from: C2 taps itself." + advice);
        Edit.ofProposal("{\"service\": \"S1\", \"connection\": \"A\"}", "{\"conductor\": \"C2\", \"at\": 1}")
                .saysOnLine(14, "conductors[1].from: closes a circle of taps: C1 on C2 on C1." + advice);
        Edit third = Edit.ofProposal("{\"electrode\": \"E7\"}", "{\"conductor\": \"C1\", \"at\": 2}");
        Edit.proposal(third.text()
                        .replace("{\"service\": \"S1\", \"connection\": \"A\"}", "{\"conductor\": \"C3\", \"at\": 1}"))
                .saysOnLine(17, "conductors[2].to: closes a circle of taps: C1 on C3 on C1." + advice);
        third.isAccepted();
    }

    /** Ten thousand conductors, each tapping the next: no circle, and no end of patience. */
    @Test
    void longChainOfTapsIsNoCircle() {
        String conductor = "{\"id\": \"N%d\", \"size\": \"6 AWG\", \"from\": {\"service\": \"S1\"}, \"to\": %s}";
        int last = 10_000;
        String chain = IntStream.range(0, last)
                .mapToObj(i -> conductor.formatted(i, "{\"conductor\": \"N" + (i + 1) + "\", \"at\": 1}"))
                .collect(Collectors.joining(",\n"));
        String text = "{\"format\": \"bondspan-proposal/1\", \"conductors\": [\n" + chain + ",\n%s]}";
        Edit.proposal(text.formatted(conductor.formatted(last, "{\"electrode\": \"E7\"}")))
                .isAccepted();
        assertThatThrownBy(() -> ProposalReader.parse(
                        text.formatted(conductor.formatted(last, "{\"conductor\": \"N9999\", \"at\": 1}")),
                        "chain.proposal.json",
                        Fixtures.fullSite()))
                .hasMessage("chain.proposal.json:10002: conductors[10000].to: closes a circle of taps:"
                        + " N9999 on N10000 on N9999. Let it end at a joint, a place, or what it lands on.");
    }

    @Test
    void severalMistakesAtOnceInTheOrderOfTheFile() {
        Edit first = Edit.ofProposal("\"size\": \"6 AWG\", ", "");
        Edit.proposal(first.text().replace("\"S2\"", "\"S9\"").replace("\"at\": 20", "\"at\": true"))
                .saysAll(
                        "full.proposal.json:14: conductors[1].from.at: must be a number, not true."
                                + " Write digits without quotes and without unit, such as 12.5.",
                        "full.proposal.json:17: conductors[2].size: is missing. Give its size, such as \"3/0 AWG\".",
                        "full.proposal.json:25: links[0].to.service: nothing in this site has the id \"S9\"; a service is"
                                + " wanted. Perhaps \"S1\" is meant. Known here: S1, S2.");
    }
}
