// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The homeowner's maintenance card: the duties of the certificate with the seasons of all years of the term. A duty
 * that names one season only stands in that season; every other duty stands in both, which never asks for less than
 * the certificate does.
 */
public record Card(Warranty warranty, List<CardRow> rows) {

    public Card {
        rows = List.copyOf(rows);
    }

    /** The card of a warranty, from the first day of its terms to the last. */
    public static Card of(Warranty warranty) {
        return of(warranty, warranty.firstDay());
    }

    /** The same without what lies before a day, as for an owner who came later. */
    public static Card of(Warranty warranty, LocalDate on) {
        LocalDate first = later(warranty.firstDay(), on);
        LocalDate last = warranty.lastDay();
        List<CardRow> rows = new ArrayList<>();
        for (int year = first.getYear(); year <= last.getYear(); year++) {
            for (CareSeason season : CareSeason.values()) {
                LocalDate from = later(season.firstDay(year), first);
                LocalDate until = earlier(season.lastDay(year), last);
                List<String> duties = duties(warranty, season);
                if (!from.isAfter(until) && !duties.isEmpty()) {
                    rows.add(new CardRow(season, year, from, until, duties, ending(warranty, season, year)));
                }
            }
        }
        return new Card(warranty, rows);
    }

    /** The duties of a season. */
    public List<String> duties(CareSeason season) {
        return duties(warranty, season);
    }

    private static List<String> duties(Warranty warranty, CareSeason season) {
        return warranty.terms().duties().stream()
                .filter(duty ->
                        names(duty, season) || (!names(duty, CareSeason.SPRING) && !names(duty, CareSeason.FALL)))
                .toList();
    }

    /** Whether a duty speaks of the time of year; a spring that feeds a pond and ground that falls do not count. */
    private static boolean names(String duty, CareSeason season) {
        String name = season == CareSeason.SPRING ? "spring" : "(fall|autumn)";
        return Pattern.compile("\\b(each|every|in|in the|and|or|early|late|before|after) " + name + "\\b")
                .matcher(duty.toLowerCase(Locale.ROOT))
                .find();
    }

    private static List<CoveredPart> ending(Warranty warranty, CareSeason season, int year) {
        LocalDate next =
                season == CareSeason.SPRING ? CareSeason.FALL.firstDay(year) : CareSeason.SPRING.firstDay(year + 1);
        return warranty.coverage().parts().stream()
                .filter(part -> !part.lastDay().isBefore(season.firstDay(year))
                        && part.lastDay().isBefore(next))
                .toList();
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }
}
