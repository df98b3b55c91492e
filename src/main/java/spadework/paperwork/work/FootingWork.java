// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

/**
 * The footing under a wall.
 *
 * @param projection how far it stands out from the wall
 */
public record FootingWork(String thickness, String projection) {}
