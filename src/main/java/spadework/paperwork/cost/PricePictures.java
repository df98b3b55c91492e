// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import spadework.drawing.shape.Scene;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.whatif.Case;
import spadework.whatif.Simulation;

/**
 * A job otherwise, in pictures: the range of its price as a curve, and its days as bars.
 *
 * @param range of the price, with the price marked
 * @param days of the crews
 */
public record PricePictures(Scene range, Scene days) {

    /**
     * Draws them.
     *
     * @param dossier of the job as it is, whose words are used
     * @param prices what the job otherwise may come to
     * @param price of the job otherwise
     */
    public static PricePictures of(Dossier dossier, Case otherwise, Simulation<Dollars> prices, Dollars price) {
        return new PricePictures(
                CostSummary.range(prices, price, dossier.terms()), CrewPlan.chart(otherwise, dossier.terms()));
    }
}
