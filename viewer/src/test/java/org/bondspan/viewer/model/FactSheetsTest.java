package org.bondspan.viewer.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.FactSheet.Fact;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.junit.jupiter.api.Test;

class FactSheetsTest {
    private final Desk timber = Sitting.solved("hall-timber.site.json");

    /** Lengths worked by hand in {@code TotalsTest}; 1,028 ft of 3/0 AWG at 518.1 lb per 1,000 ft (ASTM B8). */
    @Test
    void aConductorTellsItsLengthSizeAndWhy() {
        FactSheet sheet = FactSheets.find(timber, "C2").orElseThrow();

        assertThat(sheet.title()).isEqualTo("C2  3/0 AWG");
        assertThat(sheet.subtitle()).isEqualTo("bonding jumper");
        assertThat(sheet.facts())
                .contains(
                        new Fact("length", "1,028.00 ft"),
                        new Fact("of it", "978.00 ft plan, 47.00 ft vertical, 3.00 ft make-up"),
                        new Fact("weight", "532.61 lb"),
                        new Fact("from", "joint J1"),
                        new Fact("to", "water-main, 5.00 ft along"),
                        new Fact("serves", "water"),
                        new Fact("sections", "250.53(C), 250.66"));
        assertThat(value(sheet, "size")).contains("2,000 kcmil").contains("Table 250.66");
        assertThat(value(sheet, "run").lines())
                .hasSize(6)
                .startsWith("5, 6 at 3 ft")
                .endsWith("595, 394 at 2 ft");
    }

    /** 250.53(C) of 2020: rebar is no conductor between electrodes (public teaching pages, as in {@code code.Rule}). */
    @Test
    void rebarTellsThatItMayNotCarryAndWhere() {
        FactSheet sheet = FactSheets.find(timber, "perimeter-footing").orElseThrow();

        assertThat(sheet.subtitle()).isEqualTo("footing rebar, may not carry");
        assertThat(value(sheet, "may not carry")).contains("250.53(C)").contains("250.68(C)(3)");
    }

    @Test
    void anElectrodeTellsItsFate() {
        FactSheet bonded = FactSheets.find(timber, "footing-southwest").orElseThrow();
        assertThat(bonded.facts())
                .contains(new Fact("state", "bonded"), new Fact("calls for", "4 AWG"), new Fact("landed by", "C4"));

        FactSheet spare = FactSheets.find(timber, "footing-northeast").orElseThrow();
        assertThat(spare.facts()).contains(new Fact("state", "not needed"));
    }

    /** Four sets of 500 kcmil are 2,000 kcmil; above 1,100 Table 250.66 gives 3/0 AWG copper. */
    @Test
    void aServiceTellsItsAreaAndWhatItCallsFor() {
        FactSheet sheet = FactSheets.find(timber, "service").orElseThrow();

        assertThat(sheet.facts())
                .contains(
                        new Fact("one phase", "4 x 500 kcmil copper"),
                        new Fact("area", "2,000 kcmil"),
                        new Fact("calls for", "3/0 AWG copper, Table 250.66"),
                        new Fact("landed by", "C1"));
    }

    @Test
    void aFrameThatCarriesTellsBetweenWhat() {
        Desk steel = Sitting.solved("hall-steel.site.json");
        FactSheet sheet = FactSheets.find(steel, "hall-frame").orElseThrow();

        // From the column in the service corner to the column in the water corner, as the sample draws them.
        assertThat(value(sheet, "carries, no copper")).isEqualTo("0, 0 at 1 ft to 600, 400 at 2 ft; 250.68(C)(2)");
    }

    @Test
    void jointsRisersAreasAndBusbarsHaveFactsToo() {
        Desk plant = Sitting.solved("plant-block.site.json");

        assertThat(FactSheets.find(plant, "J1").orElseThrow().subtitle()).startsWith("joint");
        assertThat(FactSheets.find(plant, "shaft").orElseThrow().facts())
                .contains(new Fact("copper", "May run from level to level here: ground, upper."));
        assertThat(FactSheets.find(plant, "tank-room").orElseThrow().subtitle()).isEqualTo("closed area");
        assertThat(FactSheets.find(plant, "nothing of that name")).isEmpty();
    }

    /** Every item that can be picked on any level of any sample has facts. */
    @Test
    void whateverCanBePickedHasFacts() {
        for (String name :
                List.of("hall-timber", "hall-steel", "hall-joint", "plant-block", "pump-house", "workshop-metric")) {
            Desk desk = Sitting.solved(name + ".site.json");
            desk.plan().orElseThrow().pictures().values().stream()
                    .flatMap(picture -> picture.items().stream())
                    .forEach(item -> assertThat(FactSheets.find(desk, item.id()))
                            .as(name + ": " + item.id())
                            .isPresent());
        }
    }

    @Test
    void findingsAboutAThingStandWithIt() {
        Desk reviewed = Sitting.reviewed("hall-timber.site.json", "hall-timber.faulty.proposal.json");

        FactSheet near = FactSheets.find(reviewed, "near").orElseThrow();
        assertThat(near.subtitle()).isEqualTo("proposed conductor, aluminum");
        assertThat(near.facts()).anySatisfy(fact -> {
            assertThat(fact.name()).startsWith("violation ");
            assertThat(fact.value()).endsWith("250.64(A)");
        });
    }

    @Test
    void withNothingSelectedTheSiteIsDescribed() {
        assertThat(FactSheets.selected(timber).orElseThrow().title())
                .isEqualTo("Quillmarsh Depot, hall A, timber roof");
        assertThat(FactSheets.selected(Looking.select("C2").on(timber))
                        .orElseThrow()
                        .title())
                .startsWith("C2");
    }

    @Test
    void aSheetIsSpokenInOneText() {
        assertThat(FactSheets.find(timber, "C2").orElseThrow().spoken())
                .startsWith("C2  3/0 AWG, bonding jumper. length: 1,028.00 ft. of it: 978.00 ft plan");
    }

    private static String value(FactSheet sheet, String name) {
        return sheet.facts().stream()
                .filter(fact -> fact.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }
}
