/** The command line: options and exit codes, nothing else. */
@NullMarked
package org.bondspan.cli;

import org.jspecify.annotations.NullMarked;
