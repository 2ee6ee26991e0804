/** Checks of what the package of the same name promises. */
@NullMarked
package org.bondspan.report.document;

import org.jspecify.annotations.NullMarked;
