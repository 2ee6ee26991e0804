/** Plan sheets: the picture of a level to scale, with schedules, legend and title block. Java2D only. */
@NullMarked
package org.bondspan.sheet;

import org.jspecify.annotations.NullMarked;
