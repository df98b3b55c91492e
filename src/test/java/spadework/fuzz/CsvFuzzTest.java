// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import spadework.intake.Intake;
import spadework.pricebook.PriceBook;
import spadework.pricebook.SupplierMap;
import spadework.pricesheet.SupplierChanges;
import spadework.pricesheet.Tables;

/** Whatever a supplier's list holds, its prices are read or it is refused. */
class CsvFuzzTest {
    private static final PriceBook BOOK = new Intake().bundledBook();
    private static final SupplierMap MAP = new SupplierMap(
            Optional.empty(), 2, "No.", "Net", Optional.of("Until"), "material/cost", Map.of("Q57", "STONE-MACH"));

    @FuzzTest
    void listIsReadOrRefused(byte[] file) {
        try {
            ReadableMessage.hold(SupplierChanges.of("quarry.csv", Tables.csv(file), MAP, BOOK)
                    .faults());
        } catch (IOException refused) {
            ReadableMessage.hold(refused.getMessage());
        }
    }
}
