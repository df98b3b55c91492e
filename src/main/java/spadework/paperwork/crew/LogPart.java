// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;

/**
 * The rows of the log that are filled in at one place.
 *
 * @param title of the place, as {@code Wall A, back wall}
 */
public record LogPart(String title, List<LogRow> rows) {

    public LogPart {
        rows = List.copyOf(rows);
    }
}
