/**
 * Verifies proposed routes from the site, the code rules and the proposal alone: it knows neither the network nor the
 * solver that find routes.
 */
@NullMarked
package org.bondspan.review;

import org.jspecify.annotations.NullMarked;
