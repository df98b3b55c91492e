// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import spadework.measure.Length;

/**
 * The size of a pipe, from its standard.
 *
 * @param standard the standard and what was taken from it
 * @param outside outside diameter
 * @param inside inside diameter
 * @param manning Manning's n, full pipe
 * @param corrugated true for corrugated wall
 * @param stick length in which it is sold
 */
public record Pipe(
        String standard,
        Length nominal,
        Length outside,
        Length inside,
        double manning,
        boolean corrugated,
        Length stick) {}
