// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import spadework.draft.DraftValue.Rows;
import spadework.draft.DraftValue.Text;

/** A list of words in one field: {@code A, B}. Where a word holds a comma itself, semicolons part them. */
final class ListText {
    private ListText() {}

    static String shown(Rows rows) {
        boolean words = rows.values().stream().allMatch(Text.class::isInstance);
        return !words ? "" : words(rows).stream().collect(Collectors.joining(holdsComma(rows) ? "; " : ", "));
    }

    /** What was typed, parted at semicolons, and at commas too where no word may hold one; blank parts are none. */
    static Rows typed(String typed, boolean commas) {
        return new Rows(Arrays.stream(typed.split(commas ? "[,;]" : ";"))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .map(word -> (DraftValue) new Text(word))
                .toList());
    }

    static boolean holdsComma(DraftValue value) {
        return value instanceof Rows rows && words(rows).stream().anyMatch(word -> word.contains(","));
    }

    private static List<String> words(Rows rows) {
        return rows.values().stream()
                .filter(Text.class::isInstance)
                .map(row -> ((Text) row).words())
                .toList();
    }
}
