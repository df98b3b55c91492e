// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** JSON as maps, lists, texts and whole numbers, on one line. */
final class Json {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private Json() {}

    static byte[] write(Map<String, ?> object) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(1024);
        try (JsonGenerator generator = FACTORY.createGenerator(out)) {
            write(generator, object);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return out.toByteArray();
    }

    /** The object that the bytes hold. */
    static Map<?, ?> read(byte[] bytes) throws IOException {
        try (JsonParser parser = FACTORY.createParser(bytes)) {
            parser.nextToken();
            if (read(parser) instanceof Map<?, ?> object && parser.nextToken() == null) {
                return object;
            }
            throw new IOException("a line that is not one JSON object");
        }
    }

    private static void write(JsonGenerator generator, Object value) throws IOException {
        if (value instanceof Map<?, ?> object) {
            generator.writeStartObject();
            for (Map.Entry<?, ?> member : object.entrySet()) {
                generator.writeFieldName(member.getKey().toString());
                write(generator, member.getValue());
            }
            generator.writeEndObject();
        } else if (value instanceof List<?> list) {
            generator.writeStartArray();
            for (Object element : list) {
                write(generator, element);
            }
            generator.writeEndArray();
        } else if (value instanceof Integer number) {
            generator.writeNumber(number);
        } else {
            generator.writeString(value.toString());
        }
    }

    private static Object read(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            Map<String, Object> object = new LinkedHashMap<>();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                parser.nextToken();
                object.put(name, read(parser));
            }
            return object;
        }
        if (token == JsonToken.START_ARRAY) {
            List<Object> list = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                list.add(read(parser));
            }
            return list;
        }
        if (token == JsonToken.VALUE_NUMBER_INT) {
            return parser.getIntValue();
        }
        if (token == JsonToken.VALUE_STRING) {
            return parser.getText();
        }
        throw new IOException("found " + token + " where an object, a list, a text or a whole number is due");
    }
}
