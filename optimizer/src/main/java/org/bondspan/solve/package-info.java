/** From integers to a proven least-weight tree. Knows neither the trade nor JSON. */
@NullMarked
package org.bondspan.solve;

import org.jspecify.annotations.NullMarked;
