// SPDX-License-Identifier: Apache-2.0
package spadework.listing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import spadework.figure.Amount;
import spadework.figure.Answer;
import spadework.figure.AnswerValue;
import spadework.figure.Day;
import spadework.figure.Figure;
import spadework.money.Dollars;

/**
 * A calculator's answer for other programs to read, as JSON: figures unrounded, days as ISO 8601, money as decimal text
 * ({@code null} where no amount was found); then the working in words.
 */
public final class FigureListing {
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private FigureListing() {}

    /**
     * The answer as JSON.
     *
     * @param working the lines of the working, and behind them what has to be known with the figures
     */
    public static String of(Answer answer, List<String> working) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode answers = root.putArray("answers");
        for (AnswerValue value : answer.values()) {
            ObjectNode described = answers.addObject().put("name", value.name());
            put(described, value);
            described.put("unit", value.unit().symbol());
        }
        ArrayNode lines = root.putArray("working");
        working.forEach(lines::add);
        try {
            return JSON.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void put(ObjectNode described, AnswerValue value) {
        if (value instanceof Day day) {
            described.put("value", day.date().toString());
        } else if (value instanceof Amount amount) {
            described.put("value", amount.dollars().map(Dollars::plain).orElse(null));
        } else {
            described.put("value", ((Figure) value).value());
        }
    }
}
