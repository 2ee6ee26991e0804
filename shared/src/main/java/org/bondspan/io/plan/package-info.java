/** Exact geometry of what is drawn in plan: which places are one, whether outlines are simple, what a frame joins. */
@NullMarked
package org.bondspan.io.plan;

import org.jspecify.annotations.NullMarked;
