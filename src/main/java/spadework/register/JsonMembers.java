// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.spelling.FormerSpelling;

/** The members of a JSON object of the register, each as what it has to be. */
record JsonMembers(Map<?, ?> object) {

    /** Reads one element of a list. */
    interface Reader<T> {
        T read(JsonMembers members) throws IOException;
    }

    String text(String name) throws IOException {
        return typed(name, value(name), String.class);
    }

    /** A line is never written anew, so a key stays in the spelling of its day. */
    private Object value(String name) throws IOException {
        Optional<String> former = FormerSpelling.of(name).filter(object::containsKey);
        if (former.isPresent() && object.containsKey(name)) {
            throw new IOException("\"" + former.get() + "\" beside \"" + name + "\", which is the same");
        }
        return object.get(former.orElse(name));
    }

    Optional<String> maybe(String name) throws IOException {
        return object.containsKey(name) ? Optional.of(text(name)) : Optional.empty();
    }

    int whole(String name) throws IOException {
        return typed(name, object.get(name), Integer.class);
    }

    /** The same where lines of an earlier day lack it. */
    int whole(String name, int before) throws IOException {
        return object.containsKey(name) ? whole(name) : before;
    }

    LocalDate date(String name) throws IOException {
        String text = text(name);
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException notADate) {
            throw new IOException("\"" + text + "\" for " + name + ", which is no date");
        }
    }

    List<String> texts(String name) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Object element : typed(name, object.get(name), List.class)) {
            texts.add(typed(name, element, String.class));
        }
        return texts;
    }

    Map<String, String> facts(String name) throws IOException {
        Map<String, String> facts = new LinkedHashMap<>();
        for (Map.Entry<?, ?> fact : member(name).object().entrySet()) {
            facts.put(fact.getKey().toString(), typed(name, fact.getValue(), String.class));
        }
        return facts;
    }

    JsonMembers member(String name) throws IOException {
        return new JsonMembers(typed(name, object.get(name), Map.class));
    }

    <T> List<T> list(String name, Reader<T> reader) throws IOException {
        List<T> list = new ArrayList<>();
        for (Object element : typed(name, object.get(name), List.class)) {
            list.add(reader.read(new JsonMembers(typed(name, element, Map.class))));
        }
        return list;
    }

    private static <T> T typed(String name, Object value, Class<T> type) throws IOException {
        if (!type.isInstance(value)) {
            throw new IOException("no " + type.getSimpleName().toLowerCase(java.util.Locale.ROOT) + " for " + name);
        }
        return type.cast(value);
    }
}
