/** From the site to the graph on which copper may run and metal may carry, and back from a tree to conductors. */
@NullMarked
package org.bondspan.network;

import org.jspecify.annotations.NullMarked;
