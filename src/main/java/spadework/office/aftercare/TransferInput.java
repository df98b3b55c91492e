// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A transfer as it is asked for.
 *
 * @param certificate any certificate of the warranty; empty where the job has one warranty only
 * @param to the new owners
 * @param on the day their notice came
 * @param sold the day of the sale
 * @param waived why a late notice is taken all the same
 * @param withoutSale that it passed by inheritance or divorce, in words
 */
public record TransferInput(
        Optional<String> certificate,
        List<String> to,
        LocalDate on,
        Optional<LocalDate> sold,
        Optional<String> waived,
        Optional<String> withoutSale) {}
