// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.OptionalInt;

/**
 * A hold point as a step of the scope of work.
 *
 * @param point 1 to 3
 * @param wall its label; empty for the one that stands for all pipes
 * @param step its number in the scope
 * @param page of the scope on which that step stands, from 1; empty where the scope does not show it
 */
public record HoldStep(int point, String wall, int step, OptionalInt page) {}
