// SPDX-License-Identifier: Apache-2.0
package spadework;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The list of all keys of a job is made from the schema, each key once. */
class KeyReferenceTest {
    private static final Path PAGE = Path.of("src/reference/job-keys.md");
    private static final Path SCHEMA = Path.of("src/main/resources/spadework/intake/job.schema.json");
    private static final String HEAD = """
            # Keys of a job

            Every key that `job.json` may hold, made from
            [its schema](../main/resources/spadework/intake/job.schema.json). What is needed is marked \u2022.
            """;

    private final JsonNode schema = schema();
    private final Map<String, JsonNode> groups = new LinkedHashMap<>();
    private final ArrayDeque<String> open = new ArrayDeque<>();

    private static JsonNode schema() {
        try {
            return new ObjectMapper().readTree(SCHEMA.toFile());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Test
    void everyKeyStandsThereOnceAsTheSchemaHasIt() throws IOException {
        String made = page();
        if (Boolean.getBoolean("spadework.refresh")) {
            Files.writeString(PAGE, made);
        }
        assertThat(Files.readString(PAGE)).isEqualTo(made);
        assertThat(groups.keySet()).contains("the job", "wall", "drain", "the job / site");
    }

    private String page() {
        group("the job", schema);
        StringBuilder page = new StringBuilder(HEAD);
        while (!open.isEmpty()) {
            String name = open.poll();
            JsonNode node = groups.get(name);
            page.append("\n## ")
                    .append(name)
                    .append("\n\n")
                    .append("| key | | meaning | written as |\n|---|---|---|---|\n");
            node.path("properties")
                    .properties()
                    .forEach(field -> page.append(row(name, node, field.getKey(), field.getValue())));
        }
        return page.toString();
    }

    private String row(String group, JsonNode holder, String key, JsonNode field) {
        boolean needed = false;
        for (JsonNode name : holder.path("required")) {
            needed |= name.asText().equals(key);
        }
        String meaning = field.path("description")
                .asText(resolved(field).path("description").asText());
        return "| `" + key + "` | " + (needed ? "\u2022" : "") + " | " + meaning.replace("|", "\\|") + " | "
                + written(group, key, field).replace("|", "\\|") + " |\n";
    }

    private String written(String group, String key, JsonNode field) {
        JsonNode node = resolved(field);
        if (node.path("type").asText().equals("array")) {
            return "list of: " + written(group, key, node.path("items"));
        }
        JsonNode keyed = keyed(node);
        if (keyed != null) {
            String name =
                    named(field).isEmpty() ? group.replaceAll("^(?!the job).*/ ", "") + " / " + key : named(field);
            group(name, keyed);
            String also = node.has("properties") ? "" : ", or its first value alone";
            return "[" + name + "](#"
                    + name.replaceAll("[^a-zA-Z0-9 -]", "").replace(' ', '-').toLowerCase(Locale.ROOT) + ")" + also;
        }
        List<String> choices = new ArrayList<>();
        node.path("enum").forEach(word -> choices.add("`" + word.asText() + "`"));
        if (!choices.isEmpty()) {
            return String.join(", ", choices) + usual(field);
        }
        JsonNode examples = field.has("examples") ? field.path("examples") : node.path("examples");
        String example = examples.has(0) ? ", as `" + examples.get(0).asText() + "`" : "";
        return kind(named(field), node) + example + usual(field);
    }

    private static String kind(String definition, JsonNode node) {
        if (!definition.isEmpty()) {
            return definition.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
        }
        return switch (node.path("type").asText()) {
            case "integer" -> "whole number";
            case "boolean" -> "`true` or `false`";
            default -> "words";
        };
    }

    private static String usual(JsonNode field) {
        return field.has("default") ? "; left out: `" + field.get("default").asText() + "`" : "";
    }

    private void group(String name, JsonNode node) {
        if (groups.putIfAbsent(name, node) == null) {
            open.add(name);
        }
    }

    /** The node, or the one of its two ways to be written that has keys; null for a single value. */
    private JsonNode keyed(JsonNode node) {
        if (node.has("properties")) {
            return node;
        }
        for (JsonNode way : node.path("oneOf")) {
            if (resolved(way).has("properties")) {
                return resolved(way);
            }
        }
        return null;
    }

    private static String named(JsonNode field) {
        return field.path("$ref").asText().replaceAll(".*/", "");
    }

    private JsonNode resolved(JsonNode field) {
        return field.has("$ref") ? schema.at(field.get("$ref").asText().substring(1)) : field;
    }
}
