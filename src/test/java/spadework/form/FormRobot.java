// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionListener;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.Robot;
import spadework.draft.Draft;
import spadework.draft.FieldKind;
import spadework.draft.Pointer;
import spadework.form.field.BoundField;
import spadework.form.field.ReadOnlyField;
import spadework.form.field.RowsTable;
import spadework.form.field.RowsTableModel;
import spadework.form.kit.WordChoice;
import spadework.form.page.FormPage;
import spadework.form.page.JobPage;

/** Fills the form in by mouse and keyboard, from a job that shows what is to be typed where. */
public final class FormRobot {
    private static final int MOST_STEPS = 60;

    private final OnScreen screen;
    private final Robot robot;
    private final Draft copy;
    private int typed;

    public FormRobot(OnScreen screen, Draft copy) {
        this.screen = screen;
        this.robot = screen.robot();
        this.copy = copy;
    }

    /** How many values were entered. */
    int typed() {
        return typed;
    }

    /** Fills in every page; the tape sheet has no place of its own. */
    void fillAll() {
        for (int i = 1; i < screen.job().pages().size(); i++) {
            goTo(JobPage.values()[i]);
            fill(screen.job().pages().get(i));
        }
    }

    /** Presses the stop of a page, and then the page. */
    void goTo(JobPage page) {
        press(screen.job(), "go to stop " + page.stop().word());
        if (page.stop().pages().size() > 1) {
            press(screen.job(), "go to " + page.word());
        }
    }

    /** Opens the groups of a page that are closed. */
    void openGroups(FormPage page) {
        for (JButton heading : screen.all(JButton.class, FormRobot::isClosedGroup)) {
            if (screen.ask(() -> heading.isShowing() && SwingUtilities.isDescendingFrom(heading, page))) {
                press(page, heading.getName());
            }
        }
    }

    private static boolean isClosedGroup(JButton button) {
        return String.valueOf(button.getName()).startsWith("open ")
                && button.isShowing()
                && !button.getAccessibleContext().getAccessibleName().endsWith(", open");
    }

    void fill(FormPage page) {
        openGroups(page);
        for (BoundField entry : page.entries()) {
            if (!entry.control().getName().contains("/0")) {
                fill(entry);
            }
        }
        for (RowsTable table : page.tables()) {
            if (!table.table().getName().contains("/0")) {
                fill(page, table);
            }
        }
    }

    private void fill(FormPage page, RowsTable table) {
        String list = screen.ask(() -> table.pointer().orElse("nowhere"));
        for (int row = 0; row < copy.rows(list); row++) {
            press(page, table.table().getName() + " add");
            RowsTableModel model = (RowsTableModel) table.table().getModel();
            for (int column = 0; column < model.getColumnCount(); column++) {
                fill(
                        table.table(),
                        row,
                        column,
                        copy.shown(Pointer.of(list, row) + model.column(column).key()));
            }
            String format = table.table().getName() + "/0";
            for (BoundField entry : page.entries()) {
                if (isJustIn(format, entry.control().getName())) {
                    fill(entry);
                }
            }
            for (RowsTable inside : page.tables()) {
                if (isJustIn(format, inside.table().getName())) {
                    fill(page, inside);
                }
            }
        }
    }

    /** Whether a place lies in a row, and in none of the lists of that row. */
    private static boolean isJustIn(String row, String place) {
        return place.startsWith(row + "/") && !place.substring(row.length()).contains("/0");
    }

    private void fill(BoundField entry) {
        if (entry instanceof ReadOnlyField) {
            return;
        }
        String wanted = copy.shown(screen.ask(() -> entry.pointer().orElse("nowhere")));
        if (wanted.isEmpty()) {
            return;
        }
        JComponent control = entry.control();
        show(control);
        if (control instanceof JComboBox<?> box) {
            choose(box, wanted);
        } else if (!screen.ask(((JTextComponent) control)::getText).equals(wanted)) {
            JTextComponent text = (JTextComponent) control;
            robot.click(control);
            screen.waitFor("keyboard in " + control.getName(), () -> screen.ask(text::isFocusOwner));
            type(wanted);
            screen.waitFor(
                    wanted + " in " + control.getName(),
                    () -> screen.ask(text::getText).equals(wanted));
        }
    }

    private void fill(JTable table, int row, int column, String wanted) {
        if (wanted.isEmpty() || screen.ask(() -> table.getValueAt(row, column)).equals(wanted)) {
            return;
        }
        go(table, row, column);
        FieldKind kind =
                ((RowsTableModel) table.getModel()).column(column).spot().kind();
        if (kind == FieldKind.CHOICE || kind == FieldKind.YES_OR_NO) {
            robot.pressAndReleaseKey(KeyEvent.VK_F2);
            screen.waitFor("editing of " + table.getName(), () -> screen.ask(table::isEditing));
            choose((JComboBox<?>) screen.ask(table::getEditorComponent), wanted);
        } else {
            type(wanted);
            screen.waitFor(
                    wanted + " in a cell of " + table.getName(),
                    () -> screen.ask(() -> table.getEditorComponent() instanceof JTextComponent cellText
                            && cellText.getText().equals(wanted)),
                    () -> described(table));
        }
        if (screen.ask(table::isEditing)) {
            robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        }
        screen.waitFor("end of editing in " + table.getName(), () -> !screen.ask(table::isEditing));
    }

    /** Clicks a cell, and waits until it has the keyboard. */
    private void go(JTable table, int row, int column) {
        screen.still();
        if (isChosen(table, row, column)) {
            return;
        }
        Rectangle cell = screen.ask(() -> table.getCellRect(row, column, true));
        screen.ask(() -> {
            table.scrollRectToVisible(cell);
            JComponent page = (JComponent) SwingUtilities.getAncestorOfClass(FormPage.class, table);
            page.scrollRectToVisible(SwingUtilities.convertRectangle(table, cell, page));
            return null;
        });
        robot.waitForIdle();
        robot.click(table, new Point(cell.x + cell.width / 2, cell.y + cell.height / 2));
        screen.waitFor(
                "keyboard in row " + row + ", column " + column,
                () -> isChosen(table, row, column),
                () -> described(table));
    }

    private boolean isChosen(JTable table, int row, int column) {
        return screen.ask(() -> table.getSelectedRow() == row
                && table.getSelectedColumn() == column
                && (table.isFocusOwner() || table.isEditing()));
    }

    /** Where a table stands, for whoever reads that a test waited in vain. */
    private String described(JTable table) {
        return screen.ask(() -> table.getName() + " at " + table.getSelectedRow() + ", " + table.getSelectedColumn()
                + (table.getEditorComponent() instanceof JTextComponent text ? " with \"" + text.getText() + "\"" : "")
                + ", keyboard in "
                + KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
    }

    /** Goes to a field and types over what stands in it. */
    void replace(JTextComponent field, String words) {
        show(field);
        robot.click(field);
        screen.waitFor("keyboard in " + field.getName(), () -> screen.ask(field::isFocusOwner));
        key(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        type(words);
        screen.waitFor(
                words + " in " + field.getName(),
                () -> screen.ask(field::getText).equals(words));
    }

    /**
     * Presses a key while Alt is held. The screen in memory forgets that Alt is held, so there the key is handed to
     * whatever has the keyboard.
     */
    void altKey(int key) {
        if ("real".equals(System.getProperty("spadework.screen"))) {
            key(KeyEvent.VK_ALT, key);
            return;
        }
        screen.ask(() -> {
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            owner.dispatchEvent(new KeyEvent(
                    owner,
                    KeyEvent.KEY_PRESSED,
                    System.currentTimeMillis(),
                    InputEvent.ALT_DOWN_MASK,
                    key,
                    KeyEvent.CHAR_UNDEFINED));
            return null;
        });
        robot.waitForIdle();
    }

    /** Turns the wheel over a component; the screen in memory has no wheel, so there its window is told. */
    void wheel(Component over, Point at, int by) {
        if ("real".equals(System.getProperty("spadework.screen"))) {
            robot.moveMouse(over, at);
            robot.rotateMouseWheel(over, by);
        } else {
            screen.ask(() -> {
                Component window = screen.window().target();
                Point there = SwingUtilities.convertPoint(over, at, window);
                window.dispatchEvent(new MouseWheelEvent(
                        window,
                        MouseEvent.MOUSE_WHEEL,
                        System.currentTimeMillis(),
                        0,
                        there.x,
                        there.y,
                        0,
                        false,
                        MouseWheelEvent.WHEEL_UNIT_SCROLL,
                        3,
                        by));
                return null;
            });
        }
        screen.settle();
    }

    /** Presses a key while others are held. */
    void key(int... keys) {
        for (int i = 0; i < keys.length - 1; i++) {
            robot.pressKey(keys[i]);
        }
        robot.pressAndReleaseKey(keys[keys.length - 1]);
        for (int i = keys.length - 2; i >= 0; i--) {
            robot.releaseKey(keys[i]);
        }
        screen.arrive();
    }

    /** Types over a cell of a table on a page. */
    void cell(FormPage page, String list, int row, String key, String words) {
        JTable table = page.tables().stream()
                .map(RowsTable::table)
                .filter(t -> list.equals(t.getName()))
                .findFirst()
                .orElseThrow();
        RowsTableModel model = (RowsTableModel) table.getModel();
        for (int column = 0; column < model.getColumnCount(); column++) {
            if (model.column(column).key().equals(key)) {
                fill(table, row, column, words);
            }
        }
    }

    /** Chooses a word by keyboard. */
    void choose(JComboBox<?> box, String word) {
        // A list that opens under the mouse would take what it rests on.
        robot.moveMouse(screen.window().target(), new Point(2, 2));
        screen.focus(box);
        for (int i = 0;
                i < MOST_STEPS && !word.equals(screen.ask(() -> ((WordChoice) box.getSelectedItem()).word()));
                i++) {
            String before = screen.ask(() -> box.getSelectedIndex() + " " + box.isPopupVisible());
            robot.pressAndReleaseKey(KeyEvent.VK_DOWN);
            screen.waitFor(
                    "choice of " + word,
                    () -> !before.equals(screen.ask(() -> box.getSelectedIndex() + " " + box.isPopupVisible())));
        }
        if (screen.ask(box::isPopupVisible)) {
            robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
            screen.waitFor("end of choosing " + word, () -> !screen.ask(box::isPopupVisible));
        }
        typed++;
    }

    public void press(Component in, String name) {
        AbstractButton button = screen.all(AbstractButton.class, b -> name.equals(b.getName()) && b.isShowing())
                .get(0);
        show(button);
        AtomicBoolean pressed = new AtomicBoolean(!screen.ask(button::isEnabled));
        ActionListener listener = event -> pressed.set(true);
        screen.ask(() -> {
            button.addActionListener(listener);
            return null;
        });
        robot.click(button);
        screen.waitFor("press of " + name, pressed::get);
        button.removeActionListener(listener);
    }

    void type(String words) {
        for (String part : words.split("(?<=[^\\x00-\\x7f])|(?=[^\\x00-\\x7f])")) {
            // A letter that no key has is handed to whatever has the keyboard: first the keys before it must arrive.
            if (!part.isEmpty() && part.charAt(0) > 0x7f) {
                screen.still();
            }
            robot.enterText(part);
        }
        screen.arrive();
        typed++;
    }

    private void show(JComponent control) {
        screen.still();
        screen.ask(() -> {
            control.scrollRectToVisible(new Rectangle(0, 0, control.getWidth(), control.getHeight()));
            return null;
        });
        robot.waitForIdle();
    }
}
