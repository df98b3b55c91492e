// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import spadework.working.Worked;

/**
 * What a pipe carries when it runs full by its own fall, without pressure.
 *
 * @param velocity in ft/s
 * @param cfs flow in cubic feet a second
 * @param gpm the same flow in US gallons a minute
 */
public record FullPipe(Worked velocity, Worked cfs, Worked gpm) {}
