// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.List;
import java.util.Map;
import spadework.money.Dollars;

/**
 * What an hour costs.
 *
 * @param wages what an hour costs, by trade
 * @param crews who works together, by the crew's name
 * @param machines cost of a machine hour without its operator, by name
 * @param slowdowns what makes an hour bring less
 */
public record Rates(
        Map<String, Wage> wages,
        Map<String, List<CrewPlace>> crews,
        Map<String, Dollars> machines,
        List<Slowdown> slowdowns) {

    public Rates {
        wages = Map.copyOf(wages);
        crews = Map.copyOf(crews);
        machines = Map.copyOf(machines);
        slowdowns = List.copyOf(slowdowns);
    }
}
