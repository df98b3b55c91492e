// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import java.time.LocalDate;
import java.util.List;
import spadework.money.Dollars;

/**
 * A bill as it was issued.
 *
 * @param number as it is printed, {@code 2026-014-I2}
 * @param on the day on which what it is for was done, from which it is due
 */
public record Invoice(String number, LocalDate on, List<BillLine> lines) {

    public Invoice {
        lines = List.copyOf(lines);
    }

    /** What it asks for; below zero where it gives back. */
    public Dollars amount() {
        return Dollars.total(lines.stream().map(BillLine::amount).toList());
    }

    /** Whether it gives back, because changes took away more than is billed. */
    public boolean isCredit() {
        return amount().isNegative();
    }

    public boolean isFor(BillItem item) {
        return lines.stream().anyMatch(line -> line.item().equals(item));
    }
}
