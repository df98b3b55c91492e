// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

/**
 * A season of the maintenance card.
 *
 * @param season in words with its year, as {@code Spring 2027}
 * @param from first day in words
 * @param until last day in words
 * @param ending what ends before the next season, in words; empty for most
 */
public record CareRow(String season, String from, String until, String ending) {}
