// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.time.LocalDate;
import java.util.Optional;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.part.Firm;
import spadework.paperwork.part.PaperHead;
import spadework.warranty.Contractor;
import spadework.warranty.Warranty;

/** What a paper opens with when there is only the register to make it from: no logo, no insurance, letter size. */
public final class RegisteredHead {
    private RegisteredHead() {}

    static PaperHead of(Warranty warranty, LocalDate issued) {
        return of(warranty, issued, "");
    }

    /** @param logo as a data address; empty for none */
    static PaperHead of(Warranty warranty, LocalDate issued, String logo) {
        Contractor firm = warranty.parties().contractor();
        return new PaperHead(
                new Firm(
                        firm.name(),
                        firm.license(),
                        "",
                        "",
                        firm.address(),
                        firm.phone(),
                        firm.email(),
                        "",
                        firm.phone(),
                        logo.isEmpty() ? Optional.empty() : Optional.of(logo),
                        false),
                warranty.job(),
                warranty.number(),
                PrintedDates.words(issued),
                issued.toString(),
                "",
                warranty.parties().owners(),
                "",
                warranty.parties().address(),
                false);
    }
}
