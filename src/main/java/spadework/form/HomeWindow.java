// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.BorderLayout;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.library.JobList;

/** The first page of somebody who has jobs: all of them, newest first, found as words are typed; or a new one. */
final class HomeWindow extends JFrame {
    private final JobList jobs;

    /** @param ways what leads to a job */
    HomeWindow(JobList jobs, WindowMenu.Jobs ways) {
        super(Messages.of("home.title"));
        this.jobs = jobs;
        JPanel top = new JPanel(new MigLayout("insets 8 16 0 16, gap 8", "[]16[][][]"));
        JLabel heading = new JLabel(Messages.of("home.heading"));
        heading.putClientProperty("FlatLaf.styleClass", "h1");
        top.add(heading);
        JButton fresh = button("home.new", ways.fresh());
        top.add(fresh);
        top.add(button("home.open", ways.open()));
        top.add(button("home.sample", ways.sample()));
        add(top, BorderLayout.NORTH);
        add(jobs.panel());
        getRootPane().setDefaultButton(fresh);
        KeyBindings.anywhere(getRootPane(), "ctrl N", ways.fresh());
        KeyBindings.anywhere(getRootPane(), "ctrl O", ways.open());
        setSize(1180, 720);
        setDefaultCloseOperation(DISPOSE_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                jobs.words().requestFocusInWindow();
            }
        });
        jobs.load();
    }

    private static JButton button(String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of(key), act));
        button.setName(key);
        button.getAccessibleContext().setAccessibleName(Messages.of(key));
        return button;
    }

    boolean isIdle() {
        return jobs.isIdle();
    }

    @Override
    public void dispose() {
        jobs.stop();
        super.dispose();
    }
}
