package org.bondspan.site;

/** Where a fact of the site file comes from: {@code of} names the object, {@code text} is the user's. */
public record Evidence(String of, String text) {
    public boolean isAssumed() {
        return text.strip().equalsIgnoreCase("assumed");
    }
}
