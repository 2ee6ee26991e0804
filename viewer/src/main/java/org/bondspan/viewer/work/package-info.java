/**
 * What takes time, done beside the window's thread: reading, solving, reviewing, measuring, writing files. Outcomes
 * come back as commands.
 */
@NullMarked
package org.bondspan.viewer.work;

import org.jspecify.annotations.NullMarked;
