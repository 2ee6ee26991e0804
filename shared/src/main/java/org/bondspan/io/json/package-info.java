/** JSON text as a tree that knows where each value stands in the file. Knows nothing of sites. */
@NullMarked
package org.bondspan.io.json;

import org.jspecify.annotations.NullMarked;
