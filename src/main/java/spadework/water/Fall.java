// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.working.Worked;
import spadework.working.Working;

/**
 * How a reach falls.
 *
 * @param start invert where the water comes in
 * @param end invert where it leaves
 * @param drop start less end in feet; negative when the pipe is laid backward
 * @param slope drop per foot of pipe
 */
public record Fall(Working start, Working end, Worked drop, Worked slope) {}
