/** Exact quantities: length, weight, conductor size. No other package does unit arithmetic on bare numbers. */
@NullMarked
package org.bondspan.units;

import org.jspecify.annotations.NullMarked;
