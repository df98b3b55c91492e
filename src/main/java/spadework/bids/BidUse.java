// SPDX-License-Identifier: Apache-2.0
package spadework.bids;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import spadework.measure.Unit;
import spadework.money.Dollars;

/** One use of a line item in a bid. */
public record BidUse(
        String number,
        BidStatus standing,
        LocalDate issued,
        String section,
        BigDecimal quantity,
        Unit unit,
        Dollars unitPrice,
        Dollars price,
        String place) {

    /** Every use of an item in a bid, in the order of its lines. */
    public static List<BidUse> of(BidWithStatus bid, String code, String place) {
        return bid.quote().lines().stream()
                .filter(line -> line.code().equals(code))
                .map(line -> new BidUse(
                        bid.job().number(),
                        bid.standing(),
                        bid.job().issued(),
                        line.section().name(),
                        line.quantity(),
                        line.unit(),
                        line.unitPrice(),
                        line.price(),
                        place))
                .toList();
    }
}
