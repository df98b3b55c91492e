// SPDX-License-Identifier: Apache-2.0
package spadework.office.reply;

import java.util.ArrayList;
import java.util.List;

/** Rows of text with their cells under one another, without what could steer a terminal. */
public final class TextColumns {
    private TextColumns() {}

    public static List<String> of(List<List<String>> rows) {
        List<String> lines = new ArrayList<>();
        List<Integer> widths = widths(rows);
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int cell = 0; cell < row.size(); cell++) {
                String text = row.get(cell);
                line.append(text).append(" ".repeat(widths.get(cell) - text.length() + 2));
            }
            lines.add(line.toString().stripTrailing().replaceAll("\\p{Cntrl}", " "));
        }
        return lines;
    }

    private static List<Integer> widths(List<List<String>> rows) {
        List<Integer> widths = new ArrayList<>();
        for (List<String> row : rows) {
            for (int cell = 0; cell < row.size(); cell++) {
                int width = row.get(cell).length();
                if (cell == widths.size()) {
                    widths.add(width);
                } else {
                    widths.set(cell, Math.max(widths.get(cell), width));
                }
            }
        }
        return widths;
    }
}
