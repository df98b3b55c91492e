// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.nio.file.Path;
import spadework.company.Company;
import spadework.intake.Intake;
import spadework.intake.Understood;

/** The shipped price book and the invented contractor, read as the program reads them. */
public final class Books {
    private static final Understood SAMPLE =
            (Understood) new Intake().read(Path.of("sample-quotes/block-basement-to-swale"));

    private Books() {}

    public static PriceBook standard() {
        return SAMPLE.book();
    }

    public static Company company() {
        return SAMPLE.company();
    }
}
