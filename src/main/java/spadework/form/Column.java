package spadework.form;

import spadework.draft.Outline;
import spadework.draft.Spot;

/**
 * A column of a table.
 *
 * @param key of the value in its row; empty where the row is the value
 * @param spot what the format allows there
 * @param weight its width against the others
 */
record Column(String key, Spot spot, String name, int weight) {

    /** Columns of a list, each written {@code /key=weight}. */
    static Column of(Base list, String written) {
        String[] parts = written.split("=");
        String format = list.format("/0" + parts[0]);
        return new Column(
                parts[0],
                Outline.job().at(format).orElseThrow(),
                Words.column(format).orElseGet(() -> Words.field(format)),
                Integer.parseInt(parts[1]));
    }
}
