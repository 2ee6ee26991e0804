package org.bondspan.site;

/** How the project treats underground fire mains, on which NFPA 70 and NFPA 13 and 24 differ. */
public enum FireLine {
    ELECTRODE,
    BOND_ONLY
}
