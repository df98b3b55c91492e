// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Words of a search as the server takes them: each the beginning of a word, and all of them. */
final class SearchWords {
    private SearchWords() {}

    /** Letters and digits alone reach the server's grammar; empty where there are none. */
    static String of(String typed) {
        return Arrays.stream(plain(typed).split(" "))
                .filter(word -> !word.isEmpty())
                .map(word -> word + ":*")
                .collect(Collectors.joining(" & "));
    }

    /** Words parted by spaces alone: the server would read 2026-041 as 2026 and the number -41. */
    static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }
}
