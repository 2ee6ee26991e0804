package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.units.LengthUnit;
import org.junit.jupiter.api.Test;

class LayoutWriterTest {
    /** 33 1/3 ft of bare 4 AWG copper: 128.9 lb per 1000 ft (ASTM B8, as the published format gives it) is 4.297 lb. */
    @Test
    void writesEveryFieldInTheOrderOfTheFormat() {
        assertThat(LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.FOOT)))
                .isEqualTo(Fixtures.text("everything.result.json"));
    }

    /** 33 1/3 ft are 10.16 m, 4.29667 lb are 1.94894 kg: 0.3048 m a foot, 0.45359237 kg a pound. */
    @Test
    void writesMetresAndKilogramsForMetricSites() {
        assertThat(LayoutWriter.toJson(Layouts.ofEverything(LengthUnit.METRE)))
                .contains("\"lengthUnit\": \"m\"")
                .contains("\"weight\": 1.95,")
                .contains("\"at\": [10.16, 0],")
                .contains("\"height\": 1.22")
                .doesNotContain("33.33");
    }

    @Test
    void writesNullForWhatAnImpossibleSiteHasNot() {
        assertThat(LayoutWriter.toJson(Layouts.impossible()))
                .contains("\"status\": \"impossible\",\n  \"copper\": null,\n  \"sizes\": [],\n  \"lowerBound\": null,")
                .contains("\"links\": [],");
    }
}
