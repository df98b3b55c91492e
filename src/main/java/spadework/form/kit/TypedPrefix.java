// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.time.Duration;
import java.util.function.LongSupplier;
import javax.swing.ComboBoxModel;
import javax.swing.JComboBox;

/** Chooses in a list by typing: letters that follow each other closely are the start of a word, or of its name. */
public final class TypedPrefix implements JComboBox.KeySelectionManager {
    private static final long PAUSE = Duration.ofMillis(1200).toNanos();

    private final LongSupplier nanos;
    private String typed = "";
    private long last;

    TypedPrefix(LongSupplier nanos) {
        this.nanos = nanos;
    }

    /** Lets a list be chosen from by typing. */
    public static void in(JComboBox<WordChoice> box) {
        box.setKeySelectionManager(new TypedPrefix(System::nanoTime));
    }

    @Override
    public int selectionForKey(char key, ComboBoxModel<?> model) {
        long now = nanos.getAsLong();
        typed = now - last > PAUSE ? "" : typed;
        last = now;
        int found = first(typed + key, model);
        typed = found >= 0 ? typed + key : typed;
        return found;
    }

    /** The choice that is spelled so, as OH for Ohio; else the first that begins so. */
    private static int first(String start, ComboBoxModel<?> model) {
        int begins = -1;
        for (int i = model.getSize() - 1; i >= 0; i--) {
            if (model.getElementAt(i) instanceof WordChoice choice
                    && !choice.word().isEmpty()) {
                if (choice.word().equalsIgnoreCase(start)) {
                    return i;
                }
                begins = begins(choice.shown(), start) || begins(choice.word(), start) ? i : begins;
            }
        }
        return begins;
    }

    private static boolean begins(String word, String start) {
        return word.regionMatches(true, 0, start, 0, start.length());
    }
}
