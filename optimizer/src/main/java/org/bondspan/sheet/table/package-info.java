/** Tables and lists as they stand on paper, flowing from column to column and sheet to sheet. */
@NullMarked
package org.bondspan.sheet.table;

import org.jspecify.annotations.NullMarked;
