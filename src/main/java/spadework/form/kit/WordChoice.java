// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.ArrayList;
import java.util.List;

/**
 * One of the words that a field takes.
 *
 * @param word as the file has it; empty for nothing
 * @param shown as the window shows it
 */
public record WordChoice(String word, String shown) {

    /** The choice of that word, or one made for a word that is not among them. */
    public static WordChoice of(List<WordChoice> choices, String word) {
        return choices.stream()
                .filter(choice -> choice.word.equals(word))
                .findFirst()
                .orElse(new WordChoice(word, word));
    }

    /** The choices and, if it is not among them, that word. */
    public static List<WordChoice> with(List<WordChoice> choices, String word) {
        List<WordChoice> all = new ArrayList<>(choices);
        if (choices.stream().noneMatch(choice -> choice.word.equals(word))) {
            all.add(new WordChoice(word, word));
        }
        return all;
    }

    @Override
    public String toString() {
        return shown;
    }
}
