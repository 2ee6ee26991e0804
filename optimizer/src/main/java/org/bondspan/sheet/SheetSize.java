package org.bondspan.sheet;

import java.util.Arrays;
import java.util.Optional;

/** Sheet sizes, all lying; lengths in points. Sizes by ASME Y14.1 and the architectural series. */
public enum SheetSize {
    ARCH_D("arch-d", 36 * 72, 24 * 72, 36, 11, 280, 470),
    ANSI_B("ansi-b", 17 * 72, 11 * 72, 24, 6.5, 160, 290),
    LETTER("letter", 11 * 72, 8.5 * 72, 20, 6, 132, 250);

    private final String label;
    private final double width;
    private final double height;
    private final double margin;
    private final double text;
    private final double titleBlock;
    private final double column;

    SheetSize(String label, double width, double height, double margin, double text, double titleBlock, double column) {
        this.label = label;
        this.width = width;
        this.height = height;
        this.margin = margin;
        this.text = text;
        this.titleBlock = titleBlock;
        this.column = column;
    }

    /** As commands write it. */
    public String label() {
        return label;
    }

    public static Optional<SheetSize> find(String label) {
        return Arrays.stream(values()).filter(size -> size.label.equals(label)).findFirst();
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** From the edge of the paper to the border. */
    double margin() {
        return margin;
    }

    /** Size of the letters: on ARCH D capitals are a little over 3/32 in high. */
    double text() {
        return text;
    }

    /** Width of the title block. */
    double titleBlock() {
        return titleBlock;
    }

    /** Width of a column of schedules. */
    double column() {
        return column;
    }
}
