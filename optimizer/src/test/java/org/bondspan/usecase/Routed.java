package org.bondspan.usecase;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.bondspan.finding.Finding;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.End;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.units.Length;

/** The answer for a site, as texts short enough to write down what is expected. */
record Routed(Layout layout) {

    static Routed of(String siteFile) {
        return new Routed(RouteSite.of(SiteReader.parse(siteFile, "test.site.json")));
    }

    Status status() {
        return layout.status();
    }

    /** Exact, in lb for ft and kg for m. */
    BigDecimal weight() {
        return plain(layout.copper().orElseThrow().weight().in(layout.lengthUnit()));
    }

    /** Each size with its length, largest first: {@code 2 AWG 30, 6 AWG 5}. */
    String sizes() {
        return layout.sizes().stream()
                .map(total -> total.size().label() + " " + length(total.length()))
                .collect(Collectors.joining(", "));
    }

    /** {@code 2 AWG 10 from S to R}, or just its total for a jumper around a break. */
    List<String> conductors() {
        return layout.conductors().stream().map(this::print).toList();
    }

    /** Paths that carry: {@code F: pipe end to pipe end}. */
    List<String> links() {
        return layout.links().stream()
                .map(link -> link.path() + " " + length(link.length()) + " from " + print(link.from()) + " to "
                        + print(link.to()))
                .toList();
    }

    List<String> messages(String rule) {
        return layout.findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::message)
                .toList();
    }

    List<String> subjects(String rule) {
        return layout.findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::subject)
                .toList();
    }

    String electrodes() {
        return layout.electrodes().stream()
                .map(electrode -> electrode.id() + " " + electrode.state().label())
                .collect(Collectors.joining(", "));
    }

    String bonds() {
        return layout.bonds().stream()
                .map(bond -> bond.path() + " " + bond.state().label())
                .collect(Collectors.joining(", "));
    }

    private String print(Conductor conductor) {
        return conductor.size().label() + " " + length(conductor.length().total()) + " from " + print(conductor.from())
                + " to " + print(conductor.to());
    }

    private String print(End end) {
        if (end instanceof End.AtService at) {
            return at.service();
        }
        if (end instanceof End.AtElectrode at) {
            return at.electrode();
        }
        if (end instanceof End.OnPath on) {
            return on.path()
                    + on.distance().map(distance -> "@" + length(distance)).orElse("");
        }
        if (end instanceof End.OnConductor on) {
            return on.conductor() + "@" + length(on.at());
        }
        return end instanceof End.AtJoint at ? at.joint() : end.toString();
    }

    String length(Length length) {
        return plain(length.in(layout.lengthUnit())).toPlainString();
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
