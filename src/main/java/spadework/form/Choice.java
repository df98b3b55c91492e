package spadework.form;

import java.util.ArrayList;
import java.util.List;

/**
 * One of the words that a field takes.
 *
 * @param word as the file has it; empty for nothing
 * @param shown as the window shows it
 */
record Choice(String word, String shown) {

    /** The choice of that word, or one made for a word that is not among them. */
    static Choice of(List<Choice> choices, String word) {
        return choices.stream()
                .filter(choice -> choice.word.equals(word))
                .findFirst()
                .orElse(new Choice(word, word));
    }

    /** The choices and, if it is not among them, that word. */
    static List<Choice> with(List<Choice> choices, String word) {
        List<Choice> all = new ArrayList<>(choices);
        if (choices.stream().noneMatch(choice -> choice.word.equals(word))) {
            all.add(new Choice(word, word));
        }
        return all;
    }

    @Override
    public String toString() {
        return shown;
    }
}
