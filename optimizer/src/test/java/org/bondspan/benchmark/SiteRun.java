package org.bondspan.benchmark;

import java.util.function.Supplier;
import org.bondspan.io.SiteReader;
import org.bondspan.network.Stages;
import org.bondspan.site.Site;
import org.bondspan.solve.Outcome;

/**
 * A made-up site taken through all stages, each timed; times are medians of warm runs in milliseconds of processor
 * time.
 */
record SiteRun(
        int nodes,
        int edges,
        int terminals,
        Figures building,
        Figures mapping,
        Figures solving,
        Figures straightening,
        Figures searching) {

    /** What is kept of a stage, so that runs do not fill the memory of those after them. */
    record Figures(double millis, double peakMebibytes) {
        private static Figures of(Measure<?> measure) {
            return new Figures(measure.processorMillis(), measure.peakMebibytes());
        }
    }

    /** @param runs how often each stage is run and timed after a first run; 0 times the first run itself */
    static SiteRun of(String siteFile, int runs) {
        Site site = SiteReader.parse(siteFile, "synthetic.site.json");
        Stages stages = new Stages(site);
        Measure<Stages.Built> building = measure(runs, stages::build);
        Measure<Stages.Mapped> mapping = measure(runs, () -> stages.map(building.result()));
        Measure<Outcome> solving = measure(runs, () -> stages.solve(mapping.result()));
        Outcome.Least least = (Outcome.Least) solving.result();
        Measure<Integer> straightening = measure(runs, () -> stages.straighten(mapping.result(), least));
        Measure<Integer> searching = measure(
                runs, () -> PlainDijkstra.fromEveryTerminal(mapping.result().problem()));
        return new SiteRun(
                building.result().nodes(),
                building.result().edges(),
                mapping.result().problem().terminalCount(),
                Figures.of(building),
                Figures.of(mapping),
                Figures.of(solving),
                Figures.of(straightening),
                Figures.of(searching));
    }

    private static <T> Measure<T> measure(int runs, Supplier<T> work) {
        return runs == 0 ? Measure.once(work) : Measure.warm(runs, work);
    }

    double total() {
        return building.millis() + mapping.millis() + solving.millis() + straightening.millis();
    }

    /** Solve time over one plain search of the whole graph per terminal. */
    double ratio() {
        return solving.millis() / searching.millis();
    }

    double peakMebibytes() {
        return Math.max(building.peakMebibytes(), Math.max(mapping.peakMebibytes(), solving.peakMebibytes()));
    }
}
