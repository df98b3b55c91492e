// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.JTree;
import net.miginfocom.swing.MigLayout;

/** Makes one of each control that windows have, so that what they need is loaded while a file is still being read. */
public final class EarlyControls {
    private EarlyControls() {}

    /** Makes, lays out and paints them, to be seen by nobody; on the window's thread. */
    public static void load() {
        JMenuBar bar = new JMenuBar();
        JMenu menu = new JMenu("menu");
        menu.add(new JMenuItem("item"));
        bar.add(menu);
        JTabbedPane tabs = new JTabbedPane(JTabbedPane.TOP, JTabbedPane.SCROLL_TAB_LAYOUT);
        tabs.addTab("tab", new JScrollPane(new JTree()));
        JComboBox<WordChoice> box = new JComboBox<>();
        box.addItem(new WordChoice("one", "one"));
        List<JComponent> all = List.of(
                bar,
                new JLabel("label"),
                new JButton("button"),
                new JToggleButton("toggle"),
                new JCheckBox("box"),
                new JTextField("text"),
                new JScrollPane(new JTextArea("text")),
                new JScrollPane(new JTable(2, 2)),
                new JScrollPane(new JList<>(new String[] {"one"})),
                new JSlider(),
                new JSplitPane(),
                box,
                tabs);
        JPanel panel = new JPanel(new MigLayout("insets 4, gap 4, fillx, wrap 2, hidemode 3", "[grow,fill,sg][grow]"));
        all.forEach(control -> panel.add(control, "span 1, top, wmin 40"));
        panel.setSize(600, 900);
        BufferedImage nowhere = new BufferedImage(600, 900, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = nowhere.createGraphics();
        layOut(panel);
        panel.paint(pen);
        pen.dispose();
    }

    private static void layOut(JComponent component) {
        component.doLayout();
        for (Component inside : component.getComponents()) {
            if (inside instanceof JComponent control) {
                layOut(control);
            }
        }
    }
}
