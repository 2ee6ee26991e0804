/** What one can ask of Bondspan: the only door for command line and viewer. */
@NullMarked
package org.bondspan.usecase;

import org.jspecify.annotations.NullMarked;
