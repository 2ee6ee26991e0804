/**
 * How long answers take, how that grows, and how it compares with others: run by the Maven profile {@code benchmark},
 * never by the tests.
 */
@NullMarked
package org.bondspan.benchmark;

import org.jspecify.annotations.NullMarked;
