@NullMarked
package org.bondspan.viewer.state;

import org.jspecify.annotations.NullMarked;
