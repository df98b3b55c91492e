// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.Optional;
import spadework.intake.source.SourceNode;
import spadework.intake.source.ValueKind;
import spadework.measure.UnreadableMeasure;

/** Values that stand in the file as text with their unit. */
public final class TextWithUnit {
    private static final int LONGEST = 60;

    private TextWithUnit() {}

    /** A grammar of written values. */
    public interface Grammar<T> {
        T read(String text) throws UnreadableMeasure;
    }

    /**
     * A kind of value with its unit, within limits.
     *
     * @param what what is allowed, with its units
     * @param example a value as it is written, without quotes
     * @param standIn what is taken after a fault
     */
    public static <T> ValueKind<T> kind(String what, String example, Grammar<T> grammar, Limits<T> limits, T standIn) {
        String allowed = what + ", " + limits.words();
        String quoted = "\"" + example + "\"";
        return new ValueKind<>(quoted, node -> {
            Optional<T> value = node.text(allowed, quoted).flatMap(text -> read(node, text, what, quoted, grammar));
            if (value.isPresent() && !limits.allow(value.get())) {
                node.fault(node.written(), allowed, "check the figure and write one within the limits");
                return standIn;
            }
            return value.orElse(standIn);
        });
    }

    private static <T> Optional<T> read(SourceNode node, String text, String what, String quoted, Grammar<T> grammar) {
        if (text.length() > LONGEST) {
            node.fault(node.written(), what, "write it as " + quoted);
            return Optional.empty();
        }
        try {
            return Optional.of(grammar.read(text));
        } catch (UnreadableMeasure unreadable) {
            node.fault(node.written(), unreadable.allowed(), unreadable.fix());
            return Optional.empty();
        }
    }
}
