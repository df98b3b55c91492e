// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;

/** What the keyboard does. */
public final class KeyBindings {
    private KeyBindings() {}

    /** Tab leaves a field of several lines, as it leaves any other. */
    public static void tabLeaves(JTextArea area) {
        area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    }

    /** A key anywhere in the window that the component lies in. */
    public static void anywhere(JComponent in, String stroke, Runnable act) {
        bind(in, JComponent.WHEN_IN_FOCUSED_WINDOW, stroke, act);
    }

    /** A key while the component, or what lies in it, has the keyboard. */
    public static void inside(JComponent in, String stroke, Runnable act) {
        bind(in, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, stroke, act);
    }

    private static void bind(JComponent in, int condition, String stroke, Runnable act) {
        in.getInputMap(condition).put(KeyStroke.getKeyStroke(stroke), stroke);
        in.getActionMap().put(stroke, action("", act));
    }

    public static Action action(String name, Runnable act) {
        return new AbstractAction(name) {
            @Override
            public void actionPerformed(ActionEvent event) {
                act.run();
            }
        };
    }
}
