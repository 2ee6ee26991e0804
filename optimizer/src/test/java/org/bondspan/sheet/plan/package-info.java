/** What a plan shows where. */
@NullMarked
package org.bondspan.sheet.plan;

import org.jspecify.annotations.NullMarked;
