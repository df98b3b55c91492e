// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * Something that limits the room to dig.
 *
 * @param wall label of the wall it stands before
 * @param distance from the wall's face, at right angles
 * @param trunk trunk diameter at breast height, for a tree
 */
public record SiteLimit(LimitKind kind, String wall, Length distance, Optional<Length> trunk, String note) {}
