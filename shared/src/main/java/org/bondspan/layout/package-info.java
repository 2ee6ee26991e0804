/**
 * The answer: conductors, links, joints, the state of everything that must be connected, and where each number comes
 * from.
 */
@NullMarked
package org.bondspan.layout;

import org.jspecify.annotations.NullMarked;
