/**
 * The plan on the screen: camera, picking, painting into an image, and the pane that shows it. It knows pictures of
 * levels, not sites or answers, and keeps nothing but the last scene and what was painted of it. Only the pane and its
 * overlay know JavaFX.
 */
@NullMarked
package org.bondspan.viewer.plan;

import org.jspecify.annotations.NullMarked;
