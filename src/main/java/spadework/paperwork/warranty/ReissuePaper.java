// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.time.LocalDate;
import java.util.List;
import spadework.paperwork.PaperWords;
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
     * @param issued the day of the transfer
     */
    public static ReissuedCertificate of(PaperWords terms, Passed passed, LocalDate issued) {
        return of(terms, RegisteredHead.of(terms, passed.warranty(), issued), passed, "");
    }

    /**
     * The same with the look of the first certificate, and with the person to call that it names.
     *
     * @param terms words of the homeowner's papers of the job
     * @param first as it was issued
     */
    public static ReissuedCertificate of(PaperWords terms, Passed passed, LocalDate issued, WarrantyCertificate first) {
        PaperHead head = RegisteredHead.ofFirst(
                terms, passed.warranty(), issued, first.head().firm());
        return of(terms, head, passed, first.state());
    }

    /**
     * A warranty that went to a later owner.
     *
     * @param warranty as it was reissued
     * @param before number of the certificate that it takes the place of
     * @param claims that were made on it before
     */
    public record Passed(Warranty warranty, String before, List<Claim> claims) {

        public Passed {
            claims = List.copyOf(claims);
        }
    }

    private static ReissuedCertificate of(PaperWords terms, PaperHead head, Passed passed, String state) {
        Warranty warranty = passed.warranty();
        WarrantyPromise promise = new WarrantyPromise(
                false,
                warranty.coverage().parts().stream()
                        .map(part -> new WarrantyRow(
                                terms.own(part.part()),
                                terms.own(part.promise()),
                                part.years(),
                                terms.day(part.firstDay()),
                                terms.day(part.lastDay())))
                        .toList(),
                warranty.terms().replyDays(),
                warranty.terms().visitDays(),
                warranty.terms().findingDays(),
                warranty.terms().beginDays(),
                warranty.terms().transfers(),
                warranty.terms().transferNoticeDays(),
                terms.own(warranty.coverage().notCovered()),
                terms.own(warranty.terms().duties()));
        return new ReissuedCertificate(
                head,
                warranty.number(),
                warranty.first(),
                passed.before(),
                warranty.coverage().walls(),
                warranty.coverage().runs(),
                promise,
                passed.claims().stream()
                        .map(claim -> EarlierClaim.of(terms, claim))
                        .toList(),
                state);
    }
}
