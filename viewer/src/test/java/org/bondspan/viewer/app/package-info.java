@NullMarked
package org.bondspan.viewer.app;

import org.jspecify.annotations.NullMarked;
