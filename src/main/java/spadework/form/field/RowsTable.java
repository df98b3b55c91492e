// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.event.ChangeEvent;
import javax.swing.table.TableCellEditor;
import net.miginfocom.swing.MigLayout;
import spadework.draft.Draft;
import spadework.draft.FileSchema;
import spadework.draft.Pointer;
import spadework.finding.Fault;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.TypedAhead;
import spadework.form.kit.WheelScroll;
import spadework.form.session.JobSession;

/**
 * A list of the job as a table: rows are added, doubled, moved, taken out and pasted from a spreadsheet. The chosen
 * row is where the fields below it stand.
 */
public final class RowsTable {
    private static final int LEAST_ROWS = 2;
    private static final int MOST_ROWS = 8;

    private final JobSession session;
    private final BasePointer list;
    private final RowsTableModel model;
    private final DraftCellEditor editing;
    private final JTable table;
    private final JScrollPane scroll;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, gap 2, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final List<Runnable> chosenWatchers = new ArrayList<>();

    /** @param columns each written {@code /key=weight}; {@code =1} for a list whose rows are values */
    public RowsTable(JobSession session, BasePointer list, String... columns) {
        this.session = session;
        this.list = list;
        List<RowColumn> made = new ArrayList<>();
        for (String column : columns) {
            made.add(RowColumn.of(list, column));
        }
        model = new RowsTableModel(session, list, made);
        table = new EditableTable(model);
        editing = new DraftCellEditor(session, model);
        DraftCellRenderer look = new DraftCellRenderer(session, model);
        for (int i = 0; i < made.size(); i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(made.get(i).weight() * 30);
            table.getColumnModel().getColumn(i).setCellEditor(editing);
            table.getColumnModel().getColumn(i).setCellRenderer(look);
        }
        String name = Messages.field(list.format());
        table.setName(list.format());
        table.getAccessibleContext().setAccessibleName(name);
        table.getAccessibleContext()
                .setAccessibleDescription(
                        FileSchema.job().at(list.format()).map(Messages::help).orElse(""));
        table.getSelectionModel().addListSelectionListener(event -> chosenWatchers.forEach(Runnable::run));
        if (made.size() == 1) {
            table.setTableHeader(null);
        }
        scroll = WheelScroll.in(new JScrollPane(table));
        panel.setOpaque(false);
        panel.add(scroll, "wmin 60");
        panel.add(buttons(name));
        KeyBindings.inside(table, "ESCAPE", this::takeBack);
        KeyBindings.inside(table, "ctrl V", this::paste);
        KeyBindings.inside(table, "shift INSERT", this::paste);
        KeyBindings.inside(table, "ctrl D", this::duplicate);
        KeyBindings.inside(table, "alt UP", () -> move(-1));
        KeyBindings.inside(table, "alt DOWN", () -> move(1));
        KeyBindings.inside(table, "ctrl DELETE", this::takeOut);
        KeyBindings.inside(table, "INSERT", this::add);
        KeyBindings.inside(table, "F4", this::pick);
    }

    private JPanel buttons(String name) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 0"));
        row.setOpaque(false);
        row.add(button("add", name, this::add));
        row.add(button("duplicate", name, this::duplicate));
        row.add(button("up", name, () -> move(-1)));
        row.add(button("down", name, () -> move(1)));
        row.add(button("out", name, this::takeOut));
        row.add(button("paste", name, this::paste));
        return row;
    }

    private JButton button(String key, String name, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of("rows." + key), act));
        button.setName(list.format() + " " + key);
        // Each has its key inside the table; Tab goes from the table to what comes behind its buttons.
        button.setFocusable(false);
        button.putClientProperty("JButton.minimumWidth", 0);
        button.setMargin(new Insets(2, 5, 2, 5));
        button.getAccessibleContext().setAccessibleName(Messages.of("rows.button", Messages.of("rows." + key), name));
        button.setToolTipText(Messages.of("rows." + key + ".help"));
        return button;
    }

    public JPanel panel() {
        return panel;
    }

    public JTable table() {
        return table;
    }

    /** Tells when another row is chosen. */
    public void onChosen(Runnable watcher) {
        chosenWatchers.add(watcher);
    }

    /** Where the table stands. */
    public Optional<String> pointer() {
        return list.at("");
    }

    /** Where the chosen row stands. */
    public BasePointer row() {
        return new BasePointer(list.format("/0"), () -> {
            int row = table.getSelectedRow();
            return row < 0 || row >= model.rows()
                    ? Optional.empty()
                    : list.at("").map(p -> Pointer.of(p, row));
        });
    }

    public void showDraft() {
        if (model.isRecounted()) {
            int chosen = table.getSelectedRow();
            int column = Math.max(0, table.getSelectedColumn());
            int rows = model.getRowCount();
            boolean typedInBlankRow = table.isEditing() && table.getEditingRow() == rows - 2;
            if (typedInBlankRow) {
                model.fireTableRowsInserted(rows - 1, rows - 1);
                chosenWatchers.forEach(Runnable::run);
            } else {
                if (table.isEditing()) {
                    editing.letGo();
                }
                model.fireTableDataChanged();
                if (rows > 0) {
                    table.changeSelection(Math.max(0, Math.min(chosen, Math.max(0, rows - 2))), column, false, false);
                }
            }
            int shown = Math.max(LEAST_ROWS, Math.min(MOST_ROWS, rows));
            ((EditableTable) table).showRows(shown);
            panel.revalidate();
        }
        table.repaint();
    }

    public void showFaults() {
        table.repaint();
    }

    /** What is wrong in the chosen cell; where nothing is, in the list. */
    public List<Fault> faults() {
        int row = table.getSelectedRow();
        int column = table.getSelectedColumn();
        List<Fault> inCell = row < 0 || column < 0
                ? List.of()
                : model.pointer(row, column).map(session::faultsAt).orElse(List.of());
        return inCell.isEmpty() ? inList() : inCell;
    }

    private List<Fault> inList() {
        return list.at("").map(session::faultsIn).orElse(List.of()).stream()
                .filter(fault -> isShownHere(fault.place().pointer()))
                .filter(fault -> !session.draft().shown(fault.place().pointer()).isEmpty()
                        || fault.place().pointer().equals(list.at("").orElse("")))
                .limit(3)
                .toList();
    }

    /** Whether a cell of the table, or the table as such, is meant; fields below it have their own. */
    private boolean isShownHere(String pointer) {
        String here = list.at("").orElse("");
        if (pointer.equals(here)) {
            return true;
        }
        String inRow = pointer.substring(here.length()).replaceFirst("^/\\d+", "");
        return model.columns().stream()
                .anyMatch(c -> (Pointer.isIn(inRow, c.key()) && !(c.key().isEmpty() && !inRow.isEmpty()))
                        || (Pointer.isIn(c.key(), inRow) && !inRow.isEmpty()));
    }

    /** Chooses the row and, if it is one of the columns, the cell of a place; whether a cell is meant. */
    public boolean choose(String pointer) {
        String here = list.at("").orElse("?");
        if (!Pointer.isIn(pointer, here) || pointer.equals(here)) {
            return false;
        }
        String rest = pointer.substring(here.length() + 1);
        int row = rest.matches("\\d.*") ? Integer.parseInt(rest.replaceFirst("/.*", "")) : -1;
        String inRow = rest.replaceFirst("^[^/]*", "");
        if (row < 0 || row >= model.rows()) {
            return false;
        }
        int column = -1;
        for (int i = 0; i < model.columns().size(); i++) {
            String key = model.column(i).key();
            if ((column < 0 && !inRow.isEmpty() && (Pointer.isIn(inRow, key) || Pointer.isIn(key, inRow)))
                    || key.equals(inRow)) {
                column = i;
            }
        }
        table.changeSelection(row, Math.max(column, 0), false, false);
        return column >= 0 || inRow.isEmpty();
    }

    /** Gives the keyboard to the row in which nothing is written yet. */
    public void begin() {
        choose(model.rows());
    }

    private void add() {
        list.at("").ifPresent(pointer -> {
            change(NewRowValues.added(session.draft(), pointer));
            choose(session.draft().rows(pointer) - 1);
        });
    }

    private void duplicate() {
        chosen().ifPresent(row -> {
            change(NewRowValues.doubled(session.draft(), list.at("").orElseThrow(), row));
            choose(row + 1);
        });
    }

    private void move(int by) {
        chosen().ifPresent(row -> {
            change(session.draft().moved(list.at("").orElseThrow(), row, row + by));
            choose(Math.max(0, Math.min(row + by, model.rows() - 1)));
        });
    }

    private void takeOut() {
        chosen().ifPresent(row ->
                change(session.draft().without(Pointer.of(list.at("").orElseThrow(), row))));
    }

    /** Shows what can be picked for the cell that has the keyboard. */
    private void pick() {
        boolean edited = table.isEditing() || table.editCellAt(table.getSelectedRow(), table.getSelectedColumn());
        if (edited && table.getEditorComponent() != null) {
            table.getEditorComponent().requestFocusInWindow();
            TypedAhead.await(table.getEditorComponent());
            SwingUtilities.invokeLater(() -> {
                if (table.isEditing()) {
                    editing.openPicks();
                }
            });
        }
    }

    /** The toolkit's own Escape only puts the editor away, with what was typed left in the draft. */
    private void takeBack() {
        if (table.isEditing()) {
            table.getCellEditor().cancelCellEditing();
        }
    }

    private void paste() {
        Optional<String> pointer = list.at("");
        try {
            Object text = Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
            if (pointer.isPresent() && text instanceof String cells) {
                int row = chosen().orElse(model.rows());
                int column = Math.max(0, table.getSelectedColumn());
                change(ClipboardCells.pasted(
                        session.draft(), pointer.get(), model.columns(), row, column, ClipboardCells.cells(cells)));
            }
        } catch (UnsupportedFlavorException | IOException | IllegalStateException nothingToPaste) {
            Toolkit.getDefaultToolkit().beep();
        }
    }

    private void change(Draft next) {
        if (table.isEditing()) {
            table.getCellEditor().stopCellEditing();
        }
        session.edit(next);
    }

    private Optional<Integer> chosen() {
        int row = table.getSelectedRow();
        return row < 0 || row >= model.rows() ? Optional.empty() : Optional.of(row);
    }

    private void choose(int row) {
        table.changeSelection(row, 0, false, false);
        table.requestFocusInWindow();
    }

    /** A table that begins to edit with the first key, and tells what stands in each cell. */
    private static final class EditableTable extends JTable {
        private boolean letterTaken;

        EditableTable(RowsTableModel model) {
            super(model);
            setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
            setCellSelectionEnabled(true);
            setSurrendersFocusOnKeystroke(true);
            putClientProperty("terminateEditOnFocusLost", true);
            getTableHeader().setReorderingAllowed(false);
            getTableHeader().setResizingAllowed(true);
            getTableHeader()
                    .setDefaultRenderer(
                            new ColumnHeaderRenderer(getTableHeader().getDefaultRenderer()));
            setShowHorizontalLines(true);
            enterGoesDown(model);
            leavesAtTheEnd("selectNextColumnCell", true);
            leavesAtTheEnd("selectPreviousColumnCell", false);
            showRows(LEAST_ROWS);
        }

        /** From the last row Enter goes nowhere: the fields below stay with the row that was just typed. */
        private void enterGoesDown(RowsTableModel model) {
            Action down = getActionMap().get("selectNextRow");
            KeyBindings.inside(this, "ENTER", () -> {
                if (getSelectedRow() < model.rows() - 1) {
                    down.actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, "selectNextRow"));
                } else if (isEditing()) {
                    getCellEditor().stopCellEditing();
                    requestFocusInWindow();
                }
            });
        }

        /**
         * In place of going round from the last cell to the first, the keyboard goes on to what comes behind; so it
         * does from the row in which nothing is written.
         */
        private void leavesAtTheEnd(String step, boolean forward) {
            Action within = getActionMap().get(step);
            getActionMap().put(step, KeyBindings.action(step, () -> {
                int row = forward ? getRowCount() - 1 : 0;
                int column = forward ? getColumnCount() - 1 : 0;
                boolean blank = forward && getSelectedRow() == row && !isEditing();
                if (!blank && (getSelectedRow() != row || getSelectedColumn() != column)) {
                    within.actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, step));
                } else if (!isEditing() || getCellEditor().stopCellEditing()) {
                    leave(forward);
                }
            }));
        }

        private void leave(boolean forward) {
            if (forward) {
                transferFocus();
            } else {
                transferFocusBackward();
            }
            TypedAhead.arrived();
        }

        /** The keyboard comes back from a cell that is put away, also from one that it had not yet reached. */
        @Override
        public void removeEditor() {
            Component cell = getEditorComponent();
            boolean onItsWay = TypedAhead.isAwaited(cell);
            boolean back = onItsWay || (cell != null && hasKeyboard(cell));
            super.removeEditor();
            if (onItsWay) {
                requestFocusInWindow();
            }
            if (back) {
                TypedAhead.await(this);
            }
        }

        private static boolean hasKeyboard(Component cell) {
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return owner != null && SwingUtilities.isDescendingFrom(owner, cell);
        }

        /** A row that is added may bring a scroll bar and so narrow the columns: that is no reason to end an edit. */
        @Override
        public void columnMarginChanged(ChangeEvent event) {
            boolean dragged = getTableHeader() != null && getTableHeader().getResizingColumn() != null;
            if (isEditing() && !dragged) {
                resizeAndRepaint();
                getEditorComponent().setBounds(getCellRect(getEditingRow(), getEditingColumn(), false));
            } else {
                super.columnMarginChanged(event);
            }
        }

        /**
         * The key that opens a list of choices chooses in it too, and so does the next, until the list has the
         * keyboard. A screen may tell the letter with the press of the key, or only once it is typed.
         */
        @Override
        protected boolean processKeyBinding(KeyStroke key, KeyEvent event, int condition, boolean pressed) {
            boolean here = isFocusOwner() && condition == WHEN_ANCESTOR_OF_FOCUSED_COMPONENT;
            boolean edited = isEditing();
            boolean taken = super.processKeyBinding(key, event, condition, pressed);
            if (here && !edited && isEditing()) {
                TypedAhead.await(getEditorComponent());
            }
            if (!here || event.getID() == KeyEvent.KEY_RELEASED) {
                return taken;
            }
            boolean again = event.getID() == KeyEvent.KEY_TYPED && letterTaken;
            letterTaken = !again && isLetter(event) && getEditorComponent() instanceof JComboBox<?>;
            boolean chosen = letterTaken && ((JComboBox<?>) getEditorComponent()).selectWithKeyChar(event.getKeyChar());
            return chosen || taken;
        }

        private static boolean isLetter(KeyEvent event) {
            return event.getKeyChar() != KeyEvent.CHAR_UNDEFINED
                    && !Character.isISOControl(event.getKeyChar())
                    && (event.getModifiersEx() & (InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK)) == 0;
        }

        void showRows(int rows) {
            setPreferredScrollableViewportSize(new Dimension(200, rows * getRowHeight()));
        }

        @Override
        public Component prepareEditor(TableCellEditor editor, int row, int column) {
            Component made = super.prepareEditor(editor, row, column);
            if (made instanceof JTextField field) {
                field.selectAll();
            }
            return made;
        }
    }
}
