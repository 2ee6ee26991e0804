/**
 * The only package that knows JSON: reads sites and proposals with one clear message per mistake, writes results and
 * reviews.
 */
@NullMarked
package org.bondspan.io;

import org.jspecify.annotations.NullMarked;
