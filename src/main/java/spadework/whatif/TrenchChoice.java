// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * A job dug in one way. What may not be offered is not priced.
 *
 * @param inJob whether the job is dug so as it stands
 * @param against what stands against it; empty where nothing that the job states does
 * @param priced what it comes to; empty where something stands against it
 */
public record TrenchChoice(TrenchWay way, boolean inJob, List<Unlawful> against, Optional<Priced> priced) {

    public TrenchChoice {
        against = List.copyOf(against);
    }

    /**
     * What a way to dig comes to.
     *
     * @param soil dug in all, bank cubic yards, as printed
     * @param restoration price of soil, grading and planting
     * @param days working days with those kept for weather
     * @param finish the last of them
     * @param rental price of what is counted by days: shield, machines that stand, pump
     * @param price what the homeowner would pay
     */
    public record Priced(
            BigDecimal soil, Dollars restoration, int days, LocalDate finish, Dollars rental, Dollars price) {}

    /** Whether it may be offered. */
    public boolean isOffered() {
        return priced.isPresent();
    }
}
