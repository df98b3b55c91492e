// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;

/** The outline of the house on the plan: its size along the compass. */
public record House(Length eastWest, Length northSouth) {}
