/** The files that a routed site gives, and how they come into a directory: all of them, or none. */
@NullMarked
package org.bondspan.report.files;

import org.jspecify.annotations.NullMarked;
