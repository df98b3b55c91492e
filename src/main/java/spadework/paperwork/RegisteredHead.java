package spadework.paperwork;

import java.time.LocalDate;
import java.util.Optional;
import spadework.warranty.Contractor;
import spadework.warranty.Warranty;

/** What a paper opens with when there is only the register to make it from: no logo, no insurance, letter size. */
final class RegisteredHead {
    private RegisteredHead() {}

    static Head of(Warranty warranty, LocalDate issued) {
        Contractor firm = warranty.contractor();
        return new Head(
                new Firm(
                        firm.name(),
                        firm.licence(),
                        "",
                        "",
                        firm.address(),
                        firm.phone(),
                        firm.email(),
                        Optional.empty(),
                        false),
                warranty.job(),
                warranty.number(),
                Dates.words(issued),
                issued.toString(),
                "",
                warranty.owners(),
                "",
                warranty.address(),
                false);
    }
}
