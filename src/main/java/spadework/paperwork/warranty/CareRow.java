// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

/**
 * A season of the maintenance card.
 *
 * @param season in words with its year, as {@code Spring 2027}
 * @param months the whole months that it takes, as {@code March to May}
 * @param ending what ends before the next season, by month, in words; empty for most
 */
public record CareRow(String season, String months, String ending) {}
