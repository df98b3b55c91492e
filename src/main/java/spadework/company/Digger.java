// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.math.BigDecimal;
import spadework.measure.Percent;

/**
 * What a digging machine does: the size of its bucket and how often it goes round.
 *
 * @param bucket heaped, cubic yards, loose; above 0
 * @param fill of the bucket, above 0, at most 120%
 * @param bulkCycles in an hour in the open, above 0
 * @param wallCycles in an hour beside a wall, above 0
 * @param efficiency working part of an hour, above 0, at most 100%
 * @param source who says so
 */
public record Digger(
        BigDecimal bucket,
        Percent fill,
        BigDecimal bulkCycles,
        BigDecimal wallCycles,
        Percent efficiency,
        String source) {}
