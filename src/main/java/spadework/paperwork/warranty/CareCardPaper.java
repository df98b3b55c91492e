// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.time.LocalDate;
import java.util.stream.Collectors;
import spadework.paperwork.PrintedDates;
import spadework.warranty.Card;
import spadework.warranty.CardRow;
import spadework.warranty.Season;

/** Puts the maintenance card together. */
public final class CareCardPaper {
    private CareCardPaper() {}

    /** The card as a paper of a day. */
    public static CareCard of(Card card, LocalDate issued) {
        return new CareCard(
                RegisteredHead.of(card.warranty(), issued),
                card.warranty().number(),
                card.duties(Season.SPRING),
                card.duties(Season.FALL),
                card.rows().stream().map(CareCardPaper::row).toList());
    }

    private static CareRow row(CardRow row) {
        String name = row.season().words();
        return new CareRow(
                name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1) + " " + row.year(),
                PrintedDates.words(row.from()),
                PrintedDates.words(row.until()),
                row.ending().stream()
                        .map(part -> part.part() + ": " + PrintedDates.words(part.lastDay()))
                        .collect(Collectors.joining("; ")));
    }
}
