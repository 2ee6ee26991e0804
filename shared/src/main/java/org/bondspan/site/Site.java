package org.bondspan.site;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.bondspan.price.PriceBook;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;

/**
 * One building as drawn. Immutable. Ids are unique over the whole site, references resolve, outlines are simple: the
 * reader has checked.
 *
 * @param named the file gives its name; else the file is what it is called by
 * @param makeUpPerEnd conductor added at each end that lands on a service, electrode, frame, pipe or ring
 * @param wastePercent added to what is bought, never to what is measured
 * @param evidence where facts come from, in file order
 */
public record Site(
        String name,
        boolean named,
        String note,
        String adoption,
        LengthUnit lengthUnit,
        CodeEdition codeEdition,
        boolean qualifiedPersonsOnly,
        boolean existingBuilding,
        Optional<FireLine> fireLine,
        Length makeUpPerEnd,
        BigDecimal wastePercent,
        List<Level> levels,
        List<Riser> risers,
        List<Service> services,
        List<Electrode> electrodes,
        List<SitePath> paths,
        List<Busbar> busbars,
        List<Evidence> evidence,
        Optional<PriceBook> prices) {
    public Site {
        levels = List.copyOf(levels);
        risers = List.copyOf(risers);
        services = List.copyOf(services);
        electrodes = List.copyOf(electrodes);
        paths = List.copyOf(paths);
        busbars = List.copyOf(busbars);
        evidence = List.copyOf(evidence);
    }

    /** The same site at other prices. */
    public Site withPrices(PriceBook other) {
        return with(adoption, codeEdition, qualifiedPersonsOnly, risers, paths, Optional.of(other));
    }

    /** The same site with other paths. */
    public Site withPaths(List<SitePath> others) {
        return with(adoption, codeEdition, qualifiedPersonsOnly, risers, others, prices);
    }

    /** The same site with other risers. */
    public Site withRisers(List<Riser> others) {
        return with(adoption, codeEdition, qualifiedPersonsOnly, others, paths, prices);
    }

    /** The same site under another edition. */
    public Site withCodeEdition(CodeEdition other) {
        return with(adoption, other, qualifiedPersonsOnly, risers, paths, prices);
    }

    /** The same site with qualified supervision assured or not, 250.68(C)(1). */
    public Site withQualifiedPersonsOnly(boolean other) {
        return with(adoption, codeEdition, other, risers, paths, prices);
    }

    /** The same site with other words on its adoption. */
    public Site withAdoption(String other) {
        return with(other, codeEdition, qualifiedPersonsOnly, risers, paths, prices);
    }

    private Site with(
            String adopted,
            CodeEdition edition,
            boolean assured,
            List<Riser> otherRisers,
            List<SitePath> otherPaths,
            Optional<PriceBook> book) {
        return new Site(
                name,
                named,
                note,
                adopted,
                lengthUnit,
                edition,
                assured,
                existingBuilding,
                fireLine,
                makeUpPerEnd,
                wastePercent,
                levels,
                otherRisers,
                services,
                electrodes,
                otherPaths,
                busbars,
                evidence,
                book);
    }

    /** The level with that id; throws when the site has none. */
    public Level level(String id) {
        return levels.stream()
                .filter(level -> level.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no level " + id));
    }

    /** Of a place, above the zero of the floors. */
    public Length elevation(Position place) {
        return level(place.level()).floor().plus(place.height());
    }

    /** Straight from place to place, heights included. */
    public Length distance(Position a, Position b) {
        return Length.ofRun(
                b.at().x() - a.at().x(),
                b.at().y() - a.at().y(),
                elevation(b).minus(elevation(a)).nanometres());
    }

    /** Of a run, straight from place to place. */
    public Length length(List<Position> run) {
        Length sum = Length.ZERO;
        for (int i = 1; i < run.size(); i++) {
            sum = sum.plus(distance(run.get(i - 1), run.get(i)));
        }
        return sum;
    }

    /** All paths of one kind, in file order. */
    public <T extends SitePath> List<T> listPaths(Class<T> kind) {
        return paths.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** All electrodes of one kind, in file order. */
    public <T extends Electrode> List<T> listElectrodes(Class<T> kind) {
        return electrodes.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
