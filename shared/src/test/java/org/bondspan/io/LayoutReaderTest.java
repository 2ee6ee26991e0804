package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.InstanceOfAssertFactories;
import org.bondspan.layout.Status;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayoutReaderTest {
    private static final Site SITE = SiteReader.parse(Fixtures.text("full.site.json"), "full.site.json");

    @Test
    void whatIsReadIsWrittenAgainAsItWas() {
        for (String text : new String[] {
            LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT)),
            LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.METRE)),
            LayoutWriter.toJson(Layouts.impossible()).replace("Hall 4", "Hall 3")
        }) {
            assertThat(LayoutWriter.toJson(LayoutReader.parse(text, "x.result.json", SITE)))
                    .isEqualTo(text);
        }
    }

    /** One message, whatever else does not fit. */
    @Test
    void refusesTheResultOfAnotherSite() {
        String text = LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT));
        String other = text.replace("Hall 3", "Hall 9").replace("\"S1\"", "\"S9\"");
        String message =
                "x.json:3: site: the result is of another site, \"Hall 9\", not of \"Hall 3\". Give the site of"
                        + " this result, or a result of this site";
        assertThatThrownBy(() -> LayoutReader.parse(other, "x.json", SITE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(message)
                .extracting(failure -> ((InputException) failure).problems())
                .asInstanceOf(InstanceOfAssertFactories.LIST)
                .hasSize(1);
        assertThatThrownBy(() -> ProposalReader.parse(other, "x.json", SITE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(message)
                .extracting(failure -> ((InputException) failure).problems())
                .asInstanceOf(InstanceOfAssertFactories.LIST)
                .hasSize(1);
    }

    /** One conductor of 33.33 ft of 4 AWG, 129 lb per 1000 ft (ASTM B8): 4.3 lb. What was edited is named. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"total\": 33.33     | \"total\": 10        | conductors[0].length.total: is 10.00 ft, but its parts",
                "\"plan\": 33.33      | \"plan\": 10         | conductors[0].length: is 10.00 ft without make-up, but its",
                "\"pieces\": [{\"length\": 33.33 | \"pieces\": [{\"length\": 10 | conductors[0].pieces: add up to 10.00 ft",
                "\"size\": \"4 AWG\", \"role\" | \"size\": \"2 AWG\", \"role\" | sizes: have 33.33 ft of 4 AWG, but the",
                "\"weight\": 4.3      | \"weight\": 9.3       | copper.weight: is 9.30 lb, but the conductors weigh 4.30",
                "\"copper\": {\"length\": 33.33 | \"copper\": {\"length\": 3 | copper.length: is 3.00 ft, but the conductors have 33.33",
            })
    void refusesAResultThatContradictsItself(String written, String edited, String message) {
        String text = LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT)).replaceAll("\\s+", " ");
        assertThat(text).contains(written);
        assertThatThrownBy(() -> LayoutReader.parse(text.replace(written, edited), "x.json", SITE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(message);
    }

    /** No coordinate is beyond 1e8 ft; what several runs come to can be. */
    @Test
    void readsSumsBeyondTheLimitOfCoordinates() {
        String text = LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT)).replaceAll("\\s+", " ");
        String purchase = "\"purchaseLength\": ";
        assertThat(text).contains(purchase);
        String large = text.replaceFirst(purchase + "[0-9.]+", purchase + "147100000");
        assertThat(LayoutReader.parse(large, "x.json", SITE)
                        .copper()
                        .orElseThrow()
                        .purchaseLength())
                .isEqualTo(Length.ofFeet(147_100_000));
    }

    /** A number that cannot be read is told once, and nothing is compared with what stands in for it. */
    @ParameterizedTest
    @CsvSource({
        "'\"copper\": {\"length\": 33.33', '\"copper\": {\"length\": 2000000001', copper.length",
        "'\"total\": 33.33', '\"total\": 2000000001', conductors[0].length.total",
        "'\"plan\": 33.33', '\"plan\": 2000000001', conductors[0].length.plan"
    })
    void aNumberThatCannotBeReadIsToldOnce(String written, String edited, String field) {
        String text = LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT)).replaceAll("\\s+", " ");
        assertThat(text).contains(written);
        assertThatThrownBy(() -> LayoutReader.parse(text.replace(written, edited), "x.json", SITE))
                .isInstanceOf(InputException.class)
                .hasMessage("x.json:1: " + field + ": is too large a length. Sums of lengths are in ft, at most 2e9.");
    }

    /** 20 times 1.9e9 ft, of 304.8 million nanometres each, are 1.2e19 nm: more than 64 bits hold, 9.2e18. */
    @Test
    void lengthsTooLargeToBeAddedAreRefused() {
        String text = LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT)).replaceAll("\\s+", " ");
        String piece = "{\"length\": 1.9e9, \"lowest\": 0, \"highest\": 0}, ";
        String many = text.replaceFirst("\"pieces\": \\[", "\"pieces\": [" + piece.repeat(20));
        assertThatThrownBy(() -> LayoutReader.parse(many, "x.json", SITE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("conductors[0]: has lengths too large to be added");
    }

    @Test
    void aResultThatDoesNotSayWhetherItsLeastCopperIsProvenIsNotTakenForProven() {
        String text = LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT))
                .replaceAll("\\s+", " ")
                .replace("\"best-found\"", "\"least\"");
        assertThat(statusOfLeastCopper(text)).isEqualTo(Status.LEAST);
        assertThat(statusOfLeastCopper(text.replace(", \"leastCopperStatus\": \"least\"", "")))
                .isEqualTo(Status.BEST_FOUND);
    }

    private static Status statusOfLeastCopper(String text) {
        return LayoutReader.parse(text, "x.json", SITE).cost().orElseThrow().leastCopperStatus();
    }

    @Test
    void refusesWhatTheSiteDoesNotHave() {
        String text = LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT));
        assertThatThrownBy(() -> LayoutReader.parse(text.replace("\"S1\"", "\"S9\""), "x.result.json", SITE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("nothing in this site has the id \"S9\"");
    }

    @Test
    void refusesAProposal() {
        assertThatThrownBy(() ->
                        LayoutReader.parse("{\"format\": \"bondspan-proposal/1\", \"conductors\": []}", "x.json", SITE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("bondspan-result/1");
    }
}
