// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import java.util.Optional;
import spadework.measure.Unit;
import spadework.pricebook.Film;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.takeoff.wall.Coating;

/**
 * Material for so much of an item, in the unit in which it is bought and without waste, where the takeoff does not
 * measure the material itself: for what a job or an assembly puts in by hand.
 */
public final class NetMaterial {
    private NetMaterial() {}

    /**
     * Tons of stone by the book's density, gallons of a coating by the film that the book lays it to; of anything else
     * so much for each unit of the item.
     *
     * @param quantity in the unit of the item
     * @return zero for an item without material
     */
    public static BigDecimal of(PriceBook book, LineItem item, BigDecimal quantity) {
        Optional<Measure> measured = item.material().flatMap(Material::measured);
        if (measured.equals(Optional.of(Measure.STONE_TONS)) && item.unit() == Unit.CUBIC_YARD) {
            return quantity.multiply(BigDecimal.valueOf(book.stoneTonsPerCubicYard()));
        }
        if (measured.equals(Optional.of(Measure.COAT_GALLONS))
                && item.unit() == Unit.SQUARE_FOOT
                && item.film().isPresent()) {
            return BigDecimal.valueOf(
                    Coating.gallons(quantity.doubleValue(), wetMils(item.film().get())));
        }
        return item.material()
                .map(material -> quantity.multiply(material.each()))
                .orElse(BigDecimal.ZERO);
    }

    private static double wetMils(Film film) {
        return Coating.wetFilm(
                film.dryFilm().mils(), film.volumeSolids().fraction().doubleValue());
    }
}
