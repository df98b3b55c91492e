// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How a house came to a later owner.
 *
 * @param sold the day of the sale; empty where there was none or nobody knows it
 * @param withoutSale that it passed by inheritance or divorce, in words
 * @param waived why a late notice is taken all the same
 */
public record Handover(Optional<LocalDate> sold, Optional<String> waived, Optional<String> withoutSale) {}
