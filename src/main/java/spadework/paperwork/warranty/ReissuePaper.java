// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.time.LocalDate;
import java.util.List;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.WarrantyPromise;
import spadework.paperwork.part.WarrantyRow;
import spadework.warranty.Claim;
import spadework.warranty.Warranty;

/** Puts the certificate of a later owner together, from what the register keeps of the first. */
public final class ReissuePaper {
    private ReissuePaper() {}

    /**
     * The certificate.
     *
     * @param warranty as it was reissued
     * @param before number of the certificate that it takes the place of
     * @param claims that were made on it before
     * @param issued the day of the transfer
     */
    public static ReissuedCertificate of(Warranty warranty, String before, List<Claim> claims, LocalDate issued) {
        return of(RegisteredHead.of(warranty, issued), warranty, before, claims, "");
    }

    /**
     * The same with the look of the first certificate, and with the person to call that it names.
     *
     * @param first as it was issued
     */
    public static ReissuedCertificate of(
            Warranty warranty, String before, List<Claim> claims, LocalDate issued, WarrantyCertificate first) {
        PaperHead head = RegisteredHead.ofFirst(warranty, issued, first.head().firm());
        return of(head, warranty, before, claims, first.state());
    }

    private static ReissuedCertificate of(
            PaperHead head, Warranty warranty, String before, List<Claim> claims, String state) {
        WarrantyPromise promise = new WarrantyPromise(
                false,
                warranty.coverage().parts().stream()
                        .map(part -> new WarrantyRow(
                                part.part(),
                                part.promise(),
                                part.years(),
                                PrintedDates.words(part.firstDay()),
                                PrintedDates.words(part.lastDay())))
                        .toList(),
                warranty.terms().replyDays(),
                warranty.terms().visitDays(),
                warranty.terms().findingDays(),
                warranty.terms().beginDays(),
                warranty.terms().transfers(),
                warranty.terms().transferNoticeDays(),
                warranty.coverage().notCovered(),
                warranty.terms().duties());
        return new ReissuedCertificate(
                head,
                warranty.number(),
                warranty.first(),
                before,
                warranty.coverage().walls(),
                warranty.coverage().runs(),
                promise,
                claims.stream().map(EarlierClaim::of).toList(),
                state);
    }
}
