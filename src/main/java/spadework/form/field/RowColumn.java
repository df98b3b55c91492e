// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import spadework.draft.FileSchema;
import spadework.draft.SchemaField;
import spadework.form.kit.Messages;

/**
 * A column of a table.
 *
 * @param key of the value in its row; empty where the row is the value
 * @param spot what the format allows there
 * @param weight its width against the others
 */
public record RowColumn(String key, SchemaField spot, String name, int weight) {

    /** Columns of a list, each written {@code /key=weight}. */
    static RowColumn of(BasePointer list, String written) {
        String[] parts = written.split("=");
        String format = list.format("/0" + parts[0]);
        return new RowColumn(
                parts[0],
                FileSchema.job().at(format).orElseThrow(),
                Messages.column(format).orElseGet(() -> Messages.field(format)),
                Integer.parseInt(parts[1]));
    }
}
