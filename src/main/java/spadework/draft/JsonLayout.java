// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.Iterator;
import java.util.Map;

/** Writes a tree as text: two spaces a level, and what is short on one line. The same tree gives the same text. */
final class JsonLayout {
    private static final int WIDEST = 110;
    private static final int MOST_ON_A_LINE = 10;

    private final StringBuilder text = new StringBuilder();

    private JsonLayout() {}

    static String of(DraftValue.Entries root) {
        JsonLayout layout = new JsonLayout();
        layout.broken(root, 0);
        return layout.text.append('\n').toString();
    }

    private void put(DraftValue value, int indent, int used) {
        String line = value.isEmpty() || isShort(value) ? line(value) : null;
        if (line != null
                && (used + line.length() <= WIDEST
                        || (!(value instanceof DraftValue.Entries) && !(value instanceof DraftValue.Rows)))) {
            text.append(line);
        } else {
            broken(value, indent);
        }
    }

    private void broken(DraftValue value, int indent) {
        String inner = "  ".repeat(indent + 1);
        if (value instanceof DraftValue.Rows rows) {
            text.append("[\n");
            for (Iterator<DraftValue> each = rows.values().iterator(); each.hasNext(); ) {
                text.append(inner);
                put(each.next(), indent + 1, inner.length());
                text.append(each.hasNext() ? ",\n" : "\n");
            }
            text.append("  ".repeat(indent)).append(']');
        } else if (value instanceof DraftValue.Entries entries) {
            text.append("{\n");
            for (Iterator<Map.Entry<String, DraftValue>> each =
                            entries.values().entrySet().iterator();
                    each.hasNext(); ) {
                Map.Entry<String, DraftValue> entry = each.next();
                String key = quoted(entry.getKey()) + ": ";
                text.append(inner).append(key);
                put(entry.getValue(), indent + 1, inner.length() + key.length());
                text.append(each.hasNext() ? ",\n" : "\n");
            }
            text.append("  ".repeat(indent)).append('}');
        } else {
            text.append(line(value));
        }
    }

    /** Whether a line can hold it for a reader: few values, and no list of objects. */
    private static boolean isShort(DraftValue value) {
        if (value instanceof DraftValue.Rows rows) {
            return rows.values().stream()
                    .noneMatch(row -> row instanceof DraftValue.Entries || row instanceof DraftValue.Rows);
        }
        return leaves(value, 0) <= MOST_ON_A_LINE;
    }

    private static int leaves(DraftValue value, int depth) {
        if (value instanceof DraftValue.Entries entries) {
            return depth > 1
                    ? MOST_ON_A_LINE + 1
                    : entries.values().values().stream()
                            .mapToInt(inside -> leaves(inside, depth + 1))
                            .sum();
        }
        if (value instanceof DraftValue.Rows rows) {
            return isShort(rows) ? rows.values().size() : MOST_ON_A_LINE + 1;
        }
        return 1;
    }

    private static String line(DraftValue value) {
        StringBuilder line = new StringBuilder();
        if (value instanceof DraftValue.Text words) {
            return quoted(words.words());
        }
        if (value instanceof DraftValue.Bare bare) {
            return bare.token();
        }
        if (value instanceof DraftValue.Rows rows) {
            rows.values().forEach(row -> line.append(line.isEmpty() ? "" : ", ").append(line(row)));
            return "[" + line + "]";
        }
        ((DraftValue.Entries) value)
                .values()
                .forEach((key, inside) -> line.append(line.isEmpty() ? "" : ", ")
                        .append(quoted(key))
                        .append(": ")
                        .append(line(inside)));
        return line.isEmpty() ? "{}" : "{ " + line + " }";
    }

    private static String quoted(String words) {
        return "\"" + new String(JsonStringEncoder.getInstance().quoteAsString(words)) + "\"";
    }
}
