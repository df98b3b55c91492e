// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Finds one's way in a schema by the pointer of a document. */
public record SchemaShape(JsonNode root) {

    /** What the schema says about the value at a pointer. */
    JsonNode at(String pointer) {
        JsonNode schema = root;
        for (String key :
                pointer.isEmpty() ? new String[0] : pointer.substring(1).split("/")) {
            schema = inside(resolved(schema), key.replace("~1", "/").replace("~0", "~"));
        }
        return resolved(schema);
    }

    /** The object among the alternatives of a value. */
    JsonNode objectAt(String pointer) {
        JsonNode schema = at(pointer);
        for (JsonNode alternative : schema.path("oneOf")) {
            if (alternative.has("properties")) {
                return alternative;
            }
        }
        return schema;
    }

    /** Every schema of an object with properties. */
    List<JsonNode> objects() {
        List<JsonNode> objects = new ArrayList<>();
        collect(root, objects);
        return objects;
    }

    static Set<String> keys(JsonNode object) {
        Set<String> keys = new TreeSet<>();
        object.path("properties").fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    JsonNode resolved(JsonNode schema) {
        String reference = schema.path("$ref").asText();
        return reference.isEmpty() ? schema : resolved(root.at(reference.substring(1)));
    }

    private JsonNode inside(JsonNode schema, String key) {
        JsonNode object = schema;
        for (JsonNode alternative : schema.path("oneOf")) {
            object = alternative.has("properties") ? alternative : object;
        }
        if (object.path("properties").has(key)) {
            return object.path("properties").get(key);
        }
        return object.has("items") ? object.get("items") : object.path("additionalProperties");
    }

    private static void collect(JsonNode node, List<JsonNode> objects) {
        if (node.has("properties") && node.path("type").asText().equals("object")) {
            objects.add(node);
        }
        node.forEach(child -> collect(child, objects));
    }
}
