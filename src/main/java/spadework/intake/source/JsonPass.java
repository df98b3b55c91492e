// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.exc.StreamReadException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import spadework.finding.Fault;
import spadework.finding.Place;

/** One pass over JSON text, token by token: it makes the tree and, beside it, the places of values and keys. */
public final class JsonPass {
    /** How deep lists and objects may lie in each other. */
    static final int DEEPEST = 64;
    /** The most values in a file. */
    static final int MOST_VALUES = 100_000;
    /** The longest JSON pointer, in characters. */
    static final int LONGEST_POINTER = 500;

    private static final int ANY = Integer.MAX_VALUE;
    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(ANY)
                    .maxNameLength(ANY)
                    .maxStringLength(ANY)
                    .build())
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final SourceFile sheet;
    private final JsonParser parser;
    private int values;

    private JsonPass(SourceFile sheet, JsonParser parser) {
        this.sheet = sheet;
        this.parser = parser;
    }

    /** Reads the text; a text that is not JSON gives a sheet without a root and with the fault. */
    public static SourceFile over(String file, String text) {
        SourceFile sheet = new SourceFile(file);
        try (JsonParser parser = JSON.createParser(text)) {
            new JsonPass(sheet, parser).whole(text);
        } catch (IOException unexpected) {
            throw new UncheckedIOException(unexpected);
        }
        return sheet;
    }

    private void whole(String text) throws IOException {
        try {
            parser.nextToken();
            if (parser.currentToken() == null) {
                Place whole = Place.ofFile(sheet.file());
                sheet.note(new Fault(whole, "an empty file", "a JSON object", "fill the file in"));
                return;
            }
            JsonNode root = value("");
            if (parser.nextToken() == null) {
                sheet.setRoot(root);
            } else {
                sheet.note(new Fault(
                        here(""), "more text behind the end", "one JSON object", "take out what follows the last }"));
            }
        } catch (StreamConstraintsException tooDeep) {
            sheet.note(new Fault(here(""), "more than 64 levels", "at most 64 levels", "close brackets that are open"));
        } catch (StreamReadException broken) {
            sheet.note(BrokenJson.fault(sheet.file(), text, broken));
        } catch (TooMuch tooMuch) {
            sheet.note(tooMuch.fault);
        }
    }

    private JsonNode value(String pointer) throws IOException {
        sheet.placeValue(pointer, here(pointer));
        guard(pointer);
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(pointer);
            case START_ARRAY -> list(pointer);
            case VALUE_STRING -> NODES.textNode(parser.getText());
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            case VALUE_NULL -> NODES.nullNode();
            default -> number(pointer);
        };
    }

    private JsonNode object(String pointer) throws IOException {
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            String inside = SourceFile.child(pointer, Excerpt.of(key));
            Place place = here(inside);
            boolean again = object.has(key);
            if (again) {
                sheet.note(new Fault(
                        place,
                        "the key \"" + Excerpt.of(key) + "\" a second time",
                        "each key once in an object",
                        "keep one of the two"));
            }
            sheet.placeKey(inside, place);
            parser.nextToken();
            JsonNode value = value(inside);
            if (!again) {
                object.set(key, value);
            }
        }
        return object;
    }

    private JsonNode list(String pointer) throws IOException {
        ArrayNode list = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            list.add(value(pointer + "/" + list.size()));
        }
        return list;
    }

    private JsonNode number(String pointer) throws IOException {
        String text = parser.getText();
        if (text.length() > 20 || text.indexOf('e') >= 0 || text.indexOf('E') >= 0) {
            String allowed = "a number of at most 20 digits, without exponent";
            sheet.fault(pointer, "the number " + Excerpt.of(text), allowed, "check the number");
            return NullNode.instance;
        }
        return NODES.numberNode(new BigDecimal(text));
    }

    private void guard(String pointer) throws TooMuch {
        if (++values > MOST_VALUES) {
            throw new TooMuch(here(""), "more than 100,000 values", "at most 100,000 values", "split the file");
        }
        if (pointer.length() > LONGEST_POINTER) {
            String fix = "use the keys of the schema";
            throw new TooMuch(here(""), "keys longer than any that is known", "a path of 500 characters", fix);
        }
    }

    private Place here(String pointer) {
        JsonLocation at = parser.currentTokenLocation();
        return new Place(sheet.file(), at.getLineNr(), at.getColumnNr(), pointer);
    }

    /** Stops a file that could not be held in memory. */
    private static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1L;
        private final transient Fault fault;

        TooMuch(Place place, String found, String allowed, String fix) {
            this.fault = new Fault(place, found, allowed, fix);
        }
    }
}
