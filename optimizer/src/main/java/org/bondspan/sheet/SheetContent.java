package org.bondspan.sheet;

import org.bondspan.layout.Layout;
import org.bondspan.site.Site;

/**
 * What sheets are drawn from.
 *
 * @param digest SHA-256 of the site file, in hexadecimal
 * @param program name and version of the program
 */
public record SheetContent(Site site, Layout layout, String digest, String program) {}
