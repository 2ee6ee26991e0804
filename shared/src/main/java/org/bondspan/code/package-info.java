/**
 * NFPA 70 as data with its sections: Table 250.66, what an electrode needs to qualify, what may carry, what must be
 * connected and at which size.
 */
@NullMarked
package org.bondspan.code;

import org.jspecify.annotations.NullMarked;
