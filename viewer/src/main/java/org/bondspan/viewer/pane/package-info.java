/** The panes of the window: thin, they show what the models say and turn what the user does into commands. */
@NullMarked
package org.bondspan.viewer.pane;

import org.jspecify.annotations.NullMarked;
