package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.bondspan.site.Site;
import org.bondspan.units.LengthUnit;
import org.junit.jupiter.api.Test;

class LayoutReaderTest {
    private static final Site SITE = SiteReader.parse(Fixtures.text("full.site.json"), "full.site.json");

    @Test
    void whatIsReadIsWrittenAgainAsItWas() {
        for (String text : new String[] {
            LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT)),
            LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.METRE)),
            LayoutWriter.toJson(Layouts.impossible())
        }) {
            assertThat(LayoutWriter.toJson(LayoutReader.parse(text, "x.result.json", SITE)))
                    .isEqualTo(text);
        }
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
