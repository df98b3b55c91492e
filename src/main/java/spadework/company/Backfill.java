// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import spadework.measure.Percent;

/**
 * How the company's own fill comes out, in place of the price book's figures for the soil.
 *
 * @param shrink bank to compacted, on bank volume; 0 to under 50%
 * @param source where the figure comes from
 */
public record Backfill(Percent shrink, String source) {}
