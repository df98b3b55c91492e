package spadework.paperwork;

import java.time.LocalDate;
import spadework.warranty.Warranty;

/** Puts the certificate of a later owner together, from what the register keeps of the first. */
public final class ReissuePaper {
    private ReissuePaper() {}

    /**
     * The certificate.
     *
     * @param warranty as it was reissued
     * @param before number of the certificate that it takes the place of
     * @param issued the day of the transfer
     */
    public static Reissue of(Warranty warranty, String before, LocalDate issued) {
        Promise promise = new Promise(
                false,
                warranty.parts().stream()
                        .map(part -> new WarrantyRow(
                                part.part(),
                                part.promise(),
                                part.years(),
                                Dates.words(part.firstDay()),
                                Dates.words(part.lastDay())))
                        .toList(),
                warranty.replyDays(),
                warranty.transfers(),
                warranty.transferNoticeDays(),
                warranty.notCovered(),
                warranty.duties());
        return new Reissue(
                RegisteredHead.of(warranty, issued),
                warranty.number(),
                warranty.first(),
                before,
                warranty.walls(),
                warranty.runs(),
                promise);
    }
}
