/**
 * The one picture of what the window shows: immutable, changed only by commands that make the next one. Knows nothing
 * of the window.
 */
@NullMarked
package org.bondspan.viewer.state;

import org.jspecify.annotations.NullMarked;
