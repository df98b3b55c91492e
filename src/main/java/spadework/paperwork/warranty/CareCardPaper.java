// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import spadework.warranty.Card;
import spadework.warranty.CardRow;
import spadework.warranty.CareSeason;

/** Puts the maintenance card together. */
public final class CareCardPaper {
    private CareCardPaper() {}

    /** The card as a paper of a day. */
    public static CareCard of(Card card, LocalDate issued) {
        List<String> spring = card.duties(CareSeason.SPRING);
        List<String> fall = card.duties(CareSeason.FALL);
        return new CareCard(
                RegisteredHead.of(card.warranty(), issued),
                card.warranty().number(),
                card.warranty().terms().duties().stream()
                        .map(duty -> new CareDuty(duty, spring.contains(duty), fall.contains(duty)))
                        .toList(),
                card.rows().stream().map(CareCardPaper::row).toList());
    }

    private static CareRow row(CardRow row) {
        String name = row.season().words();
        String first = month(row.from());
        String last = month(row.until());
        return new CareRow(
                name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + " " + row.year(),
                first.equals(last) ? first : first + " to " + last,
                row.ending().stream()
                        .map(part -> part.part() + ": " + month(part.lastDay()) + " "
                                + part.lastDay().getYear())
                        .collect(Collectors.joining("; ")));
    }

    private static String month(LocalDate day) {
        return day.getMonth().getDisplayName(TextStyle.FULL, Locale.US);
    }
}
