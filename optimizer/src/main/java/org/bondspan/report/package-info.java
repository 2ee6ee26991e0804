/** Text a person reads: the answer of route and check. */
@NullMarked
package org.bondspan.report;

import org.jspecify.annotations.NullMarked;
