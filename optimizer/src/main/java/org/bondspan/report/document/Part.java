package org.bondspan.report.document;

import java.util.List;
import java.util.stream.Stream;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.table.Schedule;

/** A part of a report, in the order of reading. */
public sealed interface Part {
    /** What it says; of a figure nothing. */
    Stream<String> words();

    /** A part that is one text. */
    sealed interface Text extends Part {
        String text();

        @Override
        default Stream<String> words() {
            return Stream.of(text());
        }
    }

    /** Begins a section. */
    record Heading(String text) implements Text {}

    record Paragraph(String text) implements Text {}

    /** The verdict, set off from the rest. */
    record Verdict(String text) implements Text {}

    record Table(Schedule schedule) implements Part {
        @Override
        public Stream<String> words() {
            return schedule.rows().stream().flatMap(List::stream);
        }
    }

    record Figure(Drawing drawing) implements Part {
        @Override
        public Stream<String> words() {
            return Stream.empty();
        }
    }
}
