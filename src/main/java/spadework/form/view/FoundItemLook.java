// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.UIManager;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;

/** One found thing, its lines broken to the width; the first of each group under the group's name. */
final class FoundItemLook implements ListCellRenderer<FoundItem> {
    private final JPanel cell = new JPanel(new BorderLayout());
    private final JLabel head = new JLabel();
    private final JTextArea area = new JTextArea();

    FoundItemLook() {
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        head.setOpaque(true);
        cell.add(head, BorderLayout.NORTH);
        cell.add(area);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends FoundItem> list, FoundItem item, int index, boolean selected, boolean focused) {
        boolean first = index == 0 || list.getModel().getElementAt(index - 1).group() != item.group();
        head.setVisible(first);
        head.setText(Messages.of("found.head." + item.group().word()));
        head.setFont(Theme.bold(14));
        head.setForeground(UIManager.getColor("Label.foreground"));
        head.setBackground(UIManager.getColor("Panel.background"));
        head.setBorder(BorderFactory.createEmptyBorder(8, 8, 4, 8));
        area.setText(Messages.of("grade." + item.grade(), item.text()));
        area.setFont(list.getFont());
        area.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        area.setForeground(
                selected
                        ? list.getSelectionForeground()
                        : item.isGrave() ? UIManager.getColor("Spadework.fault") : list.getForeground());
        area.setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Component.borderColor")),
                BorderFactory.createEmptyBorder(6, 8, 6, 8)));
        int width = list.getParent() == null ? 300 : list.getParent().getWidth();
        area.setSize(Math.max(width, 100), Short.MAX_VALUE);
        cell.getAccessibleContext().setAccessibleName(area.getText());
        return cell;
    }
}
