// SPDX-License-Identifier: Apache-2.0
package spadework.bids;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import spadework.money.Dollars;
import spadework.pricing.Margin;

/**
 * One bid among others.
 *
 * @param validUntil the last day of the price; empty once it is signed or closed
 * @param total what the homeowner pays as things stand, with any sales tax
 * @param margin what is left of the price after cost, contingency and overhead, in percent of the price; empty for no
 * price
 * @param age days since it was issued; below zero for one that is dated ahead
 */
public record BidRow(
        String number,
        BidStatus standing,
        LocalDate issued,
        Optional<LocalDate> validUntil,
        long age,
        Dollars total,
        Optional<BigDecimal> margin,
        String title,
        String customer,
        String place) {

    /** The row of a bid on a day; {@code place} is where its file lies. */
    public static BidRow of(BidWithStatus bid, LocalDate on, String place) {
        boolean open = bid.standing() == BidStatus.DRAFT || bid.standing() == BidStatus.ISSUED;
        LocalDate issued = bid.job().issued();
        return new BidRow(
                bid.job().number(),
                bid.standing(),
                issued,
                open ? Optional.of(issued.plusDays(bid.job().validDays())) : Optional.empty(),
                ChronoUnit.DAYS.between(issued, on),
                bid.sum().total(),
                Margin.of(
                        bid.company().priceRules(),
                        bid.sum().price(),
                        bid.quote().lines()),
                bid.job().title(),
                String.join(" and ", bid.job().customer().names()),
                place);
    }

    /** Whether the price no longer stands on a day. */
    public boolean isExpiredOn(LocalDate day) {
        return validUntil.filter(last -> last.isBefore(day)).isPresent();
    }
}
