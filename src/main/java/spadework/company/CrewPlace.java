// SPDX-License-Identifier: Apache-2.0
package spadework.company;

/**
 * Some members of a crew.
 *
 * @param wage key into the company's wages
 * @param count how many of them
 */
public record CrewPlace(String wage, int count) {}
