// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;

/**
 * The rows of the log that are filled in at one place.
 *
 * @param title of the place, as {@code Wall A, back wall}
 * @param tab the same, short enough for the name of a sheet
 */
public record LogPart(LogKind kind, String title, String tab, List<LogRow> rows) {

    public LogPart {
        rows = List.copyOf(rows);
    }

    /** Whether anything in it was planned. */
    public boolean isPlanned() {
        return rows.stream().anyMatch(row -> !row.planned().isEmpty());
    }
}
