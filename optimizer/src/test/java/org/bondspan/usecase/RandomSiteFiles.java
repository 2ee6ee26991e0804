package org.bondspan.usecase;

/** Site files drawn by chance, for the tests of other packages. */
public final class RandomSiteFiles {
    private RandomSiteFiles() {}

    /** With metal that never carries; every third site has services so small that 8 AWG is enough somewhere. */
    public static String of(long seed) {
        String text = RandomSites.ofOneLevel(seed)
                .withMetalThatNeverCarries()
                .sketch()
                .write(Pen.PLAIN);
        return seed % 3 == 0 ? text.replace("\"3/0 AWG\", \"sets\"", "\"2 AWG\", \"sets\"") : text;
    }
}
