package org.bondspan.viewer.work;

import java.util.Optional;

/** What the program is called in title blocks. */
public final class Version {
    private Version() {}

    /** Name and version; the name alone where it runs from classes. */
    public static String program() {
        return "Bondspan"
                + Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                        .map(version -> " " + version)
                        .orElse("");
    }
}
