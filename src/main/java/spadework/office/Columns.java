package spadework.office;

import java.util.ArrayList;
import java.util.List;

/** Rows of text with their cells under one another, without what could steer a terminal. */
final class Columns {
    private Columns() {}

    static List<String> of(List<List<String>> rows) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int cell = 0; cell < row.size(); cell++) {
                String text = row.get(cell);
                line.append(text).append(" ".repeat(width(rows, cell) - text.length() + 2));
            }
            lines.add(line.toString().stripTrailing().replaceAll("\\p{Cntrl}", " "));
        }
        return lines;
    }

    private static int width(List<List<String>> rows, int cell) {
        return rows.stream().filter(row -> row.size() > cell).mapToInt(row -> row.get(cell).length()).max().orElse(0);
    }
}
