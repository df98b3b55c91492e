// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;

/** A line of the purchase list. */
public record PurchaseRow(
        String code, String name, String net, String waste, BigDecimal packages, String sold, String working) {}
