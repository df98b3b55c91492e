// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.Map;
import java.util.Optional;

/**
 * When the company works, and what it gets done.
 *
 * @param calendar when its crews work; empty where it does not say
 * @param diggers what its digging machines do, by the machine's name
 * @param backfill how its own fill comes out; empty where the price book's figures for the soil stand
 */
public record Production(Optional<WorkCalendar> calendar, Map<String, Digger> diggers, Optional<Backfill> backfill) {

    public Production {
        diggers = Map.copyOf(diggers);
    }
}
