// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.PaperHead;
import spadework.warranty.Card;
import spadework.warranty.CardRow;
import spadework.warranty.CareSeason;

/** Puts the maintenance card together. */
public final class CareCardPaper {
    private CareCardPaper() {}

    /** The card as a paper of a day. */
    public static CareCard of(PaperWords terms, Card card, LocalDate issued) {
        return of(terms, RegisteredHead.of(terms, card.warranty(), issued), card);
    }

    /**
     * The same with the look of the first certificate, and with the person to call that it names.
     *
     * @param terms words of the homeowner's papers of the job
     * @param first as it was issued
     */
    public static CareCard of(PaperWords terms, Card card, LocalDate issued, WarrantyCertificate first) {
        return of(
                terms,
                RegisteredHead.ofFirst(
                        terms, card.warranty(), issued, first.head().firm()),
                card);
    }

    private static CareCard of(PaperWords terms, PaperHead head, Card card) {
        List<String> spring = card.duties(CareSeason.SPRING);
        List<String> fall = card.duties(CareSeason.FALL);
        return new CareCard(
                head,
                card.warranty().number(),
                card.warranty().terms().duties().stream()
                        .map(duty -> new CareDuty(terms.own(duty), spring.contains(duty), fall.contains(duty)))
                        .toList(),
                card.rows().stream().map(row -> row(terms, row)).toList());
    }

    private static CareRow row(PaperWords terms, CardRow row) {
        String first = month(terms, row.from());
        String last = month(terms, row.until());
        return new CareRow(
                terms.of("season", row.season(), "year", Integer.toString(row.year())),
                first.equals(last) ? first : terms.get("months", "from", first, "to", last),
                row.ending().stream()
                        .map(part -> terms.get(
                                "ending",
                                "part",
                                terms.own(part.part()),
                                "month",
                                month(terms, part.lastDay()),
                                "year",
                                Integer.toString(part.lastDay().getYear())))
                        .collect(Collectors.joining("; ")));
    }

    private static String month(PaperWords terms, LocalDate day) {
        return terms.language().written("LLLL", day);
    }
}
