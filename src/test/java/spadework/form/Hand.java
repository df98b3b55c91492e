package spadework.form;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.Robot;
import spadework.draft.Draft;
import spadework.draft.Kind;
import spadework.draft.Pointer;

/** Fills the form in by mouse and keyboard, from a job that shows what is to be typed where. */
final class Hand {
    private static final int MOST_STEPS = 60;

    private final OnScreen screen;
    private final Robot robot;
    private final Draft copy;
    private int typed;

    Hand(OnScreen screen, Draft copy) {
        this.screen = screen;
        this.robot = screen.robot();
        this.copy = copy;
    }

    /** How many values were entered. */
    int typed() {
        return typed;
    }

    /** Fills in every page. */
    void fillAll() {
        for (int i = 0; i < screen.job().pages().size(); i++) {
            press(screen.job(), "station " + (i + 1));
            fill(screen.job().pages().get(i));
        }
    }

    void fill(Page page) {
        for (Entry entry : page.entries()) {
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

    private void fill(Page page, RowsTable table) {
        String list = screen.ask(() -> table.pointer().orElse("nowhere"));
        for (int row = 0; row < copy.rows(list); row++) {
            press(page, table.table().getName() + " add");
            RowsModel model = (RowsModel) table.table().getModel();
            for (int column = 0; column < model.getColumnCount(); column++) {
                fill(table.table(), row, column, copy.shown(Pointer.of(list, row) + model.column(column).key()));
            }
            String format = table.table().getName() + "/0";
            for (Entry entry : page.entries()) {
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

    private void fill(Entry entry) {
        if (entry instanceof ShownEntry) {
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
            robot.click(control);
            type(wanted);
        }
    }

    private void fill(JTable table, int row, int column, String wanted) {
        if (wanted.isEmpty() || screen.ask(() -> table.getValueAt(row, column)).equals(wanted)) {
            return;
        }
        Rectangle cell = screen.ask(() -> table.getCellRect(row, column, true));
        screen.ask(() -> {
            table.scrollRectToVisible(cell);
            return null;
        });
        robot.click(table, new Point(cell.x + cell.width / 2, cell.y + cell.height / 2));
        Kind kind = ((RowsModel) table.getModel()).column(column).spot().kind();
        if (kind == Kind.CHOICE || kind == Kind.YES_OR_NO) {
            robot.pressAndReleaseKey(KeyEvent.VK_F2);
            robot.waitForIdle();
            choose((JComboBox<?>) screen.ask(table::getEditorComponent), wanted);
        } else {
            type(wanted);
        }
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        robot.waitForIdle();
    }

    private void choose(JComboBox<?> box, String word) {
        screen.ask(box::requestFocusInWindow);
        robot.waitForIdle();
        for (int i = 0; i < MOST_STEPS && !word.equals(screen.ask(() -> ((Choice) box.getSelectedItem()).word())); i++) {
            robot.pressAndReleaseKey(KeyEvent.VK_DOWN);
            robot.waitForIdle();
        }
        if (screen.ask(box::isPopupVisible)) {
            robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
            robot.waitForIdle();
        }
        typed++;
    }

    void press(Component in, String name) {
        AbstractButton button = screen.all(AbstractButton.class, b -> name.equals(b.getName())).get(0);
        show(button);
        robot.click(button);
        robot.waitForIdle();
    }

    void type(String words) {
        robot.enterText(words);
        robot.waitForIdle();
        typed++;
    }

    private void show(JComponent control) {
        screen.ask(() -> {
            control.scrollRectToVisible(new Rectangle(0, 0, control.getWidth(), control.getHeight()));
            return null;
        });
        robot.waitForIdle();
    }
}
