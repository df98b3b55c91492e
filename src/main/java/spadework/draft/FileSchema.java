// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/** What the format of a file allows at each place, from its schema. */
public final class FileSchema {
    private static final FileSchema JOB = new FileSchema("/spadework/intake/job.schema.json", "job");
    private static final FileSchema BOOK = new FileSchema("/spadework/intake/price-book.schema.json", "book");

    private final JsonNode schema;
    /** What each description is called where it is said in another language, by the node that holds it. */
    private final IdentityHashMap<JsonNode, String> described = new IdentityHashMap<>();

    private final Map<String, Optional<SchemaField>> known = new ConcurrentHashMap<>();

    private FileSchema(String resource, String name) {
        try (InputStream in = FileSchema.class.getResourceAsStream(resource)) {
            schema = new ObjectMapper().readTree(in);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        describe(schema, name);
    }

    /** Calls a key {@code job.customer.names}, a definition {@code job.kind.wall}, what a row has {@code …row.…}. */
    private void describe(JsonNode node, String called) {
        described.put(node, called);
        node.path("properties").properties().forEach(key -> describe(key.getValue(), called + "." + key.getKey()));
        node.path("$defs").properties().forEach(kind -> describe(kind.getValue(), called + ".kind." + kind.getKey()));
        if (node.has("items")) {
            describe(node.get("items"), called + ".row");
        }
        for (int way = 0; way < node.path("oneOf").size(); way++) {
            describe(node.get("oneOf").get(way), called + "." + way);
        }
    }

    /** The outline of a job file. */
    public static FileSchema job() {
        return JOB;
    }

    /** The outline of a price book. */
    public static FileSchema book() {
        return BOOK;
    }

    /** What may stand at a JSON pointer; nothing where the format has no such key. */
    public Optional<SchemaField> at(String pointer) {
        return known.computeIfAbsent(pointer, this::find);
    }

    /**
     * Every place of the format by its pointer, with {@code 0} for the rows of a list; groups and lists with all that
     * is in them.
     */
    public List<String> places() {
        List<String> places = new ArrayList<>();
        collect("", places);
        return places;
    }

    private void collect(String pointer, List<String> places) {
        SchemaField spot = at(pointer).orElseThrow();
        if (!pointer.isEmpty()) {
            places.add(pointer);
        }
        if (spot.kind() == FieldKind.LIST) {
            collect(pointer + "/0", places);
        }
        spot.keys().forEach(key -> collect(Pointer.of(pointer, key), places));
    }

    private Optional<SchemaField> find(String pointer) {
        JsonNode holder = schema;
        JsonNode node = schema;
        String last = "";
        for (String key : Pointer.keys(pointer)) {
            JsonNode group = group(resolved(node));
            holder = group;
            node = key.matches("\\d+|-") && group.has("items")
                    ? group.path("items")
                    : group.path("properties").path(key);
            last = key;
            if (node.isMissingNode()) {
                return Optional.empty();
            }
        }
        boolean needed = contains(holder.path("required"), last);
        return Optional.of(spot(node, needed));
    }

    private SchemaField spot(JsonNode node, boolean needed) {
        JsonNode resolved = resolved(node);
        JsonNode group = group(resolved);
        List<String> keys = new ArrayList<>();
        group.path("properties").fieldNames().forEachRemaining(keys::add);
        List<String> choices = new ArrayList<>();
        resolved.path("enum").forEach(choice -> choices.add(choice.asText()));
        Optional<String> usual =
                node.has("default") ? Optional.of(node.get("default").asText()) : Optional.empty();
        JsonNode examples = node.has("examples") ? node.get("examples") : resolved.path("examples");
        Optional<String> example = examples.has(0) ? Optional.of(examples.get(0).asText()) : Optional.empty();
        JsonNode holder = node.has("description") ? node : resolved;
        SchemaField.Help help = new SchemaField.Help(
                described.get(holder), holder.path("description").asText());
        return new SchemaField(kind(node, group), help, choices, usual, example, needed, keys, resolved.has("oneOf"));
    }

    private FieldKind kind(JsonNode node, JsonNode group) {
        String definition = node.path("$ref").asText().replaceAll(".*/", "");
        FieldKind named = FieldKind.ofDefinition(definition);
        if (named != null) {
            return named;
        }
        if (group.has("enum")) {
            return FieldKind.CHOICE;
        }
        return switch (group.path("type").asText()) {
            case "object" -> FieldKind.GROUP;
            case "array" -> FieldKind.LIST;
            case "integer" -> FieldKind.COUNT;
            case "boolean" -> FieldKind.YES_OR_NO;
            default -> FieldKind.LABEL;
        };
    }

    /** The definition that a node refers to, or the node itself. */
    private JsonNode resolved(JsonNode node) {
        return node.has("$ref") ? schema.at(node.get("$ref").asText().substring(1)) : node;
    }

    /** Of two ways to write a value, the one with keys. */
    private static JsonNode group(JsonNode node) {
        for (JsonNode way : node.path("oneOf")) {
            if (way.has("properties")) {
                return way;
            }
        }
        return node;
    }

    private static boolean contains(JsonNode list, String word) {
        TreeSet<String> words = new TreeSet<>();
        list.forEach(element -> words.add(element.asText()));
        return words.contains(word);
    }
}
