// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.Color;
import java.awt.FlowLayout;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.ImageIcon;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.form.kit.DropArea;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.WheelScroll;
import spadework.form.session.JobFiles;
import spadework.form.session.JobSession;

/** The photos of a job in small, and a place to drop more; each gets a row in the list of photos. */
final class PhotoPane extends JPanel {
    private static final String LIST = "/photos";
    private static final int SIDE = 120;
    private static final int HIGH = 166;

    private final JobSession session;
    private final JobFiles files;
    private final JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 4));
    private List<String> shown = List.of();

    PhotoPane(JobSession session, JobFiles files) {
        super(new MigLayout("insets 0, gap 6, fillx, wrap 1", "[grow,fill]"));
        this.session = session;
        this.files = files;
        setOpaque(false);
        row.setOpaque(false);
        JScrollPane scroll = WheelScroll.in(new JScrollPane(row));
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setVerticalScrollBarPolicy(JScrollPane.VERTICAL_SCROLLBAR_NEVER);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        DropArea area = new DropArea(
                "photos choose",
                Messages.of("photos.drop"),
                Messages.of("photos.choose"),
                () -> files.choosePictures(this, this::add),
                dropped -> files.pictures(dropped, this::add));
        area.alsoOn(this);
        add(area);
        add(scroll, "h " + HIGH + "!, wmin 60");
        say(Messages.of("photos.none"));
    }

    private void say(String words) {
        row.removeAll();
        row.add(new JLabel(words));
    }

    /** Each new picture becomes a row; one that has a row keeps it. */
    private void add(List<String> names) {
        Draft draft = session.draft();
        List<String> there = names(draft);
        for (String name : names) {
            if (!there.contains(name)) {
                int at = draft.rows(LIST);
                draft = draft.insertedBlank(LIST, at).typed(Pointer.of(LIST, at) + "/file", name);
            }
        }
        session.edit(draft);
    }

    private static List<String> names(Draft draft) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < draft.rows(LIST); i++) {
            names.add(draft.shown(Pointer.of(LIST, i) + "/file"));
        }
        return names;
    }

    void showDraft() {
        List<String> now = names(session.draft());
        if (!now.equals(shown)) {
            shown = now;
            files.previews(now, SIDE, small -> show(now, small));
        }
    }

    private void show(List<String> names, Map<String, BufferedImage> small) {
        if (!names.equals(shown)) {
            return;
        }
        if (names.isEmpty()) {
            say(Messages.of("photos.none"));
        } else {
            row.removeAll();
            names.forEach(name -> row.add(one(name, small)));
        }
        row.revalidate();
        row.repaint();
    }

    private static JLabel one(String name, Map<String, BufferedImage> small) {
        JLabel label = PlainText.of(new JLabel(name));
        label.setName("photo " + name);
        label.setHorizontalTextPosition(SwingConstants.CENTER);
        label.setVerticalTextPosition(SwingConstants.BOTTOM);
        BufferedImage picture = small.get(name);
        if (picture == null) {
            label.setText(Messages.of("photos.missing", name));
            label.setBorder(BorderFactory.createLineBorder(Color.GRAY));
        } else {
            label.setIcon(new ImageIcon(picture));
        }
        label.getAccessibleContext().setAccessibleName(Messages.of("photos.one", name));
        return label;
    }
}
