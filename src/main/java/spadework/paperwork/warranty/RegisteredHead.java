// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.time.LocalDate;
import java.util.Optional;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.Firm;
import spadework.paperwork.part.PaperHead;
import spadework.warranty.Contractor;
import spadework.warranty.Warranty;

/**
 * What a paper opens with that is made from the register: what the register keeps of the firm. Logo, paper size and
 * whom to call come from the first certificate, where the folder of the job still tells it.
 */
public final class RegisteredHead {
    private RegisteredHead() {}

    static PaperHead of(PaperWords terms, Warranty warranty, LocalDate issued) {
        return of(terms, warranty, issued, registered(warranty.parties().contractor()));
    }

    /** @param first the firm as the first certificate names it */
    static PaperHead ofFirst(PaperWords terms, Warranty warranty, LocalDate issued, Firm first) {
        Firm plain = registered(warranty.parties().contractor());
        return of(
                terms,
                warranty,
                issued,
                plain.withCallName(first.callName())
                        .withCallPhone(first.callPhone())
                        .withLogo(first.logo())
                        .withA4(first.a4()));
    }

    private static Firm registered(Contractor firm) {
        return new Firm(
                firm.name(),
                firm.license(),
                "",
                "",
                firm.address(),
                firm.phone(),
                firm.email(),
                "",
                firm.phone(),
                Optional.empty(),
                false);
    }

    private static PaperHead of(PaperWords terms, Warranty warranty, LocalDate issued, Firm firm) {
        return new PaperHead(
                firm,
                warranty.job(),
                warranty.number(),
                terms.day(issued),
                issued.toString(),
                "",
                warranty.parties().owners(),
                "",
                warranty.parties().address(),
                false);
    }
}
