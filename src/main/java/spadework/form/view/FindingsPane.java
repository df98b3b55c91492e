// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.form.kit.FaultWords;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;
import spadework.reason.Reason;

/** What is wrong with the job file and what was found about the job, gravest first; each leads to its cause. */
public final class FindingsPane extends JPanel {
    private final JobSession session;
    private final DefaultListModel<Item> items = new DefaultListModel<>();
    private final JList<Item> list = new JList<>(items);
    private final Consumer<String> reveal;

    /**
     * Something found.
     *
     * @param grade fault, or the severity of a finding in small letters
     */
    public record Item(String grade, String text, String cause) {}

    /** @param reveal goes to a place of the job */
    public FindingsPane(JobSession session, Consumer<String> reveal) {
        super(new BorderLayout());
        this.session = session;
        this.reveal = reveal;
        list.setName("found");
        list.getAccessibleContext().setAccessibleName(Messages.of("pane.found"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Look());
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                go();
            }
        });
        list.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                // Lines break anew at the new width; the list measures its cells again.
                list.setFixedCellHeight(10);
                list.setFixedCellHeight(-1);
            }
        });
        KeyBindings.inside(list, "ENTER", this::go);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
    }

    private void go() {
        Item chosen = list.getSelectedValue();
        if (chosen != null) {
            reveal.accept(chosen.cause());
        }
    }

    public void showAnswer() {
        List<Item> found = items(session);
        if (!found.equals(Collections.list(items.elements()))) {
            items.clear();
            items.addAll(found);
        }
    }

    /** Faults in the order of the file, then findings, gravest first, then who has the last word. */
    public static List<Item> items(JobSession session) {
        List<Item> found = new ArrayList<>();
        session.broken().ifPresent(thrown -> found.add(new Item("fault", Reason.of(thrown), "")));
        for (Fault fault : session.faults()) {
            if (session.assumed()
                    .flatMap(all -> all.at(fault.place().pointer()))
                    .isPresent()) {
                continue;
            }
            found.add(new Item(
                    "fault", where(fault) + FaultWords.of(fault), fault.place().pointer()));
        }
        session.assumed()
                .ifPresent(all -> all.all()
                        .forEach(one -> found.add(new Item(
                                "assumed",
                                Messages.of(
                                        "found.assumed",
                                        PointerNames.named(one.place()),
                                        Messages.or("choice." + one.value(), one.value())),
                                one.place()))));
        for (Finding finding : session.findings()) {
            boolean answered = session.isAnswered(finding);
            String grade = finding.severity().name().toLowerCase(Locale.ROOT);
            String text = session.office().what(finding) + " "
                    + session.office().action(finding) + " [" + finding.citation() + "]";
            found.add(new Item(answered ? "answered" : grade, text, FindingPointers.of(finding, session.draft())));
        }
        if (!session.findings().isEmpty()) {
            found.add(new Item("deference", session.office().deference(), "/walls"));
        }
        return found;
    }

    /** The file, where it is not the job's own, and the name of the field. */
    private static String where(Fault fault) {
        String file = fault.place().file().replaceAll(".*[/\\\\]", "");
        String pointer = fault.place().pointer();
        boolean ours = file.equals("job.json");
        return ours ? PointerNames.named(pointer) + ": " : file + " " + pointer + ": ";
    }

    private static final class Look implements ListCellRenderer<Item> {
        private final JTextArea area = new JTextArea();

        Look() {
            area.setLineWrap(true);
            area.setWrapStyleWord(true);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Item> list, Item item, int index, boolean selected, boolean focused) {
            area.setText(Messages.of("grade." + item.grade(), item.text()));
            area.setFont(list.getFont());
            area.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
            boolean grave = item.grade().equals("fault") || item.grade().equals("stop");
            area.setForeground(
                    selected
                            ? list.getSelectionForeground()
                            : grave ? UIManager.getColor("Spadework.fault") : list.getForeground());
            area.setBorder(BorderFactory.createCompoundBorder(
                    BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Component.borderColor")),
                    BorderFactory.createEmptyBorder(6, 8, 6, 8)));
            int width = list.getParent() == null ? 300 : list.getParent().getWidth();
            area.setSize(Math.max(width, 100), Short.MAX_VALUE);
            area.getAccessibleContext().setAccessibleName(area.getText());
            return area;
        }
    }
}
