package org.bondspan.review;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Proposal;
import org.bondspan.site.Site;
import org.bondspan.usecase.Sites;

/** Measures, by hand, how long 1,000 reviews of 20 conductors take; a first argument adds the review of a site file. */
public final class ReviewSpeed {
    private ReviewSpeed() {}

    public static void main(String... args) {
        Site site = args.length > 0 ? SiteReader.read(Path.of(args[0])) : SiteReader.parse(site(), "speed.site.json");
        List<Proposal> proposals = new ArrayList<>();
        for (int i = 0; i < 1_000; i++) {
            proposals.add(Draft.of(site, draft(i)));
        }
        for (int round = 1; round <= 3; round++) {
            long start = System.nanoTime();
            Reviewer reviewer = new Reviewer(site);
            int found = 0;
            for (Proposal proposal : proposals) {
                Review review = reviewer.review(proposal);
                found += review.findings().size()
                        + review.conductors().size()
                        + review.ways().size();
            }
            System.out.printf("round %d: %d ms, %d told%n", round, (System.nanoTime() - start) / 1_000_000, found);
        }
    }

    /** Two services of one lateral, eight rods, footings, a frame, a pipe, an installed conductor. */
    private static String site() {
        StringBuilder rods = new StringBuilder();
        for (int i = 1; i <= 8; i++) {
            rods.append(", {\"id\": \"R%d\", $rod, $at(%d, 0)}".formatted(i, 10 * i));
        }
        return Sites.openFloor(200, 100, """
                "services": [{"id": "S1", "supply": "A", $copper(500 kcmil), $at(0, 10)},
                  {"id": "S2", "supply": "A", $copper(500 kcmil), $at(0, 20)}],
                "electrodes": [{"id": "W", $water, "connections": []}, {"id": "C", $footing, $at(20, 50)},
                  {"id": "G", $ring2, $at(40, 50)}RODS],
                "paths": [
                  {"id": "P", "medium": "water-pipe", "electrode": "W", "line": [[200, 100], [100, 100]]},
                  {"id": "K", "medium": "conductor", "size": "2 AWG", "line": [[50, 50], [90, 50]]},
                  {"id": "F", "medium": "structural-frame", "grid": {"x": [10, 60, 110], "y": [20, 80]},
                    "levels": ["L1"], "top": 20, "continuous": true}]""".replace("RODS", rods));
    }

    /** Twenty conductors with a loop through rods; every third proposal has something wrong. */
    private static String draft(int number) {
        String size = number % 3 == 0 ? "2 AWG" : "2/0 AWG";
        StringBuilder text = new StringBuilder("""
                T1 1/0 AWG S1 > J:J1
                T2 1/0 AWG S2 > J:J1
                A %s J:J1 > F
                B 2/0 AWG F > P@5
                D 4 AWG A~5 > C
                E 2 AWG F > G
                X 2 AWG F > K@0
                Y 2 AWG K@40 > R8
                """.formatted(size));
        for (int i = 1; i < 8; i++) {
            text.append("N%d 6 AWG R%d > R%d\n".formatted(i, i, i + 1));
        }
        return text.append("""
                Z1 6 AWG F > R1
                Z2 6 AWG F > R4
                Z3 8 AWG F > R6
                L1 6 AWG (10,10) > (10,40) line length 30
                L2 6 AWG (10,40) > (60,40) line length 49
                """).toString();
    }
}
