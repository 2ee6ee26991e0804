/** Checks of the drawings: on every sample and every sheet size, and on a site far larger. */
@NullMarked
package org.bondspan.sheet;

import org.jspecify.annotations.NullMarked;
