// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import spadework.drawing.shape.Scene;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.session.JobSession;
import spadework.office.BidView;

/** The plan, the trench cut across at the wall that is chosen, and the way of the water from the run that is chosen. */
public final class DrawingPane extends JPanel {
    private static final double STEP = 1.5;

    private final JobSession session;
    private final ScenePanel plan = new ScenePanel("plan");
    private final ScenePanel section = new ScenePanel("section");
    private final ScenePanel profile = new ScenePanel("profile");
    private final JComboBox<String> walls = box("walls");
    private final JComboBox<String> runs = box("runs");
    private boolean offering;

    public DrawingPane(JobSession session) {
        super(new MigLayout(
                "insets 0, gap 4, fill, wrap 1", "[grow,fill]", "[grow 40,fill][][grow 34,fill][][grow 26,fill]"));
        this.session = session;
        add(plan, "hmin 80, wmin 80");
        add(bar(walls, section), "gapleft 6");
        add(section, "hmin 80, wmin 80");
        add(bar(runs, profile), "gapleft 6");
        add(profile, "hmin 60, wmin 80");
        walls.addActionListener(event -> draw());
        runs.addActionListener(event -> draw());
    }

    /** What is drawn, and how near. */
    private static JPanel bar(JComboBox<String> box, ScenePanel drawing) {
        JPanel bar = new JPanel(new MigLayout("insets 0, gap 4", "[]push[][][]"));
        bar.add(box, "wmin 60");
        bar.add(button(drawing, "smaller", () -> drawing.closer(1 / STEP)));
        bar.add(button(drawing, "larger", () -> drawing.closer(STEP)));
        bar.add(button(drawing, "all", drawing::fit));
        return bar;
    }

    private static JButton button(ScenePanel drawing, String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of("drawing." + key), act));
        button.setName(drawing.getName() + " " + key);
        String name = Messages.of("drawing.button", Messages.of("drawing." + key + ".name"), drawing.title());
        button.getAccessibleContext().setAccessibleName(name);
        button.setToolTipText(name);
        return button;
    }

    private static JComboBox<String> box(String key) {
        JComboBox<String> box = new JComboBox<>();
        box.setName("drawing " + key);
        box.getAccessibleContext().setAccessibleName(Messages.of("drawing." + key));
        box.setToolTipText(Messages.of("drawing." + key));
        PlainText.inList(box);
        return box;
    }

    public void showAnswer() {
        if (isShowing()) {
            offer(walls, "drawing.wall", session.view().map(BidView::sections).orElse(Map.of()));
            offer(runs, "drawing.run", session.view().map(BidView::profiles).orElse(Map.of()));
            draw();
        }
    }

    /** Offers what there is to see; the chosen one stays chosen while it is there. */
    private void offer(JComboBox<String> box, String key, Map<List<String>, Scene> drawings) {
        List<String> names = drawings.keySet().stream()
                .map(labels -> Messages.of(key, String.join(", ", labels)))
                .toList();
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < box.getItemCount(); i++) {
            shown.add(box.getItemAt(i));
        }
        if (!names.equals(shown)) {
            Object chosen = box.getSelectedItem();
            offering = true;
            box.setModel(new DefaultComboBoxModel<>(names.toArray(String[]::new)));
            if (names.contains(chosen)) {
                box.setSelectedItem(chosen);
            }
            offering = false;
        }
        box.setEnabled(names.size() > 1);
    }

    private void draw() {
        if (!offering) {
            session.view().map(BidView::plan).ifPresentOrElse(plan::show, plan::clear);
            chosen(walls, session.view().map(BidView::sections).orElse(Map.of()))
                    .ifPresentOrElse(section::show, section::clear);
            chosen(runs, session.view().map(BidView::profiles).orElse(Map.of()))
                    .ifPresentOrElse(profile::show, profile::clear);
        }
    }

    private static Optional<Scene> chosen(JComboBox<String> box, Map<List<String>, Scene> drawings) {
        return drawings.values().stream()
                .skip(Math.max(0, box.getSelectedIndex()))
                .findFirst();
    }
}
