package org.bondspan.report;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.layout.Layout;
import org.bondspan.layout.ServiceState;
import org.bondspan.sheet.table.Schedule;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** Tables of an answer that texts and report set alike. */
final class AnswerTables {
    private AnswerTables() {}

    static Schedule services(List<ServiceState> services) {
        return new Schedule(
                "Services",
                List.of("~id", "~supply", ">phase conductors", ">copper needed"),
                services.stream()
                        .map(service -> List.of(
                                service.id(),
                                service.supply(),
                                Numbers.printArea(service.area()),
                                service.need().label()))
                        .toList());
    }

    static Schedule sizes(Layout layout) {
        LengthUnit unit = layout.lengthUnit();
        List<List<String>> rows = new ArrayList<>();
        layout.sizes()
                .forEach(total -> rows.add(List.of(
                        total.size().label(),
                        Numbers.print(total.length(), unit),
                        Numbers.print(total.weight(), unit))));
        layout.copper().ifPresent(all -> {
            rows.add(List.of("all", Numbers.print(all.length(), unit), Numbers.print(all.weight(), unit)));
            rows.add(List.of("to buy", Numbers.print(all.purchaseLength(), unit), ""));
        });
        return new Schedule("Bare copper; what to buy includes waste", List.of("~size", ">length", ">weight"), rows);
    }

    static Schedule joints(Layout layout) {
        Places places = new Places(layout.lengthUnit());
        return new Schedule(
                "Joints",
                List.of("id", "~method", "~conductors", "~place", "~rule"),
                layout.joints().stream()
                        .map(joint -> List.of(
                                joint.id(),
                                joint.method(),
                                String.join(", ", joint.conductors()),
                                places.of(joint.place()),
                                String.join(", ", joint.basis())))
                        .toList());
    }
}
