// SPDX-License-Identifier: Apache-2.0
package spadework.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.bids.BidStatus;
import spadework.money.Dollars;

/**
 * A job as a season sees it.
 *
 * @param issued the day of its proposal, by which it belongs to a season
 * @param total what the homeowner pays as things stand
 * @param days working days at the house
 * @param money since the contract is signed
 */
public record SeasonJob(
        String number,
        String title,
        BidStatus standing,
        LocalDate issued,
        Dollars total,
        Days days,
        Money money,
        List<SeasonClaim> claims) {

    public SeasonJob {
        claims = List.copyOf(claims);
    }

    /**
     * Days of work.
     *
     * @param sold what proposal and accepted changes say
     * @param worked working days of the company from the first to the last; empty while the job is not done
     */
    public record Days(int sold, Optional<Integer> worked) {}

    /** What was billed and what came in. */
    public record Money(Dollars invoiced, Dollars received) {

        /** Billed and not paid; zero where more came in than is billed. */
        public Dollars outstanding() {
            Dollars open = invoiced.minus(received);
            return open.isNegative() ? Dollars.ZERO : open;
        }
    }

    /** Whether a contract was signed and stands. */
    public boolean isWon() {
        return standing == BidStatus.ACCEPTED || standing == BidStatus.CLOSED;
    }

    /** Whether an answer of the homeowner is still to come. */
    public boolean isOpen() {
        return standing == BidStatus.ISSUED;
    }

    public boolean isLost() {
        return standing == BidStatus.LOST;
    }
}
