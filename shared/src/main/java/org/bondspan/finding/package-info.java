/**
 * What the user is told about a site or a route: rule, severity, subject, message. Collected as data, formatted at the
 * edge.
 */
@NullMarked
package org.bondspan.finding;

import org.jspecify.annotations.NullMarked;
