package org.bondspan.io;

import org.junit.jupiter.api.Test;

/**
 * Mistakes in one field: one message with file, line, field, what is wrong and a way out. The rules are those of the
 * published format, the minimum figures in the advice those of NFPA 70, 250.52(A).
 */
class BadInputTest {
    private static final String NUMBER = "Write digits without quotes and without unit, such as 12.5.";

    @Test
    void misspeltField() {
        Edit.of("\"listed\"", "\"lsited\"")
                .says(
                        "electrodes[6].lsited: is not a field of electrode E7. Perhaps \"listed\" is meant. Known here: type,"
                                + " id, connections, rodLength, diameter, listed, resistance, evidence.");
        Edit.of("\"wastePercent\"", "\"wastepercent\"")
                .says(
                        "wastepercent: is not a field of a site. Perhaps \"wastePercent\" is meant. Known here: $schema, format,"
                                + " lengthUnit, levels, risers, services, electrodes, paths, busbars, fireLine, name, note, adoption,"
                                + " codeEdition, qualifiedPersonsOnly, existingBuilding, makeUpPerEnd, wastePercent, prices, evidence.");
        Edit.of("\"kind\": \"meter\"", "\"colour\": \"blue\"")
                .says("paths[3].breaks[0].colour: is not a field of break 1 of path W1."
                        + " Known here: distance, kind, jumper, installed, evidence.");
    }

    @Test
    void factOfAnotherType() {
        Edit.of("\"type\": \"other-listed\"", "\"type\": \"other-listed\", \"diameter\": 1")
                .says(
                        "electrodes[9].diameter: is not a field of electrode E10. Known here: type, id, connections, evidence.");
    }

    @Test
    void missingQualifyingFact() {
        Edit.of("\"rodLength\": 10, ", "")
                .says("electrodes[6].rodLength: is missing."
                        + " Give the length of the rod in ft; 250.52(A)(5) asks for at least 8 ft.");
        Edit.of("\"earthContact\": 25", "\"use\": \"domestic\"")
                .says("electrodes[0].earthContact: is missing."
                        + " Give the length in direct contact with earth in ft; 250.52(A)(1) asks for at least 10 ft.");
        Edit.of("\"diameter\": 0.5, ", "")
                .says("electrodes[3].diameter: is missing."
                        + " Give the diameter of the bar in inches; 250.52(A)(3) asks for at least 0.5.");
        Edit.of(", \"conductorSize\": \"4 AWG\"", "")
                .says("electrodes[4].conductorSize: is missing."
                        + " Give the size of the bare copper; 250.52(A)(3) asks for 4 AWG or larger.");
        Edit.of("\"thickness\": 0.06, ", "")
                .says("electrodes[8].thickness: is missing. Give the thickness in inches;"
                        + " 250.52(A)(7) asks for at least 0.25 of steel, 0.06 of nonferrous metal.");
        Edit.of("\"continuous\": true,", "")
                .saysOnLine(
                        58,
                        "paths[1].continuous: is missing."
                                + " Write true where bolts, rivets or welds join all members drawn, else false.");
        Edit.of("\"jumper\": 2.5, ", "")
                .says("paths[3].breaks[0].jumper: is missing. Give the length of the jumper around it in ft.");
    }

    @Test
    void wrongType() {
        Edit.of("\"rodLength\": 10", "\"rodLength\": \"10\"")
                .says("electrodes[6].rodLength: must be a number, not a text. " + NUMBER);
        Edit.of("\"cover\": 2", "\"cover\": true").says("electrodes[3].cover: must be a number, not true. " + NUMBER);
        Edit.of("\"coated\": false", "\"coated\": \"no\"")
                .says("electrodes[3].coated: must be true or false, not a text. Write true or false, without quotes.");
        Edit.of("\"depth\": 2.5", "\"depth\": null")
                .says("electrodes[5].depth: must be a number, not null. Leave the field out where it is not known.");
        Edit.of("\"name\": \"Hall 3\"", "\"name\": 3")
                .says("name: must be a text, not a number. Put it in double quotes.");
        Edit.of("[0, 25, 50]", "25").says("paths[1].grid.x: must be a list, not a number. Write [ ... ].");
        Edit.of("{\"height\": 10.5, \"evidence\": \"assumed\"}", "10.5")
                .says("levels[0].open: must be an object, not a number. Write { ... }.");
        Edit.of("\"size\": \"3/0 AWG\"", "\"size\": 3")
                .says("services[1].ungrounded.size: must be a text, not a number."
                        + " Write a size as \"6 AWG\", \"3/0 AWG\" or \"500 kcmil\".");
        Edit.of("\"evidence\": \"A-101\"", "\"evidence\": 7")
                .says("levels[0].evidence: must be a text, not a number. Put it in double quotes.");
    }

    @Test
    void hugeAndNegativeNumbers() {
        String tooLarge = "electrodes[6].rodLength: is too large a number. Check its digits and its exponent.";
        Edit.of("\"rodLength\": 10", "\"rodLength\": 1e999999999").says(tooLarge);
        Edit.of("\"rodLength\": 10", "\"rodLength\": 1e99999999999").says(tooLarge);
        Edit.of("\"rodLength\": 10", "\"rodLength\": -1e999999999").says(tooLarge);
        Edit.of("\"rodLength\": 10", "\"rodLength\": 100000000.1")
                .says("electrodes[6].rodLength: is too large a length. Lengths are in ft, at most 1e8.");
        Edit.of("\"rodLength\": 10", "\"rodLength\": 1e8").isAccepted();
        Edit.of("\"rodLength\": 10", "\"rodLength\": 1e-999999999").isAccepted();
        Edit.of("\"rodLength\": 10", "\"rodLength\": 0").isAccepted();
        Edit.of("\"rodLength\": 10", "\"rodLength\": -10")
                .says("electrodes[6].rodLength: must not be negative. Write 0 or more.");
        Edit.of("\"jumper\": 2.5", "\"jumper\": -2.5")
                .says("paths[3].breaks[0].jumper: must not be negative. Write 0 or more.");
        Edit.of("\"wastePercent\": 7.5", "\"wastePercent\": -1")
                .says("wastePercent: must not be negative. Write 0 or more.");
        Edit.of("\"makeUpPerEnd\": 3", "\"makeUpPerEnd\": -3")
                .says("makeUpPerEnd: must not be negative. Write 0 or more.");
        Edit.of("\"length\": 62.5", "\"length\": 0")
                .says("paths[0].length: must be more than 0. Give the measured length in ft, or leave it out.");
        Edit.of("[10, 10]", "[10, 2e8]")
                .says("risers[0].at[1]: is too large a length. Lengths are in ft, at most 1e8.");
    }

    @Test
    void unknownWord() {
        Edit.of("\"material\": \"copper\"", "\"material\": \"coper\"")
                .says("services[0].ungrounded.material: \"coper\" is not a word known here."
                        + " Perhaps \"copper\" is meant. Known here: copper, aluminum.");
        Edit.of("\"medium\": \"roof-deck\"", "\"medium\": \"roofdeck\"")
                .says(
                        "paths[8].medium: \"roofdeck\" is no medium of a path. Perhaps \"roof-deck\" is meant. Known here:"
                                + " copper, structural-frame, water-pipe, ring, conductor, footing-rebar, gas-pipe, roof-deck, other.");
        Edit.of("\"type\": \"rod\"", "\"type\": \"Rods\"")
                .says(
                        "electrodes[6].type: \"Rods\" is no type of electrode. Perhaps \"rod\" is meant. Known here: water-pipe,"
                                + " in-ground-metal, concrete-encased, ring, rod, pipe, plate, other-listed,"
                                + " other-underground-metal, gas-pipe, aluminum, pool-steel.");
        Edit.of("\"means\": \"tie-wire\"", "\"means\": \"tiewire\"")
                .says("electrodes[3].tiedToFrame.means: \"tiewire\" is not a word known here."
                        + " Perhaps \"tie-wire\" is meant. Known here: weld, exothermic, tie-wire, wet-set.");
        Edit.of("\"lengthUnit\": \"ft\"", "\"lengthUnit\": \"feet\"")
                .says("lengthUnit: \"feet\" is not a unit known here. Known here: ft, m.");
        Edit.of("\"codeEdition\": 2023", "\"codeEdition\": 2019")
                .says(
                        "codeEdition: 2019 is not an edition of NFPA 70 known here. Write one of 2014, 2017, 2020, 2023.");
        Edit.of("bondspan-site/1", "bondspan-result/1")
                .says("format: is not \"bondspan-site/1\". Write \"bondspan-site/1\" if this is a site file.");
    }

    @Test
    void sizeThatDoesNotExist() {
        Edit.of("\"3/0 AWG\"", "\"3/0\"")
                .says("services[1].ungrounded.size: there is no size \"3/0\". Perhaps \"3/0 AWG\" is meant.");
        Edit.of("\"500 kcmil\"", "\"500 MCM\"")
                .says("services[0].ungrounded.size: there is no size \"500 MCM\". Perhaps \"500 kcmil\" is meant.");
        Edit.of("\"4 AWG\"", "\"#4\"")
                .says("electrodes[4].conductorSize: there is no size \"#4\". Perhaps \"4 AWG\" is meant.");
        Edit.of("\"3/0 AWG\"", "\"5 AWG\"")
                .says(
                        "services[1].ungrounded.size: there is no size \"5 AWG\". Sizes are 14 AWG, 12 AWG, 10 AWG, 8 AWG,"
                                + " 6 AWG, 4 AWG, 3 AWG, 2 AWG, 1 AWG, 1/0 AWG, 2/0 AWG, 3/0 AWG, 4/0 AWG, 250 kcmil, 300 kcmil,"
                                + " 350 kcmil, 400 kcmil, 500 kcmil, 600 kcmil, 700 kcmil, 750 kcmil, 800 kcmil, 900 kcmil,"
                                + " 1000 kcmil, 1250 kcmil, 1500 kcmil, 1750 kcmil, 2000 kcmil.");
    }

    @Test
    void absurdNumberOfSets() {
        String range = "services[0].ungrounded.sets: must be from 1 to 1000."
                + " Give the number of conductors in parallel per phase.";
        Edit.of("\"sets\": 4", "\"sets\": 0").says(range);
        Edit.of("\"sets\": 4", "\"sets\": -4").says(range);
        Edit.of("\"sets\": 4", "\"sets\": 1001").says(range);
        Edit.of("\"sets\": 4", "\"sets\": 1.5")
                .says("services[0].ungrounded.sets: must be a whole number. Write it without fraction.");
        Edit.of("\"sets\": 4", "\"sets\": 4.0").isAccepted();
    }

    @Test
    void keyWrittenTwice() {
        Edit.of("\"id\": \"E8\",", "\"id\": \"E8\",\n\"id\": \"E9\",")
                .saysOnLine(
                        47,
                        "electrodes[7].id: is written twice in one object, first on line 46. Remove one of the two.");
        Edit.of("\"note\":", "\"name\":")
                .says("name: is written twice in one object, first on line 4. Remove one of the two.");
    }

    @Test
    void idUsedTwice() {
        Edit.of("\"id\": \"E8\"", "\"id\": \"E7\"")
                .says("electrodes[7].id: the id \"E7\" is used twice: electrodes[6].id on line 44 has it too."
                        + " Give one of them another id.");
        Edit.of("\"id\": \"MGB\"", "\"id\": \"K\"")
                .says("busbars[0].id: the id \"K\" is used twice: levels[0].closedAreas[0].id on line 19 has it too."
                        + " Give one of them another id.");
        Edit.of("\"id\": \"S\", \"level\"", "\"id\": \"N\", \"level\"")
                .says("electrodes[5].connections[1].id: the id \"N\" is used twice here. Give it another id.");
        Edit.of("\"id\": \"E8\"", "\"id\": \" \"")
                .says("electrodes[7].id: must not be empty. Give it an id of its own.");
    }

    @Test
    void unknownReference() {
        Edit.of("\"level\": \"L1\", \"at\": [99, 5]", "\"level\": \"L3\", \"at\": [99, 5]")
                .says("electrodes[1].connections[0].level: nothing in this site has the id \"L3\"; a level is wanted."
                        + " Perhaps \"L1\" is meant. Known here: L1, L2.");
        Edit.of("\"frame\": \"F1\"}", "\"frame\": \"W1\"}")
                .says("electrodes[2].frame: \"W1\" is a path of another medium, not a structural frame."
                        + " Perhaps \"F1\" is meant. Known here: F1, F2.");
        Edit.of("\"electrode\": \"E6\"", "\"electrode\": \"E7\"")
                .says("paths[4].electrode: \"E7\" is an electrode of another type, not a ring electrode."
                        + " Perhaps \"E6\" is meant. Known here: E6.");
        Edit.of("\"electrode\": \"E1\"", "\"electrode\": \"E7\"")
                .says("paths[3].electrode: \"E7\" is an electrode of another type, not a water-pipe"
                        + " electrode. Perhaps \"E1\" is meant. Known here: E1, E2.");
        Edit.of(", \"electrode\": \"E1\"", ", \"electrode\": \"E01\"")
                .says("paths[3].electrode: nothing in this site has the id \"E01\"; a water-pipe electrode is wanted."
                        + " Perhaps \"E1\" is meant. Known here: E1, E2.");
        Edit.of("[\"L1\", \"L2\"]", "[\"L1\", \"roof\"]")
                .says("risers[0].levels[1]: nothing in this site has the id \"roof\"; a level is wanted."
                        + " Known here: L1, L2.");
    }

    @Test
    void levelLeftOutWhereThereAreSeveral() {
        Edit.of("\"level\": \"L1\", \"at\": [99, 5]", "\"at\": [99, 5]")
                .says(
                        "electrodes[1].connections[0].level: is missing. The site has several levels; name one of L1, L2.");
        Edit.of("\"levels\": [\"L2\"], ", "").says("paths[2].levels: is missing. Name its levels, of L1, L2.");
    }

    @Test
    void riserThatJoinsNothing() {
        Edit.of("[\"L1\", \"L2\"]", "[\"L1\"]")
                .says("risers[0].levels: names fewer than two levels. Name the levels that the riser joins.");
        Edit.of("[\"L1\", \"L2\"]", "[]").says("risers[0].levels: is empty. Name its levels, of L1, L2.");
        Edit.of("[\"L1\", \"L2\"]", "[\"L1\", \"L2\", \"L1\"]")
                .says("risers[0].levels[2]: names the level \"L1\" again. Remove it.");
    }

    @Test
    void severalMistakesAtOnceInTheOrderOfTheFile() {
        Edit first = Edit.of("\"sets\": 4", "\"sets\": 0");
        new Edit(first.text().replace("\"id\": \"E8\"", "\"id\": \"E7\"").replace("\"note\"", "\"noet\""), 0)
                .saysAll(
                        "full.site.json:5: noet: is not a field of a site. Perhaps \"note\" is meant. Known here: $schema,"
                                + " format, lengthUnit, levels, risers, services, electrodes, paths, busbars, fireLine, name,"
                                + " note, adoption, codeEdition, qualifiedPersonsOnly, existingBuilding, makeUpPerEnd,"
                                + " wastePercent, prices, evidence.",
                        "full.site.json:25: services[0].ungrounded.sets: must be from 1 to 1000."
                                + " Give the number of conductors in parallel per phase.",
                        "full.site.json:46: electrodes[7].id: the id \"E7\" is used twice: electrodes[6].id on line 44 has it"
                                + " too. Give one of them another id.");
    }

    @Test
    void siteWithoutLevelsOrServices() {
        new Edit("{\"format\": \"bondspan-site/1\",\n\"services\": []}", 0)
                .saysAll(
                        "full.site.json:1: levels: is missing. A site has at least one of them.",
                        "full.site.json:2: services: is empty. A site has at least one of them.");
        new Edit("{}", 0)
                .saysAll(
                        "full.site.json:1: format: is missing. Write \"format\": \"bondspan-site/1\".",
                        "full.site.json:1: levels: is missing. A site has at least one of them.",
                        "full.site.json:1: services: is missing. A site has at least one of them.");
    }
}
