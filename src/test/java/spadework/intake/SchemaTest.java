// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The schemas are sound, explain every key, and know exactly the keys and words that the reader knows. */
class SchemaTest {
    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    @ParameterizedTest
    @EnumSource
    void schemaIsDraft2020And12UnderItsOwnAddress(FormatFile file) {
        Schema metaSchema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(DIALECT));
        assertThat(metaSchema.validate(file.schemaText(), InputFormat.JSON)).isEmpty();
        assertThat(file.schema().path("$schema").asText()).isEqualTo(DIALECT);
        assertThat(file.schema().path("$id").asText())
                .isEqualTo("https://spadework.example.com/schema/" + file.schemaName());
    }

    @ParameterizedTest
    @EnumSource
    void fullSampleSatisfiesSchemaAndReader(FormatFile file) {
        assertThat(file.schemaErrors(file.sample())).isEmpty();
        assertThat(file.read(file.sample()).faults()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void everyKeyHasTitleAndDescriptionAndNoOtherKeyIsAllowed(FormatFile file) {
        List<JsonNode> objects = new SchemaShape(file.schema()).objects();
        assertThat(objects).isNotEmpty();
        for (JsonNode object : objects) {
            assertThat(object.path("additionalProperties").asText()).isEqualTo("false");
            object.path("properties").properties().forEach(property -> {
                assertThat(property.getValue().path("title").asText())
                        .as(property.getKey())
                        .isNotBlank();
                assertThat(property.getValue().path("description").asText())
                        .as(property.getKey())
                        .isNotBlank();
            });
        }
    }

    @ParameterizedTest
    @EnumSource
    void readerKnowsExactlyTheKeysOfEveryObject(FormatFile file) {
        SchemaShape shape = new SchemaShape(file.schema());
        Set<JsonNode> unread = Collections.newSetFromMap(new IdentityHashMap<>());
        unread.addAll(shape.objects());
        file.read(file.sample()).knownKeys().forEach((pointer, keys) -> {
            JsonNode object = shape.objectAt(pointer);
            assertThat(keys).as(pointer).isEqualTo(SchemaShape.keys(object));
            unread.remove(object);
        });
        assertThat(unread)
                .as("objects of the schema that the sample does not show")
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void readerKnowsExactlyTheWordsOfEveryEnum(FormatFile file) {
        SchemaShape shape = new SchemaShape(file.schema());
        var known = file.read(file.sample()).knownWords();
        assertThat(known).isNotEmpty();
        known.forEach((pointer, words) -> {
            List<String> listed = new ArrayList<>();
            shape.at(pointer).path("enum").forEach(word -> listed.add(word.asText()));
            assertThat(listed).as(pointer).containsExactlyInAnyOrderElementsOf(words);
        });
    }

    @ParameterizedTest
    @EnumSource
    void whatSchemasShareIsTheSame(FormatFile file) {
        Set<String> shared = new TreeSet<>();
        file.schema().path("$defs").properties().forEach(definition -> {
            for (FormatFile other : FormatFile.values()) {
                JsonNode same = other.schema().path("$defs").path(definition.getKey());
                if (other != file && !same.isMissingNode()) {
                    assertThat(same).as(definition.getKey()).isEqualTo(definition.getValue());
                    shared.add(definition.getKey());
                }
            }
        });
        assertThat(shared).contains("text", "label", "money");
    }
}
