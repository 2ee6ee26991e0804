package org.bondspan.report.document;

import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.table.Schedule;

/** A part of a report, in the order of reading. */
public sealed interface Part {
    /** Begins a section. */
    record Heading(String words) implements Part {}

    record Paragraph(String words) implements Part {}

    /** The verdict, set off from the rest. */
    record Verdict(String words) implements Part {}

    record Table(Schedule schedule) implements Part {}

    record Figure(Drawing drawing) implements Part {}
}
