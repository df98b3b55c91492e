// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

/**
 * What lies on the wall's outer face, in the words of the other papers.
 *
 * @param material as {@code liquid synthetic rubber}
 * @param film dry film as {@code 60 mil}; empty where there is none
 * @param word what the papers may call it, {@code waterproofing} or {@code dampproofing}
 */
public record WallCovering(String material, String film, String word) {}
