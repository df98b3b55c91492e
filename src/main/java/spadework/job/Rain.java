// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.RainRate;

/** The rain that the roof lines are sized for, and where that value was looked up. */
public record Rain(RainRate intensity, String source) {}
