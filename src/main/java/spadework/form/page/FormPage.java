// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import spadework.draft.FieldKind;
import spadework.draft.FileSchema;
import spadework.draft.Pointer;
import spadework.finding.Fault;
import spadework.form.field.BasePointer;
import spadework.form.field.BoundChoiceField;
import spadework.form.field.BoundField;
import spadework.form.field.BoundTextField;
import spadework.form.field.ReadOnlyField;
import spadework.form.field.RowsTable;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;
import spadework.form.session.JobSession;

/** One page of the way through the form: groups of fields and tables, bound to the draft. */
public class FormPage extends JPanel implements PageContent, Scrollable {
    /** Pixels of the usual size below which a page sets its fields in half as many columns. */
    private static final int NARROW = 700;

    private final JobSession session;
    private final List<BoundField> entries = new ArrayList<>();
    private final List<RowsTable> tables = new ArrayList<>();
    private final JTextArea signedPage = LabeledControl.readable("signedpage", Messages.of("signedpage"));
    private final FocusListener following = new FocusAdapter() {
        @Override
        public void focusGained(FocusEvent event) {
            // Not after a click: what is pressed must not move away from under the mouse.
            if (event.getCause() == FocusEvent.Cause.TRAVERSAL_FORWARD
                    || event.getCause() == FocusEvent.Cause.TRAVERSAL_BACKWARD) {
                show(event.getComponent());
            }
        }
    };
    private final List<PageGroup> groups = new ArrayList<>();
    private PageGroup group;
    private boolean narrow;

    public FormPage(JobSession session, String name) {
        super(new MigLayout("insets 12 16 16 16, gap 8 10, fillx, wrap 1, hidemode 3", "[grow,fill]"));
        this.session = session;
        setName(name);
        getAccessibleContext().setAccessibleName(Messages.of("page." + name));
    }

    final JobSession session() {
        return session;
    }

    @Override
    public final void group(String key) {
        begin(PageGroup.open(key));
    }

    @Override
    public final void rareGroup(String key) {
        String name = getName() + "." + key;
        begin(PageGroup.rare(
                key,
                session.openGroups().has(name),
                open -> session.openGroups().keep(name, open)));
    }

    private void begin(PageGroup begun) {
        group = begun;
        groups.add(begun);
        add(begun, getComponentCount() == 0 ? "wmin 100" : "gaptop 10, wmin 100");
        follow(begun);
    }

    @Override
    public final void field(BasePointer base, String key, int wide) {
        field(base, key, wide, Messages.field(base.format(key)));
    }

    final void field(BasePointer base, String key, int wide, String name) {
        FieldKind kind = FileSchema.job().at(base.format(key)).orElseThrow().kind();
        boolean choice = kind == FieldKind.CHOICE || kind == FieldKind.YES_OR_NO;
        BoundField entry =
                choice ? new BoundChoiceField(session, base, key, name) : new BoundTextField(session, base, key, name);
        entries.add(entry);
        put(entry.panel(), "span " + wide + ", top, wmin 40");
    }

    @Override
    public final void shown(BasePointer base, String key, int wide) {
        BoundField entry = new ReadOnlyField(session, base, key);
        entries.add(entry);
        put(entry.panel(), "span " + wide + ", top, wmin 40");
    }

    @Override
    public final void own(Function<JobSession, JComponent> made, String how) {
        put(made.apply(session), how);
    }

    /** What stands here is part of what both sides sign: once they did, the page says so on top. */
    final void readOnlyOnceSigned() {
        add(signedPage, "wmin 100", 0);
        showSignedPage();
    }

    private void showSignedPage() {
        boolean signed = session.draft().at("/accepted").isPresent();
        signedPage.setVisible(signed);
        signedPage.setText(
                signed
                        ? Messages.of(
                                "signedpage.said",
                                session.draft().shown("/accepted/on"),
                                session.draft().shown("/accepted/price"))
                        : "");
        signedPage.setForeground(UIManager.getColor("Spadework.missing"));
    }

    /** A list of the job as a table over the whole width. */
    final RowsTable table(BasePointer list, String... columns) {
        return table(list, COLUMNS, columns);
    }

    @Override
    public final BasePointer list(BasePointer list, int wide, String... columns) {
        return table(list, wide, columns).row();
    }

    final RowsTable table(BasePointer list, int wide, String... columns) {
        RowsTable table = new RowsTable(session, list, columns);
        tables.add(table);
        table.onChosen(this::showAll);
        JPanel named = new JPanel(new MigLayout("insets 0, gap 0, fillx, wrap 1", "[grow,fill]"));
        named.setOpaque(false);
        JLabel label = new JLabel(Messages.field(list.format()));
        label.setLabelFor(table.table());
        named.add(label);
        named.add(table.panel(), "wmin 60");
        put(named, "span " + wide + ", top, wmin 60");
        return table;
    }

    /** Something of the page's own. */
    final void put(JComponent component, String how) {
        group.put(component, how);
        follow(component);
    }

    @Override
    public void doLayout() {
        boolean now = getWidth() < Theme.scaled(NARROW);
        if (now != narrow) {
            narrow = now;
            groups.forEach(one -> one.narrow(now));
            SwingUtilities.invokeLater(this::revalidate);
        }
        super.doLayout();
    }

    /** Opens every group. */
    public void openAll() {
        groups.forEach(PageGroup::open);
    }

    private void sayWhatGroupsHold() {
        Map<PageGroup, List<String>> names = new HashMap<>();
        Map<PageGroup, Integer> faults = new HashMap<>();
        for (BoundField entry : entries) {
            entry.pointer().ifPresent(at -> {
                PageGroup in = groupOf(entry.control());
                if (!session.draft().shown(at).isEmpty()) {
                    names.computeIfAbsent(in, none -> new ArrayList<>())
                            .add(entry.control().getAccessibleContext().getAccessibleName());
                }
                faults.merge(in, session.faultsAt(at).size(), Integer::sum);
            });
        }
        for (RowsTable table : tables) {
            table.pointer().ifPresent(at -> {
                PageGroup in = groupOf(table.table());
                int rows = session.draft().rows(at);
                if (rows > 0) {
                    names.computeIfAbsent(in, none -> new ArrayList<>())
                            .add(Messages.of(
                                    "group.rows",
                                    table.table().getAccessibleContext().getAccessibleName(),
                                    rows));
                }
                faults.merge(in, session.faultsIn(at).size(), Integer::sum);
            });
        }
        groups.forEach(one -> one.say(names.getOrDefault(one, List.of()), faults.getOrDefault(one, 0)));
    }

    private static PageGroup groupOf(Component control) {
        return (PageGroup) SwingUtilities.getAncestorOfClass(PageGroup.class, control);
    }

    public final List<BoundField> entries() {
        return entries;
    }

    public final List<RowsTable> tables() {
        return tables;
    }

    /** Shows what the draft says and what is wrong with it. */
    public void showAll() {
        tables.forEach(RowsTable::showDraft);
        entries.forEach(BoundField::showDraft);
        showSignedPage();
        showFaults();
    }

    public void showFaults() {
        tables.forEach(RowsTable::showFaults);
        entries.forEach(BoundField::showFaults);
        sayWhatGroupsHold();
    }

    /** Gives the keyboard to what is written first on this page. */
    public void begin() {
        entries.stream()
                .map(BoundField::control)
                .filter(control -> control.isEnabled() && groupOf(control).isOpen())
                .findFirst()
                .or(() -> tables.stream()
                        .map(RowsTable::table)
                        .map(JComponent.class::cast)
                        .findFirst())
                .ifPresent(JComponent::requestFocusInWindow);
    }

    /** What is wrong where the keyboard is: in its field, or in the cell or list that it is in. */
    final List<Fault> faultsAt(Component owner) {
        for (BoundField entry : entries) {
            if (entry.control() == owner) {
                return entry.pointer().map(session::faultsAt).orElse(List.of());
            }
        }
        return tables.stream()
                .filter(table -> SwingUtilities.isDescendingFrom(owner, table.table()))
                .findFirst()
                .map(RowsTable::faults)
                .orElse(List.of());
    }

    /** Whether a place of the job is on this page. */
    public boolean holds(String pointer) {
        String format = pointer.replaceAll("/\\d+(?=/|$)", "/0");
        return entries.stream()
                        .anyMatch(entry ->
                                PagePlaces.touches(format, entry.control().getName()))
                || tables.stream()
                        .anyMatch(table ->
                                PagePlaces.touches(format, table.table().getName()));
    }

    /** Goes to a place: chooses its row, then gives the keyboard to its field or cell. */
    public void reveal(String pointer) {
        boolean cell = false;
        for (RowsTable table : tables) {
            if (table.choose(pointer)) {
                cell = true;
                focus(table.table());
            }
        }
        showAll();
        Optional<BoundField> exact = entries.stream()
                .filter(entry ->
                        entry.pointer().filter(at -> Pointer.isIn(pointer, at)).isPresent())
                .findFirst();
        Optional<BoundField> inside = entries.stream()
                .filter(entry ->
                        entry.pointer().filter(at -> Pointer.isIn(at, pointer)).isPresent())
                .findFirst();
        if (exact.isPresent()) {
            focus(exact.get().control());
        } else if (!cell && inside.isPresent()) {
            focus(inside.get().control());
        } else if (!cell) {
            tables.stream()
                    .filter(table -> table.pointer()
                            .filter(at -> Pointer.isIn(pointer, at) || Pointer.isIn(at, pointer))
                            .isPresent())
                    .findFirst()
                    .ifPresent(table -> focus(table.table()));
        }
    }

    private void focus(JComponent control) {
        PageGroup in = groupOf(control);
        if (!in.isOpen()) {
            in.open();
            validate();
        }
        control.requestFocusInWindow();
        show(control);
    }

    /** Scrolls so far that a control is seen, or of a table the chosen row. */
    private void show(Component control) {
        Rectangle seen = new Rectangle(control.getSize());
        if (control instanceof JTable table && table.getSelectedRow() >= 0) {
            seen = table.getCellRect(table.getSelectedRow(), Math.max(0, table.getSelectedColumn()), true);
            table.scrollRectToVisible(seen);
        }
        scrollRectToVisible(SwingUtilities.convertRectangle(control, seen, this));
    }

    /** Has the page follow the keyboard into whatever lies in a component. */
    private void follow(Component component) {
        component.addFocusListener(following);
        if (component instanceof Container container) {
            Stream.of(container.getComponents()).forEach(this::follow);
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 24;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(24, visible.height - 48);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
