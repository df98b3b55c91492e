// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * A hole that is dug to look at the ground or the footing before the work, and filled again.
 *
 * @param wall label of the wall beside which it is dug; empty where it lies away from the house
 * @param length along the wall, or either way
 * @param width out from the wall
 */
public record TestPit(String label, Optional<String> wall, Length length, Length width, Length depth) {}
