// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import static spadework.pricebook.Shipped.number;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.MathContext;
import spadework.company.Wage;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.money.ExactDollars;

/**
 * What one unit of a default item sells for at the demonstration contractor's wages and price rules, before sales tax
 * and without slowing conditions. Written apart from the pricing it stands beside, straight from the files.
 */
final class DefaultPrice {
    /** Square feet that a gallon covers at 1 mil: 231 in³ over 144 in² and 0.001 in (C-01, general). */
    private static final BigDecimal SF_MIL_PER_GALLON = new BigDecimal("1604.17");

    private static final MathContext DIGITS = MathContext.DECIMAL128;

    private final JsonNode company = Shipped.company();
    private final JsonNode book = Shipped.book();

    /** The sum of terms such as {@code MAIN-4 + 0.167 TRENCH-PIPE}. */
    BigDecimal sellingOf(String sum) {
        BigDecimal total = BigDecimal.ZERO;
        for (String term : sum.split(" \\+ ")) {
            String[] words = term.strip().split(" ");
            BigDecimal factor = words.length == 1 ? BigDecimal.ONE : new BigDecimal(words[0]);
            total = total.add(factor.multiply(selling(Shipped.items().get(words[words.length - 1]))));
        }
        return total;
    }

    private BigDecimal selling(JsonNode item) {
        return sell(direct(item));
    }

    /** Direct cost, contingency, overhead, margin. */
    BigDecimal sell(BigDecimal direct) {
        JsonNode rules = company.get("priceRules");
        BigDecimal cost = direct.multiply(onTop(rules.get("contingency"))).multiply(onTop(rules.get("overhead")));
        return cost.divide(BigDecimal.ONE.subtract(fraction(rules.get("profit"))), DIGITS);
    }

    private BigDecimal direct(JsonNode item) {
        BigDecimal direct = BigDecimal.ZERO;
        if (item.has("material")) {
            direct = direct.add(material(item));
        }
        if (item.has("labor")) {
            direct = direct.add(laborAndMachine(item.get("labor")));
        }
        for (String fee : new String[] {"subcontract", "disposal"}) {
            direct = item.has(fee) ? direct.add(number(item.get(fee))) : direct;
        }
        return direct;
    }

    private BigDecimal material(JsonNode item) {
        JsonNode material = item.get("material");
        return number(material.get("cost"))
                .divide(number(material.get("holds")), DIGITS)
                .multiply(takes(item))
                .multiply(onTop(material.get("waste")));
    }

    /** How much of the material's unit one unit of the item takes. */
    private BigDecimal takes(JsonNode item) {
        JsonNode material = item.get("material");
        String measured = material.path("measured").asText();
        if (measured.equals(Measure.COAT_GALLONS.trade())) {
            JsonNode film = item.get("film");
            BigDecimal wet = number(film.get("dryFilm")).divide(fraction(film.get("volumeSolids")), DIGITS);
            return wet.divide(SF_MIL_PER_GALLON, DIGITS);
        }
        if (measured.equals(Measure.STONE_TONS.trade())) {
            return number(book.get("stoneTonsPerCubicYard"));
        }
        return material.has("each") ? number(material.get("each")) : BigDecimal.ONE;
    }

    private BigDecimal laborAndMachine(JsonNode labor) {
        BigDecimal hour = BigDecimal.ZERO;
        for (JsonNode place : company.get("crews").get(labor.get("crew").asText())) {
            BigDecimal wage = loaded(place.get("wage").asText()).amount();
            hour = hour.add(wage.multiply(BigDecimal.valueOf(place.get("count").asInt())));
        }
        if (labor.has("machine")) {
            hour = hour.add(
                    number(company.get("machines").get(labor.get("machine").asText())));
        }
        return hour.divide(number(labor.get("perHour")), DIGITS);
    }

    private ExactDollars loaded(String wage) {
        JsonNode paid = company.get("wages").get(wage);
        return new Wage(Dollars.of(number(paid.get("hourly"))), new Percent(number(paid.get("burden")))).loaded();
    }

    private static BigDecimal fraction(JsonNode percent) {
        return number(percent).movePointLeft(2);
    }

    private static BigDecimal onTop(JsonNode percent) {
        return BigDecimal.ONE.add(fraction(percent));
    }
}
