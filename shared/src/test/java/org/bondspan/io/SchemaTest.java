package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.bondspan.units.LengthUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reader and writer against the published schemas, by an independent validator of JSON Schema 2020-12. */
class SchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @ParameterizedTest
    @ValueSource(strings = {"full.site.json", "smallest.site.json", "metric.site.json"})
    void sitesThatTheReaderAcceptsAreValid(String name) {
        assertThat(SiteReader.parse(Fixtures.text(name), name)).isNotNull();
        assertThat(errors("site", Fixtures.text(name))).isEmpty();
    }

    @Test
    void resultsAreValid() {
        assertThat(errors("result", LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT))))
                .isEmpty();
        assertThat(errors("result", LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.METRE))))
                .isEmpty();
        assertThat(errors("result", LayoutWriter.toJson(Layouts.impossible()))).isEmpty();
    }

    /** The prices of the full site, as a price book of their own. */
    @Test
    void priceBooksThatTheReaderAcceptsAreValid() {
        String site = Fixtures.text("full.site.json");
        String fields = site.substring(site.indexOf("\"name\": \"Office\""), site.lastIndexOf('}', site.length() - 3));
        String book = "{\"format\": \"bondspan-prices/1\", \"lengthUnit\": \"m\", " + fields + "}";
        assertThat(PriceReader.parse(book, "office.prices.json").name()).isEqualTo("Office");
        assertThat(errors("prices", book)).isEmpty();
        assertThat(errors("prices", book.replace("perPound", "perKilogram"))).isNotEmpty();
        assertThat(errors("prices", book.replace("prices/1", "prices/2"))).isNotEmpty();
    }

    @Test
    void resultWithAnUnknownFieldOrWithoutOneIsNotValid() {
        String result = LayoutWriter.toJson(Layouts.impossible());
        assertThat(errors("result", result.replace("\"joints\"", "\"joint\""))).isNotEmpty();
        assertThat(errors("result", result.replace("\"impossible\"", "\"perfect\"")))
                .isNotEmpty();
    }

    @Test
    void reviewsAreValid() {
        assertThat(errors("review", ReviewWriter.toJson(Reviews.ofEverything(LengthUnit.FOOT))))
                .isEmpty();
        assertThat(errors("review", ReviewWriter.toJson(Reviews.ofEverything(LengthUnit.METRE))))
                .isEmpty();
        assertThat(errors("review", ReviewWriter.toJson(Reviews.ofNothing()))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "verdict, decision",
        "violates, fails",
        "violation, warning",
        "neededFor, purpose",
        "thinnest, smallest",
        "aluminum, brass",
        "6 AWG, 5 AWG",
        "33.33, -33.33",
        "false, null"
    })
    void alteredReviewIsNotValid(String piece, String other) {
        String review = ReviewWriter.toJson(Reviews.ofEverything(LengthUnit.FOOT));
        assertThat(review).contains(piece);
        assertThat(errors("review", review.replace(piece, other))).isNotEmpty();
    }

    @Test
    void proposalsThatTheReaderAcceptsAreValid() {
        Edit.ofProposal("", "").isAccepted();
        assertThat(errors("proposal", Fixtures.text(Edit.PROPOSAL))).isEmpty();
        assertThat(errors("proposal", "{\"format\": \"bondspan-proposal/1\", \"conductors\": []}"))
                .isEmpty();
    }

    /** A result has a schema of its own, although it is read as a proposal. */
    @Test
    void resultIsNoProposalToTheSchema() {
        String result = LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT));
        assertThat(errors("proposal", result)).isNotEmpty();
        assertThat(errors("result", Fixtures.text(Edit.PROPOSAL))).isNotEmpty();
    }

    /** Piece of the full proposal, and what replaces it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            nullValues = "-",
            value = {
                "\"format\": \"bondspan-proposal/1\", | -",
                "bondspan-proposal/1 | bondspan-proposal/2",
                "\"lengthUnit\": \"ft\" | \"lengthUnit\": \"feet\"",
                "\"lengthUnit\": \"ft\" | \"status\": \"least\"",
                "\"conductors\": [ | \"conductor\": [",
                "\"id\": \"C3\", | -",
                "\"id\": \"C3\" | \"id\": \" \"",
                "\"size\": \"6 AWG\", | -",
                "\"6 AWG\" | \"5 AWG\"",
                "\"aluminum\" | \"steel\"",
                "\"ferrous-raceway\" | \"conduit\"",
                "\"length\": 52.25 | \"length\": -1",
                "\"length\": 52.25 | \"length\": {\"total\": 52.25}",
                "\"outdoors\": true | \"outdoors\": 1",
                "\"outdoors\": true | \"role\": \"bonding-jumper\"",
                "\"bothEndsBonded\" | \"bonded\"",
                "\"exposedToDamage\": true | \"exposedToDamage\": null",
                "{\"electrode\": \"E7\"} | {}",
                "{\"electrode\": \"E7\"} | \"E7\"",
                "{\"electrode\": \"E7\"} | {\"electrode\": \"E7\", \"path\": \"F1\"}",
                "{\"electrode\": \"E7\"} | {\"electrode\": \"E7\", \"distance\": 3}",
                ", \"to\": {\"electrode\": \"E7\"} | -",
                ", \"at\": 20 | -",
                "\"at\": 20 | \"at\": -20",
                "\"distance\": 4.5 | \"distance\": -4.5",
                "{\"joint\": \"J1\"} | {\"joint\": \"\"}",
                "{\"level\": \"L1\", \"at\": [5, 50]} | [5, 50]",
                "\"at\": [5, 50] | \"height\": 3",
                "\"at\": [5, 50] | \"at\": [5, 50, 3]",
                "\"at\": [5, 50] | \"at\": [5, 2e8]",
                "\"path\": \"B2\", \"from\" | \"from\"",
                ", \"to\": {\"service\": \"S2\"} | -",
                "\"evidence\": \"photo 3\" | \"medium\": \"gas-pipe\"",
                "\"evidence\": \"photo 3\" | \"evidence\": 3",
                "\"mechanical\" | \"clamp\"",
                ", \"method\": \"exothermic\" | -",
                "\"conductors\": [\"C1\"], | -",
                "[\"C1\", \"C3\"] | [\"C1\", \"C1\"]",
                "[\"C1\", \"C3\"] | \"C1\"",
            })
    void structuralMistakesInProposalsAreRefusedByReaderAndSchema(String piece, @Nullable String other) {
        Edit edit = Edit.ofProposal(piece, other == null ? "" : other);
        assertThat(errors("proposal", edit.text()))
                .as("schema on %s -> %s", piece, other)
                .isNotEmpty();
        assertThatThrownBy(edit::isAccepted)
                .as("reader on %s -> %s", piece, other)
                .isInstanceOf(InputException.class);
    }

    @Test
    void exampleOfTheProposalSchemaIsAProposal() {
        String example = lastExample("proposal");
        String site = """
                {"format": "bondspan-site/1", "levels": [{"id": "L1", "outline": [[0, 0], [20, 0], [20, 20], [0, 20]]}],
                 "services": [{"id": "S1", "ungrounded": {"material": "copper", "size": "2 AWG", "sets": 1},
                   "connections": [{"at": [0, 0], "height": 4}]}],
                 "electrodes": [
                   {"id": "E1", "type": "rod", "rodLength": 8, "diameter": 0.625, "connections": [{"at": [12, 0]}]},
                   {"id": "E2", "type": "rod", "rodLength": 8, "diameter": 0.625, "connections": [{"at": [6, 8]}]}]}
                """;
        assertThat(ProposalReader.parse(example, "example.proposal.json", SiteReader.parse(site, "a.site.json"))
                        .conductors())
                .hasSize(2);
        assertThat(errors("proposal", example)).isEmpty();
    }

    /** Piece of the full site, and what replaces it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            nullValues = "-",
            value = {
                "\"format\": \"bondspan-site/1\", | -",
                "bondspan-site/1 | bondspan-site/2",
                "\"lengthUnit\": \"ft\" | \"lengthUnit\": \"feet\"",
                "\"codeEdition\": 2023 | \"codeEdition\": 2019",
                "\"codeEdition\": 2023 | \"codeEdition\": \"2023\"",
                "\"fireLine\": \"bond-only\", | -",
                "\"fireLine\": \"bond-only\" | \"fireLine\": \"bond\"",
                "\"makeUpPerEnd\": 3 | \"makeUpPerEnd\": -3",
                "\"wastePercent\": 7.5 | \"wastePercent\": \"7.5\"",
                "\"name\": \"Hall 3\" | \"name\": null",
                "\"note\" | \"noet\"",
                "[[0, 0], [100, 0], [100, 60], [0, 60], [0, 0]] | [[0, 0], [100, 0]]",
                "[[0, 0], [100, 0], [100, 60], [0, 60], [0, 0]] | [[0, 0], [100, 0, 5], [100, 60]]",
                "{\"height\": 10.5, \"evidence\": \"assumed\"} | {}",
                "{\"height\": 10.5, \"evidence\": \"assumed\"} | true",
                "\"evidence\": \"A-102\" | \"proof\": \"A-102\"",
                "[\"L1\", \"L2\"] | [\"L1\"]",
                "[\"L1\", \"L2\"] | [\"L1\", \"L1\"]",
                "\"supply\": \"lateral 2\", | -",
                "\"size\": \"3/0 AWG\" | \"size\": \"3/0\"",
                "\"size\": \"3/0 AWG\" | \"size\": \"5 AWG\"",
                "\"sets\": 4 | \"sets\": 0",
                "\"sets\": 4 | \"sets\": 1.5",
                "\"sets\": 4, | -",
                "\"material\": \"copper\" | \"material\": \"Copper\"",
                "\"at\": [99, 5] | \"at\": [99]",
                "\"at\": [99, 5] | \"at\": [99, 2e8]",
                "\"fromEntrance\": 2 | \"fromEntrance\": -2",
                "\"earthContact\": 25 | \"use\": \"domestic\"",
                ", \"frame\": \"F1\"} | }",
                "\"type\": \"rod\", | -",
                "\"type\": \"rod\" | \"type\": \"rods\"",
                "\"type\": \"rod\" | \"type\": \"pipe\"",
                "\"rodLength\": 10, | -",
                "\"rodLength\": 10 | \"rodLength\": -1",
                "\"diameter\": 0.5, | -",
                "\"conductorSize\": \"4 AWG\", | -",
                "\"coated\": false | \"coated\": 0",
                "\"means\": \"tie-wire\" | \"means\": \"glue\"",
                "\"material\": \"nonferrous\" | \"material\": \"brass\"",
                "\"type\": \"gas-pipe\" | \"type\": \"gas-pipe\", \"diameter\": 1",
                "\"connections\": [{\"level\": \"L1\", \"at\": [100, 60]}] | \"connections\": []",
                ", \"connections\": [{\"level\": \"L1\", \"at\": [100, 30]}] | -",
                "\"medium\": \"roof-deck\" | \"medium\": \"deck\"",
                "[[5, 5], [5, 30], [20, 30, 12]] | [[5, 5]]",
                "[[5, 5], [5, 30], [20, 30, 12]] | [[5, 5], [5, 30, 1, 2]]",
                "\"length\": 62.5 | \"length\": 0",
                "\"columns\": [[70, 0], [80, 0]] | \"grid\": {\"x\": [1], \"y\": [1]}",
                "\"grid\": {\"x\": [0, 25, 50], \"y\": [0, 30], \"evidence\": \"S-101\"}, | -",
                "[0, 25, 50] | []",
                "\"continuous\": true, | -",
                "\"mayCarry\": false | \"mayCarry\": \"false\"",
                "\"jumper\": 2.5, | -",
                "\"electrode\": \"E6\", | -",
                "\"medium\": \"ring\" | \"medium\": \"ring\", \"size\": \"2 AWG\"",
                "\"size\": \"2 AWG\" | \"size\": 2",
                "\"crossing\": 145.5 | \"crossing\": -1",
                "\"crossing\": 145.5 | \"crossing\": 145.555",
                "[[30, 0], [30, 60]] | [[30, 0]]",
                "[[30, 0], [30, 60]] | [[30, 0], [30, 60, 9]]",
                "\"currency\": \"USD\" | \"currency\": \"dollars\"",
                "\"perPound\": 4.5, | -",
                "\"ratio\": 1.2, | -",
                "\"ratio\": 1.2 | \"ratio\": 101",
                "\"date\": \"2025-01-31\", | -",
                "\"date\": \"2025-01-31\" | \"date\": \" \"",
                "\"perHour\": 80, | -",
                "\"perHour\": 80 | \"perHour\": \"80\"",
                "\"per1000ft\": 3000.25 | \"per1000ft\": 3000.255",
                "\"exposed\": 24 | \"exposed\": -24",
                "\"exposed\": 24 | \"open\": 24",
                "\"reel\": 500 | \"reel\": 0",
                "\"description\": \"PVC\" | \"kind\": \"PVC\"",
                "\"rod-clamp\" | \"rod\"",
                "\"price\": 6 | \"price\": 2e7",
                "{\"hours\": 0.5} | 0.5",
                "\"above\": 10, | -",
                ", \"factor\": 1.1 | -",
                "\"id\": \"MGB\", | -",
                "\"id\": \"MGB\" | \"id\": \" \"",
            })
    void structuralMistakesAreRefusedByReaderAndSchema(String piece, @Nullable String other) {
        String text = Edit.of(piece, other == null ? "" : other).text();
        assertThat(errors("site", text)).as("schema on %s -> %s", piece, other).isNotEmpty();
        assertThatThrownBy(() -> SiteReader.parse(text, Edit.FILE))
                .as("reader on %s -> %s", piece, other)
                .isInstanceOf(InputException.class);
    }

    @Test
    void examplesOfTheSiteSchemaAreValidSites() {
        String example = lastExample("site");
        assertThat(SiteReader.parse(example, "example.site.json").name()).isEqualTo("Pump house");
        assertThat(errors("site", example)).isEmpty();
    }

    private static String lastExample(String name) {
        String schema = Schemas.find(name).orElseThrow();
        int from = schema.indexOf('{', schema.lastIndexOf("\"examples\""));
        return schema.substring(from, schema.lastIndexOf(']')).strip();
    }

    @Test
    void schemasAreSchemas() {
        for (String name : Schemas.names()) {
            Schema metaSchema = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
            assertThat(metaSchema.validate(Schemas.find(name).orElseThrow(), InputFormat.JSON))
                    .isEmpty();
        }
        assertThat(Schemas.find("plan")).isEmpty();
    }

    /** What an independent validator finds wrong with a text. */
    static List<Error> errors(String schema, String text) {
        return REGISTRY.getSchema(Schemas.find(schema).orElseThrow()).validate(text, InputFormat.JSON);
    }
}
