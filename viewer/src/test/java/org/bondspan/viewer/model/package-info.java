@NullMarked
package org.bondspan.viewer.model;

import org.jspecify.annotations.NullMarked;
