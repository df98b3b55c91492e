// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.time.LocalDate;

/** Since when an item is given up, and why. */
public record Retirement(LocalDate on, String reason) {}
