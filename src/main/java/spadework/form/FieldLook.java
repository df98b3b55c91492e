package spadework.form;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import spadework.draft.Spot;
import spadework.finding.Fault;

/** A label above a control, and below it, when there is one, what is wrong. */
final class FieldLook {
    private static final String ERROR = "error";
    private static final String OUTLINE = "JComponent.outline";

    private final JPanel panel = new JPanel(new MigLayout("insets 0, gap 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final JTextArea wrong = wrapped();
    private final JComponent control;

    /**
     * Puts a control under its label.
     *
     * @param needed whether the job cannot do without it
     */
    FieldLook(String name, boolean needed, JComponent control, JComponent shown, String help) {
        this.control = control;
        JLabel label = new JLabel(needed ? Words.of("field.needed", name) : name);
        label.setLabelFor(control);
        label.putClientProperty("FlatLaf.styleClass", "small");
        control.getAccessibleContext().setAccessibleName(name);
        control.getAccessibleContext().setAccessibleDescription(help);
        control.setToolTipText(help.isEmpty() ? null : help);
        wrong.setVisible(false);
        wrong.setName("wrong");
        panel.setOpaque(false);
        panel.add(label);
        panel.add(shown);
        panel.add(wrong);
    }

    JPanel panel() {
        return panel;
    }

    /** Marks the control and tells each fault as the command line does, without the place. */
    void tell(List<Fault> faults) {
        control.putClientProperty(OUTLINE, faults.isEmpty() ? null : ERROR);
        String text = faults.stream().map(FieldLook::told).distinct().collect(Collectors.joining("\n"));
        if (!text.equals(wrong.getText())) {
            wrong.setText(text);
        }
        if (wrong.isVisible() == faults.isEmpty()) {
            wrong.setVisible(!faults.isEmpty());
            panel.revalidate();
        }
    }

    /** What is wrong, what is allowed and the mend, as {@link Fault#text} without the place. */
    static String told(Fault fault) {
        return Words.of("fault.told", fault.found(), fault.allowed(), fault.mend());
    }

    /** What is taken where nothing is written, for the empty field to show. */
    static String usual(Optional<Spot> spot) {
        return spot.flatMap(Spot::usual).map(usual -> Words.of("field.usual", usual)).orElse("");
    }

    private static JTextArea wrapped() {
        JTextArea area = new JTextArea();
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setFocusable(false);
        area.setOpaque(false);
        area.setBorder(BorderFactory.createEmptyBorder(2, 0, 2, 0));
        area.setForeground(UIManager.getColor("Spadework.fault"));
        area.getAccessibleContext().setAccessibleName(Words.of("fault.name"));
        return area;
    }
}
