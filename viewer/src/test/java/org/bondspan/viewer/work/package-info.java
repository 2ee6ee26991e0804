@NullMarked
package org.bondspan.viewer.work;

import org.jspecify.annotations.NullMarked;
