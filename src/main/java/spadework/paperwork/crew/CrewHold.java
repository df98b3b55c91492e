// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

/**
 * A hold point on the crew's sheet.
 *
 * @param wall label of the wall; empty for the one that stands for all pipes
 * @param name which it is and where
 * @param what has to be seen there
 * @param link what leads to its step in the scope of work: the file and the page; the file alone where the scope does
 *     not show the step
 * @param alternative to the square code that says so, for who does not see it
 * @param step the same in words
 */
public record CrewHold(String wall, String name, String what, String link, String alternative, String step) {}
