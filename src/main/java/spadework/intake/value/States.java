// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import spadework.intake.source.ValueKind;
import spadework.measure.UnreadableMeasure;
import spadework.spelling.UsStates;

/** A state as a file has it: by its two letters. */
public final class States {
    private static final Set<String> CODES = UsStates.names().keySet();
    private static final List<String> WORDS = List.copyOf(CODES);

    private static final String ALLOWED = "the two letters of one of the 50 states, or DC";

    /** A state's two letters. */
    static final ValueKind<String> STATE = new ValueKind<>("\"OH\"", node -> {
        node.sheet().knowWords(node.pointer(), WORDS);
        String written = node.text(ALLOWED, "\"OH\"").orElse("");
        if (!node.isSilent() && !CODES.contains(written)) {
            node.fault(node.written(), ALLOWED, fix(written));
        }
        return written;
    });

    private States() {}

    /**
     * Reads the two letters of a state.
     *
     * @throws UnreadableMeasure if the text is no state's
     */
    public static String read(String text) throws UnreadableMeasure {
        if (!CODES.contains(text)) {
            throw new UnreadableMeasure(ALLOWED, fix(text));
        }
        return text;
    }

    private static String fix(String written) {
        Optional<String> byName = UsStates.letters(written);
        Optional<String> byLetters = CODES.stream()
                .filter(code -> code.equalsIgnoreCase(written.strip()))
                .findFirst();
        return byName.or(() -> byLetters)
                .map(code -> "write \"" + code + "\"")
                .orElse("write it as the post office does, as \"OH\"");
    }
}
