/**
 * What copper, labor and connections cost: price books as data, and the rates that follow from them. A price that is
 * not stated is missing, never guessed. Knows neither sites nor routes.
 */
@NullMarked
package org.bondspan.price;

import org.jspecify.annotations.NullMarked;
