/** Checks of what the package of the same name promises. */
@NullMarked
package org.bondspan.sheet.table;

import org.jspecify.annotations.NullMarked;
