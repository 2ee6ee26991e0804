package org.bondspan.sheet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.layout.SiteCheck;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Site;

/**
 * Puts together the picture of a level: the building as drawn, then the answer, then numbers that point to findings.
 */
public final class LevelPicture {
    private LevelPicture() {}

    /**
     * The picture of one level with an answer. Findings are numbered as they stand in the answer, from 1; those whose
     * subject does not lie on the level have no number there.
     */
    public static Picture of(Site site, Layout layout, Level level) {
        return of(site, Shown.of(site, layout), level);
    }

    /** The picture of one level before it is routed, with the findings of its check. */
    public static Picture of(Site site, SiteCheck check, Level level) {
        return of(site, Shown.of(check), level);
    }

    /**
     * The picture of one level with a proposal. Findings are numbered as they stand in its review, from 1. A conductor
     * without a line is drawn straight between its ends, and not at all where they do not tell where they are.
     */
    public static Picture of(Site site, Proposal proposal, ReviewOutcome outcome, Level level) {
        return of(site, ShownProposal.of(site, proposal, outcome), level);
    }

    private static Picture of(Site site, Shown shown, Level level) {
        List<Item> items = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        new BuildingPicture(site, level, items, notes).add();
        new AnswerPicture(site, shown, level, items, notes).add();
        for (int i = 0; i < shown.findings().size(); i++) {
            addKeynote(i + 1, shown.findings().get(i), items, notes);
        }
        items.sort(Comparator.comparing(Item::layer));
        notes.sort(Comparator.comparing(Note::kind).thenComparing(LevelPicture::extent));
        return new Picture(level.id(), SideBySide.of(items), notes);
    }

    /** Conductors in the order of their extent: the shorter one is, the fewer places there are for its words. */
    private static double extent(Note note) {
        if (note.kind() != Note.Kind.CONDUCTOR) {
            return 0;
        }
        Bounds bounds = Bounds.around(note.anchors());
        return Math.hypot(bounds.width(), bounds.height());
    }

    private static void addKeynote(int number, Finding finding, List<Item> items, List<Note> notes) {
        findPlace(finding.subject(), items)
                .ifPresent(place -> notes.add(new Note(
                        finding.subject(),
                        Layer.KEYNOTES,
                        Note.Kind.KEYNOTE,
                        List.of(String.valueOf(number)),
                        List.of(place))));
    }

    private static Optional<PlanPoint> findPlace(String id, List<Item> items) {
        return items.stream()
                .filter(item -> item.id().equals(id))
                .findFirst()
                .map(item -> item.places().get(item.places().size() / 2));
    }
}
