// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.math.BigDecimal;
import spadework.measure.Area;

/**
 * Ground uphill whose runoff is led into a pipe.
 *
 * @param runoff share of the rain that runs off, 0 to 1
 * @param into label of the run that takes it
 */
public record Catchment(Area area, BigDecimal runoff, String into, String note) {}
