package org.bondspan.viewer.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bondspan.site.Evidence;
import org.bondspan.site.Site;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Opened;
import org.bondspan.viewer.state.Plan;

/** Finds the facts about what has an id. */
public final class FactSheets {
    private FactSheets() {}

    /** About what is selected, or about the site; empty where nothing is opened. */
    public static Optional<FactSheet> selected(Desk desk) {
        return desk.look().selected().flatMap(id -> find(desk, id)).or(() -> ofSite(desk));
    }

    /** About the thing with that id in what is shown, with the findings about it. */
    public static Optional<FactSheet> find(Desk desk, String id) {
        return desk.plan().flatMap(plan -> facts(desk, plan, id)).map(sheet -> withFindings(sheet, desk, id));
    }

    /** The one of that id. */
    static <T> Optional<T> first(List<T> all, Function<T, String> idOf, String id) {
        return all.stream().filter(one -> idOf.apply(one).equals(id)).findFirst();
    }

    private static Optional<FactSheet> facts(Desk desk, Plan plan, String id) {
        AnswerFacts facts = new AnswerFacts(plan);
        Optional<FactSheet> shown = desk.proposal()
                .map(review -> new ProposalFacts(review, plan).find(id))
                .orElseGet(() -> facts.findCopper(id));
        return shown.or(() -> facts.findThing(id)).or(() -> new BuildingFacts(plan).find(id));
    }

    private static FactSheet withFindings(FactSheet sheet, Desk desk, String id) {
        List<FactSheet.Fact> facts = new ArrayList<>(sheet.facts());
        FindingRow.rows(desk).stream()
                .filter(row -> row.subject().equals(id))
                .forEach(row -> facts.add(new FactSheet.Fact(
                        row.severity().label() + " " + row.number(), row.message() + " " + row.rule())));
        evidence(desk, id).ifPresent(text -> facts.add(new FactSheet.Fact("evidence", text)));
        return new FactSheet(sheet.title(), sheet.subtitle(), facts);
    }

    private static Optional<String> evidence(Desk desk, String id) {
        return desk.opened()
                .map(Opened::site)
                .flatMap(site -> site.evidence().stream()
                        .filter(evidence -> evidence.of().equals(id))
                        .map(Evidence::text)
                        .findFirst());
    }

    private static Optional<FactSheet> ofSite(Desk desk) {
        return desk.opened().flatMap(opened -> desk.plan().map(plan -> site(opened, plan)));
    }

    private static FactSheet site(Opened opened, Plan plan) {
        Site site = plan.site();
        return new FactSheet.Writer(site.name().isBlank() ? opened.stem() : site.name(), "site")
                .fact("code", "NFPA 70, " + site.codeEdition().year() + " edition")
                .fact("adoption", site.adoption().isBlank() ? "not stated" : site.adoption())
                .fact("proven bound", plan.layout().flatMap(Totals::findBound).orElse(""))
                .fact(
                        "assumed",
                        String.join(
                                ", ",
                                plan.states().assumed().stream()
                                        .map(Evidence::of)
                                        .toList()))
                .fact(
                        "supposed",
                        opened.question().suppositions(opened.site()).stream()
                                .map(words -> words.replaceFirst("^supposed: ", ""))
                                .collect(Collectors.joining("\n")))
                .fact("note", site.note())
                .fact("file", opened.path().toString())
                .fact("SHA-256", opened.digest())
                .sheet();
    }
}
