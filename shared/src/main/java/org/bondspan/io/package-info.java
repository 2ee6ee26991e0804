/** The only package that knows JSON: reads site files with one clear message per mistake, writes results. */
@NullMarked
package org.bondspan.io;

import org.jspecify.annotations.NullMarked;
