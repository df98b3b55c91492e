package spadework.form;

import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;

/** Everything that the window can do, with its keys. */
public final class WindowMenu {
    /** The keys of the pages, in their order. */
    private static final String STATIONS = "1234567890-";

    private static final int PANES = 5;
    private static final List<String> SHELF = List.of("book", "sheets", "bids", "feedback", "otherwise");
    private static final List<String> SHELF_KEYS = List.of("B", "W", "O", "F", "P");

    private WindowMenu() {}

    /** What leads to another job. */
    public record Jobs(Runnable fresh, Runnable open, Runnable sample) {}

    static JMenuBar of(JobWindow window, Jobs jobs) {
        JMenuBar bar = new JMenuBar();
        JMenu job = menu("job");
        job.add(item("new", "ctrl N", jobs.fresh()));
        job.add(item("open", "ctrl O", jobs.open()));
        job.add(item("sample", "", jobs.sample()));
        job.addSeparator();
        job.add(item("save", "ctrl S", () -> window.saving().save()));
        job.add(item("leave", "ctrl Q", window::leave));
        JMenu edit = menu("edit");
        edit.add(item("undo", "ctrl Z", () -> window.desk().undo()));
        edit.add(item("redo", "ctrl Y", () -> window.desk().redo()));
        edit.addSeparator();
        edit.add(item("book", "ctrl L", window::lookUp));
        JMenu go = menu("go");
        for (int i = 0; i < STATIONS.length(); i++) {
            int index = i;
            String key = STATIONS.substring(i, i + 1).replace("-", "MINUS");
            go.add(item("station." + i, "alt " + key, () -> window.go(index)));
        }
        JMenu show = menu("show");
        for (int i = 0; i < PANES; i++) {
            int index = i;
            show.add(item("pane." + i, "ctrl " + (i + 1), () -> window.beside(index)));
        }
        show.addSeparator();
        show.add(item("light", "", () -> Theme.wear(false)));
        show.add(item("dark", "", () -> Theme.wear(true)));
        JMenu shelf = menu("shelf");
        shelf.setMnemonic(Messages.of("menu.shelf").charAt(1));
        for (int i = 0; i < SHELF.size(); i++) {
            int index = i;
            shelf.add(item("shelf." + SHELF.get(i), "ctrl shift " + SHELF_KEYS.get(i), () -> window.shelf(index)));
        }
        bar.add(job);
        bar.add(edit);
        bar.add(go);
        bar.add(show);
        bar.add(shelf);
        return bar;
    }

    private static JMenu menu(String key) {
        String words = Messages.of("menu." + key);
        JMenu menu = new JMenu(words);
        menu.setMnemonic(words.charAt(0));
        menu.getAccessibleContext().setAccessibleName(words);
        return menu;
    }

    private static JMenuItem item(String key, String stroke, Runnable act) {
        JMenuItem item = new JMenuItem(KeyBindings.action(Messages.of("menu." + key), act));
        item.setName("menu." + key);
        if (!stroke.isEmpty()) {
            item.setAccelerator(KeyStroke.getKeyStroke(stroke));
        }
        return item;
    }
}
