// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the text of a file into a tree that forgets nothing but the spaces. */
final class DraftText {
    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private DraftText() {}

    /** The tree; nothing for a text that is not one JSON object or names a key twice. */
    static Optional<DraftValue.Entries> read(String text) {
        try (JsonParser parser = JSON.createParser(text)) {
            parser.nextToken();
            DraftValue value = value(parser);
            boolean whole = parser.nextToken() == null;
            return whole && value instanceof DraftValue.Entries entries ? Optional.of(entries) : Optional.empty();
        } catch (IOException notJson) {
            return Optional.empty();
        }
    }

    private static DraftValue value(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == null) {
            throw new IOException("nothing more");
        }
        return switch (token) {
            case START_OBJECT -> entries(parser);
            case START_ARRAY -> rows(parser);
            case VALUE_STRING -> new DraftValue.Text(parser.getText());
            default -> new DraftValue.Bare(parser.getText());
        };
    }

    private static DraftValue entries(JsonParser parser) throws IOException {
        Map<String, DraftValue> values = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            parser.nextToken();
            values.put(key, value(parser));
        }
        return new DraftValue.Entries(values);
    }

    private static DraftValue rows(JsonParser parser) throws IOException {
        List<DraftValue> values = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            values.add(value(parser));
        }
        return new DraftValue.Rows(values);
    }
}
