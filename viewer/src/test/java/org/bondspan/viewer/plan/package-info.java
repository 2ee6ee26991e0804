@NullMarked
package org.bondspan.viewer.plan;

import org.jspecify.annotations.NullMarked;
