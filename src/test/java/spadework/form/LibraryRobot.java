// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionListener;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import spadework.draft.Draft;
import spadework.form.library.ItemValuesModel;
import spadework.form.library.LibraryTab;

/** Works the library by mouse and keyboard. */
public final class LibraryRobot {
    private static final int MOST_STEPS = 60;

    private final OnScreen screen;

    private LibraryRobot(OnScreen screen) {
        this.screen = screen;
    }

    /** Opens the library of the job on screen at one of its tabs. */
    static LibraryRobot open(OnScreen screen, LibraryTab tab) {
        JobWindow job = screen.job();
        screen.lookAt(() -> job.library(tab));
        screen.settle();
        return new LibraryRobot(screen);
    }

    <T extends Component> T find(Class<T> kind, String name) {
        return screen.all(kind, one -> name.equals(one.getName()) && one.isShowing())
                .get(0);
    }

    /** Types over what stands in a field. */
    void type(String name, String words) {
        JTextComponent field = find(JTextComponent.class, name);
        screen.robot().click(field);
        screen.waitFor(() -> screen.ask(field::isFocusOwner));
        screen.ask(() -> {
            field.selectAll();
            return null;
        });
        screen.robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        screen.robot().enterText(words);
        screen.arrive();
        screen.settle();
    }

    void press(String name) {
        AbstractButton button = find(AbstractButton.class, name);
        AtomicBoolean pressed = new AtomicBoolean();
        ActionListener heard = event -> pressed.set(true);
        screen.ask(() -> {
            button.addActionListener(heard);
            return null;
        });
        new FormRobot(screen, Draft.empty()).press(button, name);
        screen.waitFor(pressed::get);
        screen.ask(() -> {
            button.removeActionListener(heard);
            return null;
        });
        screen.settle();
    }

    boolean canPress(String name) {
        AbstractButton button = find(AbstractButton.class, name);
        return screen.ask(button::isEnabled);
    }

    String text(String name) {
        JTextComponent field = find(JTextComponent.class, name);
        return screen.ask(field::getText);
    }

    List<String> lines(String name) {
        return text(name).lines().toList();
    }

    /** The cells of a table as they are seen, row by row. */
    List<List<String>> cells(String name) {
        JTable table = find(JTable.class, name);
        return screen.ask(() -> {
            List<List<String>> rows = new ArrayList<>();
            for (int row = 0; row < table.getRowCount(); row++) {
                List<String> cells = new ArrayList<>();
                for (int column = 0; column < table.getColumnCount(); column++) {
                    cells.add(String.valueOf(table.getValueAt(row, column)));
                }
                rows.add(cells);
            }
            return rows;
        });
    }

    /** Clicks a cell of the first row whose first cells are these. */
    void click(String name, int column, String... first) {
        JTable table = find(JTable.class, name);
        int row = row(() -> cells(name), List.of(first));
        Rectangle cell = screen.ask(() -> {
            table.scrollRectToVisible(table.getCellRect(row, column, true));
            return table.getCellRect(row, column, true);
        });
        screen.arrive();
        screen.robot().click(table, new Point(cell.x + cell.width / 2, cell.y + cell.height / 2));
        screen.waitFor(() -> screen.ask(() -> table.getSelectedRow() == row));
        screen.settle();
    }

    private static int row(Supplier<List<List<String>>> cells, List<String> first) {
        List<List<String>> rows = cells.get();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).subList(0, first.size()).equals(first)) {
                return i;
            }
        }
        throw new AssertionError("no row " + first + " in " + rows);
    }

    /** Types a value of the chosen item over, or chooses it where it is one of a few words. */
    void value(String what, String value) {
        click("library.values", ItemValuesModel.THEN, what);
        JTable table = find(JTable.class, "library.values");
        screen.waitFor(() -> screen.ask(() -> table.isFocusOwner() || table.isEditing()));
        if (!screen.ask(table::isEditing)) {
            screen.robot().pressAndReleaseKey(KeyEvent.VK_F2);
            screen.arrive();
        }
        if (screen.ask(table::getEditorComponent) instanceof JComboBox<?> box) {
            for (int i = 0; i < MOST_STEPS && !value.equals(screen.ask(box::getSelectedItem)); i++) {
                screen.robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
                screen.arrive();
            }
            screen.robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
            screen.arrive();
            return;
        }
        JTextComponent editor = find(JTextComponent.class, "library.value");
        screen.ask(() -> {
            editor.selectAll();
            return null;
        });
        screen.robot().enterText(value);
        screen.robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        screen.arrive();
    }

    void key(int key) {
        screen.robot().pressAndReleaseKey(key);
        screen.arrive();
        screen.settle();
    }
}
