// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import spadework.paperwork.part.PaperHead;
import spadework.warranty.Card;
import spadework.warranty.CardRow;
import spadework.warranty.CareSeason;

/** Puts the maintenance card together. */
public final class CareCardPaper {
    private CareCardPaper() {}

    /** The card as a paper of a day. */
    public static CareCard of(Card card, LocalDate issued) {
        return of(RegisteredHead.of(card.warranty(), issued), card);
    }

    /**
     * The same with the look of the first certificate, and with the person to call that it names.
     *
     * @param first as it was issued
     */
    public static CareCard of(Card card, LocalDate issued, WarrantyCertificate first) {
        return of(RegisteredHead.ofFirst(card.warranty(), issued, first.head().firm()), card);
    }

    private static CareCard of(PaperHead head, Card card) {
        List<String> spring = card.duties(CareSeason.SPRING);
        List<String> fall = card.duties(CareSeason.FALL);
        return new CareCard(
                head,
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
