package org.bondspan.io;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bondspan.io.json.Node;
import org.bondspan.price.PriceBook;
import org.bondspan.site.Busbar;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Electrode;
import org.bondspan.site.FireLine;
import org.bondspan.site.Level;
import org.bondspan.site.Riser;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;

/**
 * Reads site files. Either the whole file is in order, or an {@link InputException} names each mistake with its line,
 * its field and a way out; a site is never read in part.
 */
public final class SiteReader {
    /** What site files call their format. */
    public static final String FORMAT = "bondspan-site/1";

    private static final BigDecimal MAX_WASTE_PERCENT = BigDecimal.valueOf(1000);

    private final String fileName;
    private final Problems problems;

    private SiteReader(String fileName) {
        this.fileName = fileName;
        this.problems = new Problems(fileName);
    }

    /** Throws {@link InputException}. */
    public static Site read(Path file) {
        return parse(InputFile.text(file), file.toString());
    }

    /** All that the stream holds; the name is for messages. Throws {@link InputException}. */
    public static Site read(InputStream in, String name) {
        try {
            return parse(InputFile.text(in, name), name);
        } catch (IOException e) {
            throw InputFile.problem(name, "cannot be read", "Check where it comes from");
        }
    }

    /** The text of a site file; its name is for messages. Throws {@link InputException}. */
    public static Site parse(String text, String fileName) {
        return new SiteReader(fileName).parse(text);
    }

    private Site parse(String text) {
        Node.Struct struct = FileRoot.parse(text, fileName, problems, List.of(FORMAT), "site file");
        LengthUnit unit = FileRoot.findUnit(struct).orElse(LengthUnit.FOOT);
        Scope scope = new Scope(
                "site",
                problems,
                new Values(unit, problems),
                PlaceSurvey.of(struct, unit),
                new Ids(),
                new Sources(),
                levelIds(struct));
        Site site = site(Fields.ofFile(struct, scope));
        problems.throwIfAny();
        return site;
    }

    private static List<String> levelIds(Node.Struct struct) {
        return struct.find("levels").orElse(null) instanceof Node.Array levels
                ? levels.items().stream()
                        .flatMap(level -> Fields.idOf(level).stream())
                        .distinct()
                        .toList()
                : List.of();
    }

    private Site site(Fields fields) {
        FileRoot.read(fields, FORMAT);
        List<Level> levels = atLeastOne(fields, "levels", fields.each("levels", "level", LevelReader::level));
        List<Riser> risers = fields.each("risers", "riser", LevelReader::riser);
        List<Bound<Service>> services = atLeastOne(
                fields, "services", fields.each("services", "service", f -> new Bound<>(ServiceReader.service(f), f)));
        List<Bound<Electrode>> electrodes =
                fields.each("electrodes", "electrode", f -> new Bound<>(ElectrodeReader.electrode(f), f));
        List<Bound<SitePath>> paths = fields.each("paths", "path", f -> new Bound<>(PathReader.path(f), f));
        List<Busbar> busbars = fields.each("busbars", "busbar", SiteReader::busbar);
        Optional<FireLine> fireLine = fields.findWord("fireLine", FireLine.class);

        SiteChecks checks = new SiteChecks(fields, fireLine, paths);
        checks.checkServices(services);
        checks.checkElectrodes(electrodes);
        checks.checkPaths();
        fields.scope().ids().check(problems);

        Optional<String> name = fields.findText("name");
        String note = fields.findText("note").orElse("");
        String adoption = fields.findText("adoption").orElse("");
        CodeEdition edition = codeEdition(fields);
        boolean qualifiedPersonsOnly = fields.flag("qualifiedPersonsOnly", false);
        boolean existingBuilding = fields.flag("existingBuilding", false);
        Length makeUp = fields.findDistance("makeUpPerEnd").orElse(Length.ZERO);
        BigDecimal waste = wastePercent(fields);
        Optional<PriceBook> prices = PriceReader.find(fields, fileName);
        fields.done();
        return new Site(
                name.orElseGet(this::baseName),
                name.isPresent(),
                note,
                adoption,
                fields.scope().values().unit(),
                edition,
                qualifiedPersonsOnly,
                existingBuilding,
                fireLine,
                makeUp,
                waste,
                levels,
                risers,
                services.stream().map(Bound::value).toList(),
                electrodes.stream().map(Bound::value).toList(),
                paths.stream().map(Bound::value).toList(),
                busbars,
                fields.scope().sources().inFileOrder(),
                prices);
    }

    private static Busbar busbar(Fields fields) {
        return new Busbar(fields.id(Kind.BUSBAR), Drawn.in(fields).position());
    }

    private static <T> List<T> atLeastOne(Fields fields, String name, List<T> all) {
        if (fields.isWithout(name)) {
            fields.reportNone(name, "A site has at least one of them");
        }
        return all;
    }

    private static CodeEdition codeEdition(Fields fields) {
        Optional<Integer> year = fields.find("codeEdition")
                .flatMap(node -> fields.scope().values().whole(node, "codeEdition"));
        if (year.isPresent() && CodeEdition.find(year.get()).isEmpty()) {
            List<String> years = Arrays.stream(CodeEdition.values())
                    .map(edition -> String.valueOf(edition.year()))
                    .toList();
            fields.report(
                    "codeEdition",
                    year.get() + " is not an edition of NFPA 70 known here",
                    "Write one of " + String.join(", ", years));
        }
        return year.flatMap(CodeEdition::find).orElse(CodeEdition.NEC_2020);
    }

    private static BigDecimal wastePercent(Fields fields) {
        BigDecimal waste = fields.findMeasure("wastePercent").orElse(BigDecimal.ZERO);
        if (waste.compareTo(MAX_WASTE_PERCENT) > 0) {
            fields.report("wastePercent", "is more than 1000", "Give percent: 5 for one twentieth");
        }
        return waste;
    }

    /** What to call a site that has no name: its file, without directory and ending. */
    private String baseName() {
        String base = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
        int ending = base.indexOf('.', 1);
        return ending > 0 ? base.substring(0, ending) : base;
    }
}
