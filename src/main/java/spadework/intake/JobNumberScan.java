// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Optional;

/** Finds a job's number without reading the job: it stands near the beginning of nearly every file. */
public final class JobNumberScan {
    private static final String NUMBER = "number";
    private static final JsonFactory FACTORY = new JsonFactory();

    private JobNumberScan() {}

    /** The text of the outermost key {@code number}; empty where there is none, or the text is no JSON up to there. */
    static Optional<String> of(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                JsonToken value = parser.nextToken();
                if (name.equals(NUMBER)) {
                    return value == JsonToken.VALUE_STRING ? Optional.of(parser.getText()) : Optional.empty();
                }
                parser.skipChildren();
            }
            return Optional.empty();
        } catch (IOException noJson) {
            return Optional.empty();
        }
    }
}
