package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.io.SiteReader;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Objective;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.usecase.Question.Leave;
import org.junit.jupiter.api.Test;

/** What if: lengths by hand on a floor of 100 by 10 ft, service in one corner, rods at 10 and 100 ft. */
class QuestionTest {
    private static final String RODS = """
            "services": [{"id": "S", $copper(500 kcmil), $at(0, 0)}],
            "electrodes": [{"id": "R1", $rod, $at(0, 10)}, {"id": "R2", $rod, $at(100, 0)}%s],
            "paths": [%s]""";

    private static Site site(String electrodes, String paths) {
        return SiteReader.parse(Sites.openFloor(100, 10, RODS.formatted(electrodes, paths)), "test");
    }

    private static Question ask(Site site, Leave frame, Leave supervision, Leave ring) {
        return new Question(frame, supervision, ring, site.codeEdition(), Objective.COPPER);
    }

    private static Length copper(Site site, Question question) {
        return RouteSite.of(site, question, RouteLimits.none())
                .copper()
                .map(Copper::length)
                .orElseThrow();
    }

    @Test
    void asDrawnIsTheSiteItself() {
        Site site = site("", "");
        assertThat(Question.asDrawn(site).suppose(site)).isEqualTo(site);
        assertThat(Question.asDrawn(site).suppositions(site)).isEmpty();
    }

    /** A beam from service to rod 2 saves the 100 ft between: 10 ft to rod 1 are left. */
    @Test
    void forbiddingTheFrameCostsTheRunThatItSaved() {
        Site site = site("", """
                {"id": "F", "medium": "structural-frame", "continuous": true, "columns": [[0, 0], [100, 0]],
                 "beams": [[[0, 0], [100, 0]]], "bottom": 0, "top": 0, "beamHeight": 0}""");
        assertThat(copper(site, Question.asDrawn(site))).isEqualTo(Length.ofFeet(10));
        Question without = ask(site, Leave.DENIED, Leave.AS_DRAWN, Leave.AS_DRAWN);
        assertThat(copper(site, without)).isEqualTo(Length.ofFeet(110));
        assertThat(without.suppositions(site)).containsExactly("supposed: F may not carry (250.68(C)(2))");
        assertThat(ask(without.suppose(site), Leave.GIVEN, Leave.AS_DRAWN, Leave.AS_DRAWN)
                        .suppose(without.suppose(site)))
                .isEqualTo(site);
    }

    /** A pipe from x = 100 to the service: 5 ft of it carry, or all 100 where it is exposed under supervision. */
    @Test
    void supervisionLetsExposedPipeCarryFurtherIn() {
        Site site = site(", {\"id\": \"W\", $water, $at(100, 0)}", """
                {"id": "main", "medium": "water-pipe", "electrode": "W", "exposed": true, "line": [[100, 0], [0, 0]]}""");
        Question supervised = ask(site, Leave.AS_DRAWN, Leave.GIVEN, Leave.AS_DRAWN);
        assertThat(copper(site, Question.asDrawn(site)).minus(copper(site, supervised)))
                .isEqualTo(Length.ofFeet(95));
        assertThat(supervised.suppositions(site)).singleElement().asString().contains("250.68(C)(1)");
    }

    /** The ring is the electrode at both of its connections; with leave it also joins them. */
    @Test
    void aRingJoinsElectrodesOnlyWithLeave() {
        Site site =
                site("""
                , {"id": "G", "type": "ring", "conductorSize": "4/0 AWG", "conductorLength": 120, "depth": 2.5,
                   "connections": [{"id": "a", "at": [0, 0]}, {"id": "b", "at": [100, 0]}]}""", "{\"id\": \"loop\", \"medium\": \"ring\", \"electrode\": \"G\", \"mayInterconnect\": true}");
        Question without = ask(site, Leave.AS_DRAWN, Leave.AS_DRAWN, Leave.DENIED);
        assertThat(copper(site, Question.asDrawn(site))).isEqualTo(Length.ofFeet(10));
        assertThat(copper(site, without)).isEqualTo(Length.ofFeet(110));
        assertThat(without.suppositions(site)).containsExactly("supposed: loop may not carry (250.53(C))");
    }

    @Test
    void tellsAnotherEdition() {
        Site site = site("", "");
        Question older =
                new Question(Leave.AS_DRAWN, Leave.AS_DRAWN, Leave.AS_DRAWN, CodeEdition.NEC_2017, Objective.COPPER);
        assertThat(older.suppose(site).codeEdition()).isEqualTo(CodeEdition.NEC_2017);
        assertThat(older.suppositions(site)).containsExactly("supposed: edition 2017 in place of 2020");
    }
}
