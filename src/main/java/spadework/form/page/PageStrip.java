// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;

/** The five stops of a job along a drain line that falls, and below it the pages of the stop that is open. */
public final class PageStrip extends JPanel {
    private final Map<JobStop, StopButton> stops = new EnumMap<>(JobStop.class);
    private final Map<JobPage, JToggleButton> buttons = new EnumMap<>(JobPage.class);
    private final Map<JobStop, JobPage> last = new EnumMap<>(JobStop.class);
    private final JPanel below = new JPanel(new MigLayout("insets 0 16 4 16, gap 4, hidemode 3"));
    private final JButton next;
    private final Consumer<JobPage> go;
    private JobPage at = JobPage.START;

    /** @param go called with the page that is chosen */
    public PageStrip(Consumer<JobPage> go) {
        super(new MigLayout("insets 0 8 0 8, gap 0, fillx, wrap 1", "[grow,fill]"));
        this.go = go;
        setName("way");
        getAccessibleContext().setAccessibleName(Messages.of("way"));
        JPanel line = new JPanel(
                new MigLayout("insets 0, gap 0, fill", "[grow,fill,sg]".repeat(JobStop.values().length) + "[]"));
        ButtonGroup group = new ButtonGroup();
        for (JobStop stop : JobStop.values()) {
            StopButton button = new StopButton(stop);
            button.setName("go to stop " + stop.word());
            button.addActionListener(event -> go(stop));
            group.add(button);
            stops.put(stop, button);
            line.add(button);
        }
        next = new JButton(KeyBindings.action(Messages.of("way.next"), this::goOn));
        next.setName("next");
        next.setToolTipText(Messages.of("way.next.help"));
        line.add(next, "gapleft 8");
        ButtonGroup pages = new ButtonGroup();
        for (JobPage page : JobPage.values()) {
            JToggleButton button = new JToggleButton(page.title());
            button.setName("go to " + page.word());
            button.putClientProperty("JButton.buttonType", "toolBarButton");
            button.addActionListener(event -> go.accept(page));
            pages.add(button);
            buttons.put(page, button);
            below.add(button);
        }
        add(line);
        add(below);
        KeyBindings.anywhere(this, "ctrl ENTER", this::goOn);
        choose(at);
        count(Map.of());
    }

    /** Opens a stop at the page where it was left. */
    public void go(JobStop stop) {
        go.accept(last.getOrDefault(stop, stop.pages().get(0)));
    }

    private void goOn() {
        at.next().ifPresent(go);
    }

    public void choose(JobPage page) {
        at = page;
        last.put(page.stop(), page);
        stops.get(page.stop()).setSelected(true);
        buttons.get(page).setSelected(true);
        buttons.forEach((one, button) -> button.setVisible(
                one.stop() == page.stop() && page.stop().pages().size() > 1));
        next.setEnabled(page.next().isPresent());
        next.getAccessibleContext()
                .setAccessibleName(page.next()
                        .map(on -> Messages.of("way.next.to", on.stop().title()))
                        .orElse(Messages.of("way.next")));
    }

    /** How many faults each page has. */
    public void count(Map<JobPage, Integer> faults) {
        buttons.forEach((page, button) -> {
            int open = faults.getOrDefault(page, 0);
            button.setText(open == 0 ? page.title() : Messages.of("way.page.count", page.title(), open));
            button.getAccessibleContext()
                    .setAccessibleName(
                            open == 0
                                    ? Messages.of("way.page", page.title())
                                    : Messages.of("way.faults", page.title(), open));
        });
        stops.forEach((stop, button) -> button.count(stop.pages().stream()
                .mapToInt(page -> faults.getOrDefault(page, 0))
                .sum()));
    }

    /** Which stops are behind the job. */
    public void done(Map<JobStop, Boolean> done) {
        stops.forEach((stop, button) -> button.done(done.getOrDefault(stop, false)));
    }
}
