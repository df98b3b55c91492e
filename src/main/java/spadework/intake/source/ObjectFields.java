// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import spadework.spelling.FormerSpelling;

/** The keys of one object, asked for by name. A key that was spelled otherwise once is found in that spelling too. */
public final class ObjectFields {
    private final SourceNode node;
    private final Set<String> asked = new LinkedHashSet<>();

    ObjectFields(SourceNode node) {
        this.node = node;
    }

    public SourceNode node() {
        return node;
    }

    /** A value that has to be there. */
    public <T> T get(String key, ValueKind<T> kind) {
        SourceNode value = ask(key);
        if (value.json() == null && !node.isSilent()) {
            missing(value, key, kind.example());
        }
        return kind.read(value);
    }

    /** A value that may be left out for a usual one. */
    public <T> T get(String key, ValueKind<T> kind, T usual) {
        return find(key, kind).orElse(usual);
    }

    /** A value that may be left out for one that is read elsewhere. */
    public <T> T get(String key, ValueKind<T> kind, Supplier<T> usual) {
        return find(key, kind).orElseGet(usual);
    }

    /** A value that may be left out. */
    public <T> Optional<T> find(String key, ValueKind<T> kind) {
        SourceNode value = ask(key);
        return value.json() == null ? Optional.empty() : Optional.of(kind.read(value));
    }

    /** A list that may be left out when it is empty. */
    public <T> List<T> list(String key, ValueKind<T> kind) {
        return elements(ask(key), kind);
    }

    /** A list that has to be there with at least one element. */
    public <T> List<T> filled(String key, ValueKind<T> kind) {
        SourceNode value = ask(key);
        if (value.json() == null && !node.isSilent()) {
            missing(value, key, "[" + kind.example() + "]");
        }
        List<T> list = elements(value, kind);
        if (list.isEmpty() && !value.isSilent()) {
            value.fault("an empty list", "at least one element", "add " + kind.example());
        }
        return list;
    }

    /** Values by names of the contractor's own. */
    public <T> Map<String, T> named(String key, ValueKind<T> kind) {
        SourceNode value = ask(key);
        if (value.json() == null && !node.isSilent()) {
            missing(value, key, "{\"…\": " + kind.example() + "}");
        }
        Map<String, T> named = new LinkedHashMap<>();
        if (!value.isSilent() && !value.isObject()) {
            value.fields();
        }
        for (String name : value.keys()) {
            Texts.checkName(value.at(name), name);
            named.put(name, kind.read(value.at(name)));
        }
        return named;
    }

    /** Notes every key that nobody asked for, and says which could still be meant. */
    void done() {
        node.sheet().know(node.pointer(), asked);
        for (String key : node.keys()) {
            if (!asked.contains(key) && !asked.contains(FormerSpelling.current(key))) {
                unknown(key);
            }
        }
    }

    private <T> List<T> elements(SourceNode value, ValueKind<T> kind) {
        List<T> list = new ArrayList<>();
        for (SourceNode element : value.elements()) {
            list.add(kind.read(element));
        }
        return list;
    }

    private SourceNode ask(String key) {
        boolean first = asked.add(key);
        SourceNode value = node.at(key);
        Optional<SourceNode> former = FormerSpelling.of(key).map(node::at).filter(old -> old.json() != null);
        if (former.isPresent() && value.json() != null && first) {
            spelledTwice(key, FormerSpelling.of(key).orElseThrow());
        }
        return value.json() == null ? former.orElse(value) : value;
    }

    private void spelledTwice(String key, String former) {
        node.sheet()
                .fault(
                        node.sheet().placeOfKey(SourceFile.child(node.pointer(), former)),
                        "\"" + former + "\" beside \"" + key + "\", which is the same key",
                        "\"" + key + "\" once",
                        "take \"" + former + "\" out");
    }

    private boolean isOpen(String key) {
        return node.at(key).json() == null
                && FormerSpelling.of(key)
                        .filter(former -> node.at(former).json() != null)
                        .isEmpty();
    }

    private void missing(SourceNode value, String key, String example) {
        value.fault("no \"" + key + "\"", "\"" + key + "\" is needed here", "add \"" + key + "\": " + example);
    }

    private void unknown(String key) {
        List<String> open = asked.stream().filter(this::isOpen).toList();
        Optional<String> nearest = NearestName.of(key, open);
        node.sheet()
                .fault(
                        node.sheet().placeOfKey(SourceFile.child(node.pointer(), Excerpt.of(key))),
                        "the unknown key " + Excerpt.quoted(key),
                        open.isEmpty() ? "no further key" : String.join(", ", open),
                        nearest.map(name -> "write \"" + name + "\"").orElseGet(() -> takeOut(key)));
    }

    private String takeOut(String key) {
        return NearestName.of(key, asked)
                .map(name -> "\"" + name + "\" stands here already; take this one out")
                .orElse("take it out");
    }
}
