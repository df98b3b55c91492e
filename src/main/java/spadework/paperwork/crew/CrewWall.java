// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

/**
 * A wall as the crew finds it on its sheet.
 *
 * @param trench how deep and how wide
 * @param bank what keeps it from falling in
 * @param finish what goes on the wall
 */
public record CrewWall(String label, String where, String length, String trench, String bank, String finish) {}
