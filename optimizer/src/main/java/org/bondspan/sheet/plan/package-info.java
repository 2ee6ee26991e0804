/**
 * What is drawn where: an immutable picture of one level in plan units, and the painter that shows it through a view,
 * with a palette and the layers that are switched on. Java2D only, so that screen, PNG, SVG and PDF show the same.
 */
@NullMarked
package org.bondspan.sheet.plan;

import org.jspecify.annotations.NullMarked;
