// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Tells of each change of a text, key by key. */
public final class TextChanges {
    private TextChanges() {}

    public static void in(JTextComponent text, Runnable typed) {
        text.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                typed.run();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                typed.run();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                // Plain text has no attributes to change.
            }
        });
    }
}
