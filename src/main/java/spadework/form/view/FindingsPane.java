// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import spadework.draft.Assumption;
import spadework.draft.Assumptions;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;
import spadework.form.view.FoundItem.Group;

/**
 * What is wrong with the job and what was found about it, by who has to act: fix now, assumed, look at the house, tell
 * the crew, for the office. A click shows one; buttons go to its cause, write what is assumed, or write a likely fix.
 */
public final class FindingsPane extends JPanel {
    private final JobSession session;
    private final DefaultListModel<FoundItem> items = new DefaultListModel<>();
    private final JList<FoundItem> list = new JList<>(items);
    private final Consumer<String> reveal;
    private final Map<Group, JToggleButton> filters = new EnumMap<>(Group.class);
    private final JToggleButton everything;
    private final JButton go;
    private final JButton so;
    private final JPanel fixes = new JPanel(new MigLayout("insets 0, gap 6"));
    private Optional<Group> only = Optional.empty();
    private List<String> offered = List.of();
    private String offeredAt = "";

    /** @param reveal goes to a place of the job */
    public FindingsPane(JobSession session, Consumer<String> reveal) {
        super(new BorderLayout());
        this.session = session;
        this.reveal = reveal;
        list.setName("found");
        list.getAccessibleContext().setAccessibleName(Messages.of("pane.found"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new FoundItemLook());
        list.addListSelectionListener(event -> allow());
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    go();
                }
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
        JPanel bar = new JPanel(new MigLayout("insets 6 8 6 8, gap 4, wrap 3", "[grow,fill,sg]".repeat(3)));
        ButtonGroup group = new ButtonGroup();
        everything = filter("all", () -> only = Optional.empty());
        group.add(everything);
        bar.add(everything);
        for (Group one : Group.values()) {
            JToggleButton button = filter(one.word(), () -> only = Optional.of(one));
            filters.put(one, button);
            group.add(button);
            bar.add(button);
        }
        everything.setSelected(true);
        go = button("found.go", this::go);
        so = button("assumed.so", this::confirm);
        JPanel below = new JPanel(new MigLayout("insets 6 8 6 8, gap 6, hidemode 3"));
        below.add(go);
        below.add(so);
        below.add(fixes);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        add(bar, BorderLayout.NORTH);
        add(scroll);
        add(below, BorderLayout.SOUTH);
        allow();
    }

    private JToggleButton filter(String word, Runnable choose) {
        JToggleButton button = new JToggleButton(Messages.of("found.count." + word, 0));
        button.setName("found " + word);
        button.addActionListener(event -> {
            choose.run();
            showAnswer();
        });
        return button;
    }

    private static JButton button(String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of(key), act));
        button.setName("found " + key);
        button.getAccessibleContext().setAccessibleName(Messages.of(key));
        return button;
    }

    private Optional<FoundItem> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void go() {
        chosen().map(FoundItem::cause).ifPresent(reveal);
    }

    private void confirm() {
        chosen().flatMap(FoundItem::assumption).ifPresent(one -> session.edit(Assumptions.taken(session.draft(), one)));
    }

    private void allow() {
        go.setEnabled(chosen().isPresent());
        so.setVisible(chosen().flatMap(FoundItem::assumption)
                .filter(one -> one.kind() != Assumption.Kind.UNWRITTEN)
                .isPresent());
        offer(
                chosen().map(FoundItem::cause).orElse(""),
                chosen().map(FoundItem::fixes).orElse(List.of()));
    }

    /** A button for each likely fix; those that stand there stay, so that nothing moves under the pointer. */
    private void offer(String place, List<String> now) {
        if (!place.equals(offeredAt) || !now.equals(offered)) {
            offeredAt = place;
            offered = now;
            fixes.removeAll();
            now.forEach(fix -> fixes.add(fixButton(place, fix)));
            fixes.revalidate();
            fixes.repaint();
        }
    }

    private JButton fixButton(String place, String fix) {
        JButton button = new JButton(KeyBindings.action(
                Messages.of("fault.write", Messages.or("choice." + fix, fix)),
                () -> session.edit(session.draft().typed(place, fix))));
        button.setName("found fix " + fix);
        button.getAccessibleContext().setAccessibleName(button.getText());
        return button;
    }

    /** Shows only what one kind of reader has to act on. */
    public void showOnly(Group group) {
        filters.get(group).setSelected(true);
        only = Optional.of(group);
        showAnswer();
    }

    public void showAnswer() {
        List<FoundItem> all = FoundItem.of(session);
        everything.setText(Messages.of("found.count.all", all.size()));
        filters.forEach((group, button) -> {
            long here = all.stream().filter(item -> item.group() == group).count();
            button.setText(Messages.of("found.count." + group.word(), here));
            button.setEnabled(here > 0 || only.filter(group::equals).isPresent());
        });
        List<FoundItem> shown = new ArrayList<>(all);
        shown.removeIf(item -> only.filter(group -> group != item.group()).isPresent());
        if (!shown.equals(Collections.list(items.elements()))) {
            int index = list.getSelectedIndex();
            items.clear();
            items.addAll(shown);
            if (index >= 0 && !shown.isEmpty()) {
                list.setSelectedIndex(Math.min(index, shown.size() - 1));
            }
        }
        allow();
    }
}
