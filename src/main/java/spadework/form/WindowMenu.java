// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;
import spadework.form.library.LibraryTab;
import spadework.form.page.JobPage;
import spadework.form.page.JobStop;

/** Everything that the window can do, with its keys. */
public final class WindowMenu {
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
        job.add(item("keep", "", window::keepAsUsual));
        job.addSeparator();
        job.add(item("leave", "ctrl Q", window::leave));
        JMenu edit = menu("edit");
        edit.add(item("undo", "ctrl Z", () -> window.session().undo()));
        edit.add(item("redo", "ctrl Y", () -> window.session().redo()));
        edit.addSeparator();
        edit.add(item("decide", "ctrl T", window::decide));
        edit.add(item("book", "ctrl L", window::lookUp));
        JMenu go = menu("go");
        for (JobStop stop : JobStop.values()) {
            go.add(item("stop." + stop.word(), stop.keys(), () -> window.go(stop)));
        }
        go.addSeparator();
        for (JobPage page : JobPage.values()) {
            go.add(item("page." + page.word(), "", () -> window.go(page)));
        }
        JMenu show = menu("show");
        for (SidePane pane : SidePane.values()) {
            show.add(item("pane." + pane.word(), pane.keys(), () -> window.show(pane)));
        }
        show.addSeparator();
        show.add(item("margin", "F8", window::toggleMargin));
        show.add(item("groups", "ctrl shift E", window::openAllGroups));
        show.addSeparator();
        show.add(item("light", "", () -> Theme.apply(false)));
        show.add(item("dark", "", () -> Theme.apply(true)));
        show.add(item("larger", "ctrl EQUALS", () -> Theme.step(0.25f)));
        show.add(item("smaller", "ctrl MINUS", () -> Theme.step(-0.25f)));
        JMenu library = menu("library");
        library.setMnemonic(Messages.of("menu.library").charAt(1));
        for (LibraryTab tab : LibraryTab.values()) {
            library.add(item("library." + tab.word(), tab.keys(), () -> window.library(tab)));
        }
        bar.add(job);
        bar.add(edit);
        bar.add(go);
        bar.add(show);
        bar.add(library);
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
