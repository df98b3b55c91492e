// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.money.ExactDollars;

/**
 * What an hour of somebody's work costs.
 *
 * @param hourly what is paid
 * @param burden taxes, insurance and leave on top of it
 */
public record Wage(Dollars hourly, Percent burden) {

    /** The loaded wage: wage × (1 + burden). */
    public ExactDollars loaded() {
        return hourly.exact().plusPercent(burden);
    }
}
