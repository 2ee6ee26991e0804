/**
 * The building as drawn: levels, services, electrodes, paths, busbars. Immutable records and sealed types; no
 * judgement.
 */
@NullMarked
package org.bondspan.site;

import org.jspecify.annotations.NullMarked;
