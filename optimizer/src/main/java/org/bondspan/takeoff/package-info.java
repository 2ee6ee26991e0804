/** From a route to quantities and money: rows as estimators expect, priced from a price book, and their sums. */
@NullMarked
package org.bondspan.takeoff;

import org.jspecify.annotations.NullMarked;
