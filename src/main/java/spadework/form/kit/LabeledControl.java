// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.text.DefaultCaret;
import net.miginfocom.swing.MigLayout;
import spadework.draft.SchemaField;
import spadework.finding.Fault;

/** A label above a control, and below it, when there is one, what is wrong. */
public final class LabeledControl {
    private static final String OUTLINE = "JComponent.outline";

    private final JPanel panel = new JPanel(new MigLayout("insets 0, gap 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final JTextArea wrong = wrapped();
    private final JComponent control;
    private final String help;

    /**
     * Puts a control under its label.
     *
     * @param needed whether the job cannot do without it
     * @param shown the control, or what holds it
     */
    public LabeledControl(String name, boolean needed, JComponent control, JComponent shown, String help) {
        this.control = control;
        this.help = help;
        JLabel label = new JLabel(needed ? Messages.of("field.needed", name) : name);
        label.setLabelFor(control);
        control.getAccessibleContext().setAccessibleName(name);
        control.getAccessibleContext().setAccessibleDescription(help);
        control.setToolTipText(help.isEmpty() ? null : help);
        wrong.setVisible(false);
        panel.setOpaque(false);
        panel.add(label);
        panel.add(shown, "wmin 30");
        panel.add(wrong, "wmin 30");
    }

    public JPanel panel() {
        return panel;
    }

    /**
     * Marks the control where something is wrong; more lightly what is only missing, as nobody has been there yet. What
     * it is stands in the tip, and in a place of its own while the control has the keyboard.
     */
    public void mark(List<Fault> faults, boolean missing) {
        control.putClientProperty(OUTLINE, faults.isEmpty() ? null : missing ? "warning" : "error");
        control.setToolTipText(faults.isEmpty() ? (help.isEmpty() ? null : help) : FaultWords.of(faults));
        control.getAccessibleContext()
                .setAccessibleDescription(faults.isEmpty() ? help : FaultWords.of(faults) + " " + help);
    }

    /** Marks the control and tells each fault. */
    public void tell(List<Fault> faults) {
        control.putClientProperty(OUTLINE, faults.isEmpty() ? null : "error");
        say(FaultWords.of(faults));
    }

    /** Marks the control and tells what is wrong in words of the window; nothing wrong where they are empty. */
    public void tell(String words) {
        control.putClientProperty(OUTLINE, words.isEmpty() ? null : "error");
        say(words);
    }

    private void say(String text) {
        if (!text.equals(wrong.getText())) {
            wrong.setText(text);
            wrong.setVisible(!text.isEmpty());
            panel.revalidate();
        }
    }

    /** What an empty field shows: what is taken where nothing is written, or how such a value is written. */
    public static String placeholder(SchemaField spot) {
        return spot.usual()
                .map(usual -> Messages.of("field.usual", usual))
                .orElse(Messages.or("example." + spot.kind(), ""));
    }

    /** Words that can be read and copied by keyboard, and never move the page when they change. */
    public static JTextArea readable(String name, String called) {
        JTextArea area = wrapped();
        area.setName(name);
        area.setFocusable(true);
        KeyBindings.tabLeaves(area);
        area.setForeground(UIManager.getColor("Label.foreground"));
        area.getAccessibleContext().setAccessibleName(called);
        return area;
    }

    /** Words that are only told; a page does not scroll to them when they change. */
    public static JTextArea wrapped() {
        JTextArea area = new JTextArea();
        DefaultCaret caret = new DefaultCaret();
        caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        area.setCaret(caret);
        area.setName("wrong");
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setFocusable(false);
        area.setOpaque(false);
        area.setBorder(BorderFactory.createEmptyBorder(2, 0, 2, 0));
        area.setForeground(UIManager.getColor("Spadework.fault"));
        area.getAccessibleContext().setAccessibleName(Messages.of("fault.name"));
        return area;
    }
}
