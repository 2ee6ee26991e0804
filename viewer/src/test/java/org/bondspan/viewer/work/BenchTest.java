package org.bondspan.viewer.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.bondspan.site.PlanPoint;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.Measurement;
import org.bondspan.viewer.model.ThingRow;
import org.bondspan.viewer.model.Totals;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.state.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchTest {
    private static final long FOOT = 304_800_000L;

    @TempDir
    Path directory;

    @Test
    void aSiteIsShownAsDrawnBeforeItIsAnswered() {
        try (Sitting sitting = new Sitting()) {
            sitting.bench().open(Sitting.sample("hall-timber.site.json"));
            sitting.next();
            Desk read = sitting.next();

            assertThat(read.opened()).isPresent();
            assertThat(read.answer()).isEmpty();
            assertThat(read.plan().orElseThrow().pictures().values())
                    .singleElement()
                    .satisfies(picture -> assertThat(picture.items()).isNotEmpty());
            assertThat(read.plan().orElseThrow().layout()).as("no answer yet").isEmpty();
            assertThat(state(read, "water")).isEqualTo("to be bonded");
            assertThat(state(sitting.settle(), "water")).isEqualTo("bonded");
        }
    }

    private static String state(Desk desk, String id) {
        return ThingRow.rows(desk).stream()
                .filter(row -> row.id().equals(id))
                .map(ThingRow::state)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aWrongFileIsToldWithPlaceAndAdviceAndTheOpenedSiteStays() throws IOException {
        Path wrong = directory.resolve("wrong.site.json");
        String sound = Files.readString(Sitting.sample("hall-timber.site.json"));
        Files.writeString(wrong, sound.replace("\"material\": \"copper\"", "\"material\": \"coper\""));
        long line = sound.substring(0, sound.indexOf("\"material\": \"copper\""))
                .lines()
                .count();
        try (Sitting sitting = new Sitting()) {
            Desk before = sitting.open("hall-timber.site.json");
            sitting.bench().open(wrong);
            Desk after = sitting.settle();

            Message message = after.message().orElseThrow();
            assertThat(message.tone()).isEqualTo(Message.Tone.TROUBLE);
            assertThat(message.title()).isEqualTo("wrong.site.json cannot be used");
            assertThat(message.lines())
                    .singleElement()
                    .asString()
                    .startsWith("Line " + line + ", services[0].ungrounded.material: ")
                    .contains("copper");
            assertThat(after.opened()).isEqualTo(before.opened());
            assertThat(after.answer()).isEqualTo(before.answer());
        }
    }

    @Test
    void aFileThatIsNotThereIsToldToo() {
        try (Sitting sitting = new Sitting()) {
            sitting.bench().open(directory.resolve("none.site.json"));

            assertThat(sitting.settle().message().orElseThrow().lines().get(0)).contains("does not exist");
        }
    }

    /** 26 ft up, straight along x and y, 26 ft down: by hand, from the open floor of the timber hall at 26 ft. */
    @Test
    void measuringFollowsPermittedCopper() {
        try (Sitting sitting = new Sitting()) {
            Desk desk = sitting.open("hall-timber.site.json");
            sitting.run(Looking.measure(new PlanPoint(20 * FOOT, 150 * FOOT)));
            Desk two = sitting.run(Looking.measure(new PlanPoint(50 * FOOT, 190 * FOOT)));
            sitting.bench()
                    .measure(
                            desk.plan().orElseThrow().site(),
                            two.look().measure().orElseThrow());

            // Straight: 30, 40, 50. Along x and y on the open floor: 70.
            assertThat(Measurement.find(sitting.next())).contains("50.00 ft straight, 70.00 ft along permitted copper");
        }
    }

    @Test
    void aLongSearchAnswersWithItsBestWhenItIsStopped() throws IOException {
        Path large = directory.resolve("large.site.json");
        Files.writeString(large, ManyRods.site(70));
        try (Sitting sitting = new Sitting()) {
            sitting.bench().open(large);
            sitting.next();
            while (sitting.desk().work().flatMap(work -> work.reached()).isEmpty()) {
                sitting.next();
                assertThat(sitting.desk().work()).as("still searching").isPresent();
            }
            sitting.bench().stop(sitting.desk());
            Desk stopped = sitting.settle();

            assertThat(stopped.answer()).isPresent();
            assertThat(stopped.answer().orElseThrow().layout().gapPercent().signum())
                    .isGreaterThanOrEqualTo(0);
            assertThat(stopped.message()).isEmpty();
        }
    }

    @Test
    void stoppedTwiceASearchIsGivenUpAndTheLastAnswerStands() throws IOException {
        Path large = directory.resolve("large.site.json");
        Files.writeString(large, ManyRods.site(70));
        try (Sitting sitting = new Sitting()) {
            sitting.bench().open(large);
            sitting.next();
            sitting.next();
            sitting.bench().stop(sitting.desk());
            while (sitting.desk().work().filter(work -> work.stopping()).isEmpty()) {
                sitting.next();
            }
            sitting.bench().stop(sitting.desk());
            Desk given = sitting.settle();

            assertThat(given.message()).contains(Message.notice("Given up. The last answer stands."));
            assertThat(given.answer()).isEmpty();
            assertThat(given.opened()).isPresent();
        }
    }

    @Test
    void allFilesOfAnAnswerAreHandedOutOnceThereIsLeave() {
        try (Sitting sitting = new Sitting()) {
            Desk desk = sitting.open("workshop-metric.site.json");
            handOut(sitting, desk, existing -> false);
            Desk written = sitting.settle();

            assertThat(written.message().orElseThrow().lines())
                    .contains("workshop-metric.result.json", "workshop-metric.report.pdf")
                    .allSatisfy(name -> assertThat(directory.resolve(name)).exists());

            handOut(sitting, desk, existing -> false);
            assertThat(sitting.settle().message()).contains(Message.notice("Nothing was written."));
        }
    }

    /** What is asked of the bench from now on has to wait. */
    private void holdBack(Sitting sitting, CountDownLatch until) {
        sitting.bench().write(directory.resolve("before"), () -> {
            await(until);
            return new byte[1];
        });
        sitting.next();
    }

    /**
     * The work before it holds the hand-out back until it is stopped, so that nothing is computed of what exclusions
     * cost. The perimeter footing of the timber hall is one: the report names it as not computed.
     */
    @Test
    void stoppedAHandOutDoesWithoutWhatExclusionsCost() {
        CountDownLatch stopped = new CountDownLatch(1);
        try (Sitting sitting = new Sitting()) {
            Desk desk = sitting.open("hall-timber.site.json");
            holdBack(sitting, stopped);
            handOut(sitting, desk, existing -> false);
            sitting.bench().stop(sitting.next());
            stopped.countDown();
            Message written = sitting.settle().message().orElseThrow();

            assertThat(written.lines().get(0))
                    .startsWith("The report does not say")
                    .contains("perimeter-footing");
            assertThat(directory.resolve("hall-timber.report.pdf")).exists();
        }
    }

    /** The work before it holds the review back until it is stopped; its search then ends before the proof. */
    @Test
    void stoppedAReviewSetsTheProposalAgainstTheBestFound() {
        CountDownLatch stopped = new CountDownLatch(1);
        try (Sitting sitting = new Sitting()) {
            Desk desk = sitting.open("hall-timber.site.json");
            holdBack(sitting, stopped);
            sitting.bench().review(desk.opened().orElseThrow(), Sitting.sample("hall-timber.sound.proposal.json"));
            sitting.bench().stop(sitting.next());
            stopped.countDown();
            Totals totals = Totals.of(sitting.settle());

            assertThat(totals.verdict()).isEqualTo("Complies");
            assertThat(totals.totals())
                    .extracting(Totals.Total::name)
                    .containsExactly("weight", "length", "best found", "at least", "against the best found");
        }
    }

    @Test
    void stoppedTwiceAHandOutWritesNothing() throws IOException {
        Path old = Files.writeString(directory.resolve("hall-timber.result.json"), "old");
        CountDownLatch givenUp = new CountDownLatch(1);
        try (Sitting sitting = new Sitting()) {
            Desk desk = sitting.open("hall-timber.site.json");
            handOut(sitting, desk, existing -> {
                await(givenUp);
                return true;
            });
            sitting.bench().stop(sitting.next());
            sitting.bench().stop(sitting.next());
            givenUp.countDown();

            assertThat(sitting.settle().message()).contains(Message.notice("Given up. Nothing was written."));
            assertThat(old).hasContent("old");
            try (var files = Files.list(directory)) {
                assertThat(files).containsExactly(old);
            }
        }
    }

    private void handOut(Sitting sitting, Desk desk, Predicate<List<Path>> overwrite) {
        sitting.bench()
                .handOut(desk.opened().orElseThrow(), desk.answer().orElseThrow(), "Bondspan", directory, overwrite);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(60, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
