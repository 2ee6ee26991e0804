/**
 * Whole sites, from the text of the site file to the answer. Feature tests are numbered: A sizes, B where copper goes,
 * C what carries, D what must be connected, E how it is written down, F what cannot be done, G what exclusions cost, H
 * the least cost. Expected weights are worked by hand from the copper weights of ASTM B8 (Class B) in lb per 1000 ft: 6
 * AWG 81.0, 4 128.9, 2 204.9, 1/0 325.8, 2/0 410.9, 3/0 518.1; sizes from NFPA 70 Table 250.66.
 */
@NullMarked
package org.bondspan.usecase;

import org.jspecify.annotations.NullMarked;
