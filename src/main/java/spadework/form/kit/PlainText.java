// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.tree.DefaultTreeCellRenderer;

/** Keeps what somebody typed from being read as markup, which the toolkit does with any words that begin like it. */
public final class PlainText {
    private static final String NO_MARKUP = "html.disable";

    private PlainText() {}

    public static <T extends JComponent> T of(T component) {
        component.putClientProperty(NO_MARKUP, true);
        return component;
    }

    public static void inList(JComboBox<?> box) {
        DefaultListCellRenderer renderer = new DefaultListCellRenderer();
        box.setRenderer(of(renderer));
    }

    public static DefaultTableCellRenderer inTable() {
        return of(new DefaultTableCellRenderer());
    }

    public static DefaultTreeCellRenderer inTree() {
        return of(new DefaultTreeCellRenderer());
    }
}
