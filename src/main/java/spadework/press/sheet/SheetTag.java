// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamReader;
import spadework.press.template.TemplateFault;

/** The attributes of one tag of the sheet language; asking for one that is missing or misspelt is a fault. */
public record SheetTag(String template, String name, int line, Map<String, String> attributes) {

    /**
     * The tag at which the reader stands.
     *
     * @throws TemplateFault if it has an attribute that is not allowed
     */
    static SheetTag of(String template, XMLStreamReader xml, List<String> allowed) {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
        }
        SheetTag tag =
                new SheetTag(template, xml.getLocalName(), xml.getLocation().getLineNumber(), attributes);
        for (String key : attributes.keySet()) {
            if (!allowed.contains(key)) {
                throw tag.fault("found " + key + ", allowed: " + String.join(", ", allowed));
            }
        }
        return tag;
    }

    TemplateFault fault(String problem) {
        return WorkbookReader.fault(template, line, "<" + name + ">: " + problem, null);
    }

    Optional<String> find(String key) {
        return Optional.ofNullable(attributes.get(key)).filter(value -> !value.isEmpty());
    }

    String text(String key, String otherwise) {
        return find(key).orElse(otherwise);
    }

    String text(String key) {
        return find(key).orElseThrow(() -> fault("it needs " + key));
    }

    boolean yes(String key) {
        return oneOf(key, "no", "yes").equals("yes");
    }

    /** One of the values; the first when the attribute is missing. */
    String oneOf(String key, String... values) {
        String found = text(key, values[0]);
        if (!List.of(values).contains(found)) {
            throw fault(key + " is " + found + ", allowed: " + String.join(", ", values));
        }
        return found;
    }

    <E extends Enum<E>> Optional<E> choice(String key, Class<E> kinds) {
        String[] values = Arrays.stream(kinds.getEnumConstants())
                .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                .toArray(String[]::new);
        return find(key).map(found -> Enum.valueOf(kinds, oneOf(key, values).toUpperCase(Locale.ROOT)));
    }

    double number(String key) {
        String found = text(key);
        if (!found.matches("\\d{1,3}(\\.\\d{1,2})?")) {
            throw fault(key + " is " + found + ", allowed: a plain number");
        }
        return Double.parseDouble(found);
    }

    Optional<String> color(String key) {
        Optional<String> found = find(key);
        if (found.isPresent() && !found.get().matches("[0-9A-F]{6}")) {
            throw fault(key + " is " + found.get() + ", allowed: six hexadecimal digits");
        }
        return found;
    }
}
