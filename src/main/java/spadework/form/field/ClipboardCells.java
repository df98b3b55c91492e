// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.draft.Draft;
import spadework.draft.FieldKind;
import spadework.draft.Pointer;
import spadework.draft.SchemaField;
import spadework.draft.TypedValue;
import spadework.form.kit.WordChoice;

/** Cells as a spreadsheet puts them on the clipboard: rows in lines, cells parted by tabs, quotes where needed. */
public final class ClipboardCells {
    private ClipboardCells() {}

    /** The cells, row by row. */
    static List<List<String>> cells(String clipboard) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        String text = clipboard.replace("\r\n", "\n").replace('\r', '\n');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                boolean twice = c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"';
                if (c != '"' || twice) {
                    cell.append(c);
                    i += twice ? 1 : 0;
                } else {
                    quoted = false;
                }
            } else if (c == '"' && cell.isEmpty() && isClosed(text, i)) {
                quoted = true;
            } else if (c == '\t' || c == '\n') {
                row.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    rows.add(row);
                    row = new ArrayList<>();
                }
            } else {
                cell.append(c);
            }
        }
        if (!cell.isEmpty() || !row.isEmpty()) {
            row.add(cell.toString());
            rows.add(row);
        }
        return rows;
    }

    /** Whether a quote that opens a cell is closed at the end of one: {@code "} alone can mean inches. */
    private static boolean isClosed(String text, int open) {
        for (int i = open + 1; i < text.length(); i++) {
            if (text.charAt(i) == '"') {
                boolean twice = i + 1 < text.length() && text.charAt(i + 1) == '"';
                if (!twice) {
                    return i + 1 == text.length() || text.charAt(i + 1) == '\t' || text.charAt(i + 1) == '\n';
                }
                i++;
            }
        }
        return false;
    }

    /**
     * The draft with cells pasted into a list; rows are added as needed, and an empty cell leaves what was there.
     *
     * @param row of the list, from which on they go
     * @param column the first of the columns that they fill
     */
    static Draft pasted(
            Draft draft, String list, List<RowColumn> columns, int row, int column, List<List<String>> cells) {
        Draft pasted = draft;
        for (int r = 0; r < cells.size(); r++) {
            while (pasted.rows(list) <= row + r) {
                pasted = pasted.insertedBlank(list, pasted.rows(list));
            }
            for (int c = 0; c < cells.get(r).size() && column + c < columns.size(); c++) {
                String cell = cells.get(r).get(c).strip();
                RowColumn filled = columns.get(column + c);
                if (!cell.isEmpty()) {
                    pasted = pasted.typed(Pointer.of(list, row + r) + filled.key(), word(filled.spot(), cell));
                }
            }
        }
        return pasted;
    }

    /** The cell in the words of the file: a choice by what the window calls it, a measure in its full form. */
    private static String word(SchemaField spot, String cell) {
        if (spot.kind() == FieldKind.CHOICE || spot.kind() == FieldKind.YES_OR_NO) {
            Optional<WordChoice> meant = BoundChoiceField.choices(spot).stream()
                    .filter(c -> !c.word().isEmpty())
                    .filter(c -> c.shown().equalsIgnoreCase(cell) || c.word().equalsIgnoreCase(cell))
                    .findFirst();
            return meant.map(WordChoice::word).orElseGet(() -> TypedValue.inFull(spot, cell));
        }
        return TypedValue.inFull(spot, cell);
    }
}
