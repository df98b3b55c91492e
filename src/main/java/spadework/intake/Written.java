package spadework.intake;

import java.util.Optional;
import spadework.measure.UnreadableMeasure;

/** Values that stand in the file as text with their unit. */
final class Written {
    private static final int LONGEST = 60;

    private Written() {}

    /** A grammar of written values. */
    interface Grammar<T> {
        T read(String text) throws UnreadableMeasure;
    }

    /**
     * A kind of value with its unit, within limits.
     *
     * @param what what is allowed, with its units
     * @param example a value as it is written, without quotes
     * @param standIn what is taken after a fault
     */
    static <T> Kind<T> kind(String what, String example, Grammar<T> grammar, Limits<T> limits, T standIn) {
        String allowed = what + ", " + limits.words();
        String quoted = "\"" + example + "\"";
        return new Kind<>(quoted, node -> {
            Optional<T> value = node.text(allowed, quoted).flatMap(text -> read(node, text, what, quoted, grammar));
            if (value.isPresent() && !limits.allow(value.get())) {
                node.fault(node.written(), allowed, "check the figure and write one within the limits");
                return standIn;
            }
            return value.orElse(standIn);
        });
    }

    private static <T> Optional<T> read(Node node, String text, String what, String quoted, Grammar<T> grammar) {
        if (text.length() > LONGEST) {
            node.fault(node.written(), what, "write it as " + quoted);
            return Optional.empty();
        }
        try {
            return Optional.of(grammar.read(text));
        } catch (UnreadableMeasure unreadable) {
            node.fault(node.written(), unreadable.allowed(), unreadable.mend());
            return Optional.empty();
        }
    }
}
