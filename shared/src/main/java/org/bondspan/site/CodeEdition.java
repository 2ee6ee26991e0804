package org.bondspan.site;

import java.util.Arrays;
import java.util.Optional;

/** The editions of NFPA 70 that the rule tables know. */
public enum CodeEdition {
    NEC_2014(2014),
    NEC_2017(2017),
    NEC_2020(2020),
    NEC_2023(2023);

    private final int year;

    CodeEdition(int year) {
        this.year = year;
    }

    public int year() {
        return year;
    }

    /** The edition, and what was adopted with it; that this is not stated is told too. */
    public String describe(String adoption) {
        return "NFPA 70, " + year + " edition. "
                + (adoption.isBlank() ? "Adoption and local amendments not stated." : adoption);
    }

    public boolean isBefore(CodeEdition other) {
        return year < other.year;
    }

    public static Optional<CodeEdition> find(int year) {
        return Arrays.stream(values()).filter(edition -> edition.year == year).findFirst();
    }
}
