/** Drawings as files: PNG, SVG, PDF. The same drawing gives the same bytes. */
@NullMarked
package org.bondspan.sheet.out;

import org.jspecify.annotations.NullMarked;
