// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
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
        begin(box);
        box.addKeyListener(new KeyAdapter() {
            private boolean taken;

            @Override
            public void keyPressed(KeyEvent event) {
                taken = isLetter(event);
                boolean within = box.getKeySelectionManager() instanceof TypedPrefix prefix && prefix.isGoingOn();
                if (event.getKeyCode() == KeyEvent.VK_SPACE && within) {
                    // Part of a name, as in silty clay; only at its beginning it opens the list.
                    event.consume();
                    taken = false;
                }
            }

            @Override
            public void keyTyped(KeyEvent event) {
                // Where a screen tells the letter only once it is typed, the toolkit's own list would lose it.
                if (!taken && isLetter(event)) {
                    box.selectWithKeyChar(event.getKeyChar());
                }
                taken = false;
            }
        });
    }

    /** What is typed from now on is a word of its own. */
    public static void begin(JComboBox<WordChoice> box) {
        box.setKeySelectionManager(new TypedPrefix(System::nanoTime));
    }

    private static boolean isLetter(KeyEvent event) {
        return event.getKeyChar() != KeyEvent.CHAR_UNDEFINED
                && !Character.isISOControl(event.getKeyChar())
                && (event.getModifiersEx() & (InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK)) == 0;
    }

    private boolean isGoingOn() {
        return !typed.isEmpty() && nanos.getAsLong() - last <= PAUSE;
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
