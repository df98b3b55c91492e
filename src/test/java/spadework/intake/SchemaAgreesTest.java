// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.intake.source.SourceFile;

/** What the schema refuses the reader refuses, and the other way round as far as a schema can tell. */
class SchemaAgreesTest {

    /** Values that are wrong, or right, by their type alone. */
    private static final List<String> TYPES = List.of("null", "true", "1.5", "7", "\"\"", "\"  \"", "[]", "{}");

    /** Values that some keys take and others do not; here the reader may know more than a schema can say. */
    private static final List<String> WRONG = List.of("\"-5 ft\"", "\"$3.999\"", "\"x\\u0007y\"", "-1");

    @ParameterizedTest
    @EnumSource
    void keyIsNeededByBothOrByNeither(FormatFile file) {
        List<String> disagreed = new ArrayList<>();
        for (Spot spot : spots(file)) {
            if (spot.key() != null) {
                JsonNode document = file.sample();
                ((ObjectNode) document.at(spot.parent())).remove(spot.key());
                boolean needed = file.isRefusedBySchema(document);
                boolean noted = FormatFile.isWanting(file.read(document), spot.parent());
                compare(needed, noted, "without " + spot.pointer(), disagreed);
            }
        }
        assertThat(disagreed).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void typeIsRefusedByBothOrByNeither(FormatFile file) {
        List<String> disagreed = new ArrayList<>();
        for (Spot spot : spots(file)) {
            for (String value : TYPES) {
                JsonNode document = spot.with(value);
                boolean refused = file.isRefusedBySchema(document);
                boolean noted = FormatFile.isRefusedAt(file.read(document), spot.pointer());
                compare(refused, noted, spot.pointer() + " = " + value, disagreed);
            }
        }
        assertThat(disagreed).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void whatTheSchemaRefusesTheReaderRefuses(FormatFile file) {
        List<String> letThrough = new ArrayList<>();
        int refused = 0;
        for (Spot spot : spots(file)) {
            for (String value : WRONG) {
                JsonNode document = spot.with(value);
                if (file.isRefusedBySchema(document)) {
                    refused++;
                    compare(true, FormatFile.isRefusedAt(file.read(document), spot.pointer()), value, letThrough);
                }
            }
        }
        assertThat(refused).isGreaterThan(100);
        assertThat(letThrough).isEmpty();
    }

    private static void compare(boolean bySchema, boolean byReader, String what, List<String> disagreed) {
        if (bySchema != byReader) {
            disagreed.add(what + ": " + (bySchema ? "only the schema refuses it" : "only the reader refuses it"));
        }
    }

    @ParameterizedTest(name = "{1} at {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # every spelling of a length
            /walls/1/length            | 30 ft           | true
            /walls/1/length            | 29 ft 11 in     | true
            /walls/1/length            | 29' 11"         | true
            /walls/1/length            | 29'-11"         | true
            /walls/1/length            | 29 ft 11 1/2 in | true
            /walls/1/length            | 29½ ft          | true
            /walls/1/length            | 29.5 feet       | true
            /walls/1/length            | 9 m             | true
            /walls/1/length            | 900 cm          | true
            /walls/1/length            | 9000 mm         | true
            /walls/1/length            | 9 yd            | true
            /walls/1/length            | 30              | false
            /walls/1/length            | -30 ft          | false
            /walls/1/length            | 30 ells         | false
            /walls/1/length            | ft              | false
            # levels may lie below the benchmark
            /site/insideFloor          | -2 ft 3 in      | true
            /site/insideFloor          | 94.35 ft        | true
            # areas, rain, film
            /water/downspouts/0/roof   | 1,850 sf        | true
            /water/downspouts/0/roof   | 94 sy           | true
            /water/downspouts/0/roof   | 79 m2           | true
            /water/downspouts/0/roof   | 850 ft          | false
            /site/rain/intensity       | 76 mm/h         | true
            /site/rain/intensity       | 3 in            | false
            /walls/0/finish/dryFilm    | 1.5 mm          | true
            /walls/0/finish/dryFilm    | 60 mils         | false
            # percent, money, dates, quantities
            /walls/0/digging/handShare | 12.5%           | true
            /walls/0/digging/handShare | 12.5            | false
            /priceChanges/1/materialCost | $1,234.5      | true
            /priceChanges/1/materialCost | $1,23.50      | false
            /priceChanges/1/materialCost | $0.005        | false
            /priceChanges/1/materialCost | USD 5         | false
            /issued                    | 2026-03-03      | true
            /issued                    | 3/3/2026        | false
            /issued                    | 2026-00-10      | false
            /items/0/quantity          | 1,000.5 cy      | true
            /items/0/quantity          | 2 cubits        | false
            # words, names, ends
            /site/address/zip          | 43000-1234      | true
            /site/address/zip          | 430001234       | false
            /photos/0/file             | pictures/a.jpg  | true
            /photos/0/file             | ../a.jpg        | false
            /photos/0/file             | /etc/a.jpg      | false
            /corners/0/first           | A start         | true
            /corners/0/first           | A middle        | false
            """)
    void spellingIsAcceptedByBothOrByNeither(String pointer, String written, boolean accepted) {
        JsonNode document = new Spot(FormatFile.JOB, pointer, null).with("\"" + written.replace("\"", "\\\"") + "\"");
        assertThat(FormatFile.JOB.schemaErrors(document).isEmpty()).isEqualTo(accepted);
        assertThat(FormatFile.isRefusedAt(FormatFile.JOB.read(document), pointer))
                .isEqualTo(!accepted);
    }

    /** A value of a sample; {@code key} is null for an element of a list. */
    private record Spot(FormatFile file, String pointer, String key) {
        String parent() {
            return pointer.substring(0, pointer.lastIndexOf('/'));
        }

        JsonNode with(String value) {
            JsonNode document = file.sample();
            JsonPointer place = JsonPointer.compile(pointer);
            JsonNode parent = document.at(place.head());
            if (parent instanceof ArrayNode list) {
                list.set(place.last().getMatchingIndex(), FormatFile.parse(value));
            } else {
                ((ObjectNode) parent).set(place.last().getMatchingProperty(), FormatFile.parse(value));
            }
            return document;
        }
    }

    private static List<Spot> spots(FormatFile file) {
        List<Spot> spots = new ArrayList<>();
        collect(file, "", file.sample(), spots);
        return spots;
    }

    private static void collect(FormatFile file, String pointer, JsonNode node, List<Spot> spots) {
        if (node.isObject()) {
            node.properties().forEach(property -> {
                String inside = SourceFile.child(pointer, property.getKey());
                spots.add(new Spot(file, inside, property.getKey()));
                collect(file, inside, property.getValue(), spots);
            });
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            spots.add(new Spot(file, pointer + "/" + i, null));
            collect(file, pointer + "/" + i, node.get(i), spots);
        }
    }
}
