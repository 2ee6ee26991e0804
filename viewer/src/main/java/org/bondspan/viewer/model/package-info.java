/**
 * What the panes of the window say, made from the desk: totals, tables, the facts about one thing, differences. Texts
 * and numbers only; knows nothing of the window.
 */
@NullMarked
package org.bondspan.viewer.model;

import org.jspecify.annotations.NullMarked;
