// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.util.List;

/**
 * One time to look after the house.
 *
 * @param from the first day of the season, or of the term where that comes later
 * @param until the last day of the season, or of the term where that comes earlier
 * @param duties what to do then, in the certificate's words
 * @param ending parts whose last day falls between this season and the next
 */
public record CardRow(
        CareSeason season, int year, LocalDate from, LocalDate until, List<String> duties, List<CoveredPart> ending) {}
