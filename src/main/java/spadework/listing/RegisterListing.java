// SPDX-License-Identifier: Apache-2.0
package spadework.listing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import spadework.register.Entry;

/** A register for other programs to read, as JSON: dates as ISO text. */
public final class RegisterListing {
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private RegisterListing() {}

    public static String of(List<Entry> entries) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode lines = root.putArray("lines");
        entries.forEach(entry -> line(lines.addObject(), entry));
        return text(root);
    }

    private static void line(ObjectNode line, Entry entry) {
        line.put("line", entry.line())
                .put("on", entry.on().toString())
                .put("event", entry.event().words());
        entry.number().ifPresent(number -> line.put("number", number.text()).put("revision", entry.revision()));
        ArrayNode files = line.putArray("files");
        entry.files().forEach(file -> files.addObject().put("name", file.name()).put("sha256", file.sha256()));
        ObjectNode facts = line.putObject("facts");
        entry.facts().forEach(facts::put);
        entry.warranty().ifPresent(warranty -> line.set("warranty", WarrantyListing.warranty(warranty)));
        line.put("seal", entry.seal());
    }

    static String text(JsonNode root) {
        try {
            return JSON.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
