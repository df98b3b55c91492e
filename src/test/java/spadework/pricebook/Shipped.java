// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The default price book and the demonstration contractor as plain JSON, for tests about the files themselves. */
public final class Shipped {
    private static final String BOOK = "/spadework/pricebook/default.json";
    private static final Map<String, JsonNode> ITEMS = byCode();

    private Shipped() {}

    public static JsonNode book() {
        try (InputStream file = Shipped.class.getResourceAsStream(BOOK)) {
            return new ObjectMapper().readTree(file);
        } catch (IOException e) {
            throw new IllegalStateException(BOOK, e);
        }
    }

    public static JsonNode sample(String name) {
        Path file = Path.of("sample-quotes", name);
        try (InputStream in = Files.newInputStream(file)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new IllegalStateException(file.toString(), e);
        }
    }

    public static JsonNode company() {
        return sample("company.json");
    }

    /** The default items by code; of two with one code the last. */
    static Map<String, JsonNode> items() {
        return ITEMS;
    }

    private static Map<String, JsonNode> byCode() {
        Map<String, JsonNode> byCode = new TreeMap<>();
        book().get("items").forEach(item -> byCode.put(item.get("code").asText(), item));
        return byCode;
    }

    /** Codes of the default items that follow a measure, in order. */
    static List<String> following(Measure measure) {
        return ITEMS.entrySet().stream()
                .filter(entry -> entry.getValue().path("follows").asText().equals(measure.trade()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Those of them that are priced unasked. */
    static List<String> standardFor(Measure measure) {
        return following(measure).stream()
                .filter(code -> ITEMS.get(code).path("standard").asBoolean())
                .toList();
    }

    /** How the files write the constants of an enum. */
    static List<String> words(Class<? extends Enum<?>> kinds) {
        return Arrays.stream(kinds.getEnumConstants())
                .map(kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .toList();
    }

    static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(text -> texts.add(text.asText()));
        return texts;
    }

    /** The number in "$1,234.50", "10 ft", "0.34", "12%". */
    public static BigDecimal number(JsonNode text) {
        return new BigDecimal(text.asText().replaceAll("[$,%]", "").split(" ")[0]);
    }
}
