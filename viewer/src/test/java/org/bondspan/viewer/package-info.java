@NullMarked
package org.bondspan.viewer;

import org.jspecify.annotations.NullMarked;
