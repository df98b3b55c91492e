// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A value in a file together with its pointer. Asking it for the wrong type notes a fault and gives nothing.
 *
 * @param json what stands there; null when nothing does and that has been noted already
 */
public record SourceNode(SourceFile sheet, String pointer, JsonNode json) {

    /** True when there is nothing to read here and no further fault to tell. */
    public boolean isSilent() {
        return json == null || sheet.isFaulty(pointer);
    }

    public boolean isObject() {
        return json != null && json.isObject();
    }

    /** The written text, or a fault that says what is allowed. */
    public Optional<String> text(String allowed, String example) {
        if (isSilent()) {
            return Optional.empty();
        }
        if (json.isTextual()) {
            return Optional.of(json.textValue());
        }
        wrongType(allowed, json.isNumber() ? "put it in quotes, as " + example : "write " + example);
        return Optional.empty();
    }

    /** The digits of a written number, or a fault that says what is allowed. */
    public Optional<String> number(String allowed, String example) {
        if (isSilent()) {
            return Optional.empty();
        }
        if (json.isNumber()) {
            return Optional.of(digits());
        }
        boolean quoted = json.isTextual() && json.textValue().matches("-?\\d{1,9}");
        wrongType(allowed, quoted ? "take the quotes away" : "write it without quotes, as " + example);
        return Optional.empty();
    }

    Optional<Boolean> yesOrNo() {
        if (isSilent()) {
            return Optional.empty();
        }
        if (json.isBoolean()) {
            return Optional.of(json.booleanValue());
        }
        wrongType("true or false", "write true or false, without quotes");
        return Optional.empty();
    }

    /** What an object holds; nothing, after a fault, when it is none. */
    ObjectFields fields() {
        if (!isSilent() && !json.isObject()) {
            wrongType("an object", "write it between { and }");
        }
        return new ObjectFields(isSilent() ? new SourceNode(sheet, pointer, null) : this);
    }

    /** The elements of a list; none, after a fault, when it is none. */
    public List<SourceNode> elements() {
        List<SourceNode> elements = new ArrayList<>();
        if (isSilent()) {
            return elements;
        }
        if (!json.isArray()) {
            wrongType("a list", "write it between [ and ]");
        }
        for (int i = 0; i < json.size() && json.isArray(); i++) {
            elements.add(new SourceNode(sheet, pointer + "/" + i, json.get(i)));
        }
        return elements;
    }

    public SourceNode at(String key) {
        JsonNode value = json == null ? null : json.get(key);
        return new SourceNode(sheet, SourceFile.child(pointer, key), value);
    }

    /** The keys of an object in the order of the alphabet; none when it is no object. */
    public TreeSet<String> keys() {
        TreeSet<String> keys = new TreeSet<>();
        if (isObject()) {
            json.fieldNames().forEachRemaining(keys::add);
        }
        return keys;
    }

    public void fault(String found, String allowed, String fix) {
        sheet.fault(pointer, found, allowed, fix);
    }

    private void wrongType(String allowed, String fix) {
        fault(written(), allowed, json.isNull() ? "write a value, or take the key out" : fix);
    }

    /** What stands here, short, as a message shows it. */
    public String written() {
        return switch (json.getNodeType()) {
            case OBJECT -> "an object";
            case ARRAY -> "a list";
            case STRING -> Excerpt.quoted(json.textValue());
            case NUMBER -> "the bare number " + digits();
            default -> json.asText();
        };
    }

    private String digits() {
        BigDecimal number = json.decimalValue();
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
