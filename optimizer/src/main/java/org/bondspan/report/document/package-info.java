/** A report as data, and the same report as HTML and as PDF. */
@NullMarked
package org.bondspan.report.document;

import org.jspecify.annotations.NullMarked;
