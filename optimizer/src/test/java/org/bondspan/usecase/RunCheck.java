package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.End;
import org.bondspan.layout.Layout;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Level;
import org.bondspan.site.Position;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.usecase.Pen.Spot;

/**
 * Whether every conductor of an answer runs where copper may run, between the places it names, and is as long as it
 * says.
 */
final class RunCheck {
    private final Site site;
    private final Layout layout;
    private final Set<List<Spot>> alongLines = new HashSet<>();

    RunCheck(Site site, Layout layout) {
        this.site = site;
        this.layout = layout;
        for (CopperLine line : site.listPaths(CopperLine.class)) {
            List<Spot> walk = Raster.walk(line.line());
            for (int i = 1; i < walk.size(); i++) {
                alongLines.add(List.of(walk.get(i - 1), walk.get(i)));
                alongLines.add(List.of(walk.get(i), walk.get(i - 1)));
            }
        }
    }

    void assertLawful() {
        for (Conductor conductor : layout.conductors()) {
            if (conductor.length().jumper().isZero()) {
                assertRun(conductor);
                assertEnd(conductor.from(), conductor.line().get(0));
                assertEnd(conductor.to(), conductor.line().get(conductor.line().size() - 1));
                assertThat(Book.feet(conductor.length().makeUp().nanometres()))
                        .as("make-up of %s", conductor)
                        .isEqualTo(makeUp(conductor));
            }
        }
        assertTotals();
    }

    private int makeUp(Conductor conductor) {
        int ends = lands(conductor, conductor.from(), conductor.line().get(0))
                + lands(
                        conductor,
                        conductor.to(),
                        conductor.line().get(conductor.line().size() - 1));
        return ends * Book.feet(site.makeUpPerEnd().nanometres());
    }

    private int lands(Conductor conductor, End end, Position place) {
        boolean copper = end instanceof End.AtJoint
                || end instanceof End.OnConductor
                || (end instanceof End.OnPath on && findInstalled(on.path()).isPresent());
        boolean landed = site.listPaths(InstalledConductor.class).stream()
                .filter(installed -> installed.size().isAtLeast(conductor.size()))
                .anyMatch(installed -> installed.line().level().equals(place.level())
                        && Raster.walk(installed.line()).contains(spot(place)));
        return copper || landed ? 0 : 1;
    }

    private Optional<InstalledConductor> findInstalled(String path) {
        return site.listPaths(InstalledConductor.class).stream()
                .filter(conductor -> conductor.id().equals(path))
                .findFirst();
    }

    private void assertRun(Conductor conductor) {
        int plan = 0;
        int vertical = 0;
        List<Position> line = conductor.line();
        for (int i = 1; i < line.size(); i++) {
            Position a = line.get(i - 1);
            Position b = line.get(i);
            if (a.at().equals(b.at())) {
                vertical += Math.abs(elevation(a) - elevation(b));
                assertThat(a.level().equals(b.level()) || isRiser(a))
                        .as("a riser at %s", a)
                        .isTrue();
            } else {
                assertThat(a.level()).isEqualTo(b.level());
                plan += assertStraight(site.level(a.level()), spot(a), spot(b));
            }
        }
        assertThat(Book.feet(conductor.length().plan().nanometres()))
                .as("%s", conductor)
                .isEqualTo(plan);
        assertThat(Book.feet(conductor.length().vertical().nanometres()))
                .as("%s", conductor)
                .isEqualTo(vertical);
    }

    private boolean isRiser(Position place) {
        return site.risers().stream().anyMatch(riser -> riser.at().equals(place.at()));
    }

    private int elevation(Position position) {
        return Book.feet(site.level(position.level()).floor().nanometres())
                + spot(position).z();
    }

    private int assertStraight(Level level, Spot from, Spot to) {
        int feet = Math.abs(from.x() - to.x()) + Math.abs(from.y() - to.y());
        assertThat(from.x() == to.x() || from.y() == to.y())
                .as("parallel to x or y")
                .isTrue();
        assertThat(from.z()).isEqualTo(to.z());
        Spot at = from;
        for (int i = 0; i < feet; i++) {
            Spot next = new Spot(
                    at.x() + Integer.signum(to.x() - at.x()), at.y() + Integer.signum(to.y() - at.y()), at.z());
            boolean onFloor = at.z() == 0 && Raster.isOpenRun(level, at, next);
            assertThat(onFloor || alongLines.contains(List.of(at, next)))
                    .as("copper from %s to %s", at, next)
                    .isTrue();
            at = next;
        }
        return feet;
    }

    private void assertEnd(End end, Position place) {
        if (end instanceof End.AtService at) {
            assertThat(site.services().stream()
                            .filter(service -> service.id().equals(at.service()))
                            .map(Service::connections)
                            .flatMap(List::stream)
                            .map(Connection::position))
                    .contains(place);
        } else if (end instanceof End.AtElectrode at) {
            assertThat(site.electrodes().stream()
                            .filter(electrode -> electrode.id().equals(at.electrode()))
                            .map(Electrode::connections)
                            .flatMap(List::stream)
                            .map(Connection::position))
                    .contains(place);
        } else if (end instanceof End.AtJoint at) {
            assertThat(layout.joints().stream()
                            .filter(joint -> joint.id().equals(at.joint()))
                            .map(joint -> spot(joint.place())))
                    .contains(spot(place));
        }
    }

    private void assertTotals() {
        List<Conductor> conductors = layout.conductors();
        long feet = 0;
        long weight = 0;
        List<String> sizes = new ArrayList<>();
        for (Conductor conductor : conductors) {
            int total = Book.feet(conductor.length().total().nanometres());
            assertThat(total).as("%s", conductor).isNotNegative();
            feet += total;
            weight += total * Book.WEIGHTS[Book.SIZES.indexOf(conductor.size().label())];
            sizes.add(conductor.size().label());
        }
        assertThat(Book.feet(layout.copper().orElseThrow().length().nanometres()))
                .isEqualTo((int) feet);
        assertThat(RasterOracleTest.weight(layout).orElseThrow()).isEqualTo(weight);
        assertThat(layout.sizes().stream().map(total -> total.size().label()))
                .containsExactlyInAnyOrderElementsOf(new HashSet<>(sizes));
    }

    /** The same place in plan and elevation. */
    static boolean isSame(Site site, Position a, Position b) {
        long heights = a.height().nanometres() - b.height().nanometres();
        long floors = site.level(a.level()).floor().nanometres()
                - site.level(b.level()).floor().nanometres();
        return a.at().equals(b.at()) && heights + floors == 0;
    }

    static Spot spot(Position position) {
        return new Spot(
                Book.feet(position.at().x()),
                Book.feet(position.at().y()),
                Book.feet(position.height().nanometres()));
    }
}
