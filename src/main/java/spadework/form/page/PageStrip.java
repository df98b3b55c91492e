// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;

/** The way through the form, drawn along a drain line that falls from the first page to the last. */
public final class PageStrip extends JPanel {
    private final Map<JobPage, PageButton> buttons = new EnumMap<>(JobPage.class);

    /** @param go called with the page that is chosen */
    public PageStrip(Consumer<JobPage> go) {
        super(new MigLayout("insets 0 8 0 8, gap 0, fill", "[grow,fill,sg]".repeat(JobPage.values().length)));
        setName("way");
        getAccessibleContext().setAccessibleName(Messages.of("way"));
        ButtonGroup group = new ButtonGroup();
        for (JobPage page : JobPage.values()) {
            PageButton button = new PageButton(page.ordinal(), JobPage.values().length, page.title());
            button.setName("go to " + page.word());
            button.addActionListener(event -> go.accept(page));
            group.add(button);
            buttons.put(page, button);
            add(button);
        }
    }

    public void choose(JobPage page) {
        buttons.get(page).setSelected(true);
    }

    /** How many faults each page has. */
    public void count(Map<JobPage, Integer> faults) {
        buttons.forEach((page, button) -> button.count(faults.getOrDefault(page, 0)));
    }

    /** One page: its number on the line, its name below. */
    private static final class PageButton extends JToggleButton {
        private static final int HIGH = 58;
        private static final int FALL = 10;
        private static final int ROUND = 11;

        private final int index;
        private final int all;
        private final String name;
        private int faults;

        PageButton(int index, int all, String name) {
            this.index = index;
            this.all = all;
            this.name = name;
            setContentAreaFilled(false);
            setBorderPainted(false);
            count(0);
        }

        void count(int now) {
            faults = now;
            getAccessibleContext()
                    .setAccessibleName(
                            faults == 0
                                    ? Messages.of("way.page", index + 1, name)
                                    : Messages.of("way.faults", index + 1, name, faults));
            repaint();
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(120, HIGH);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D pen = (Graphics2D) graphics.create();
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            Color water = UIManager.getColor("Spadework.water");
            Color ink = getForeground();
            int middle = getWidth() / 2;
            pen.setColor(UIManager.getColor("Spadework.soil"));
            pen.setStroke(new BasicStroke(3));
            pen.drawLine(index == 0 ? middle : 0, level(index - 0.5), middle, level(index));
            pen.drawLine(middle, level(index), index == all - 1 ? middle : getWidth(), level(index + 0.5));
            int y = level(index);
            pen.setColor(isSelected() ? water : UIManager.getColor("Panel.background"));
            pen.fillOval(middle - ROUND, y - ROUND, 2 * ROUND, 2 * ROUND);
            pen.setStroke(new BasicStroke(1.5f));
            pen.setColor(isSelected() ? water : ink);
            pen.drawOval(middle - ROUND, y - ROUND, 2 * ROUND, 2 * ROUND);
            Font font = UIManager.getFont("defaultFont");
            pen.setFont(Theme.bold(13));
            pen.setColor(isSelected() ? UIManager.getColor("Panel.background") : ink);
            centered(pen, Integer.toString(index + 1), middle, y + 5);
            pen.setFont(isSelected() ? Theme.bold(font.getSize2D()) : font);
            pen.setColor(ink);
            centered(pen, name, middle, HIGH - 5);
            if (faults > 0) {
                pen.setFont(Theme.bold(12));
                pen.setColor(UIManager.getColor("Spadework.fault"));
                pen.drawString(Messages.of("way.count", faults), middle + ROUND + 5, y - 3);
            }
            if (isFocusOwner()) {
                pen.setColor(water);
                pen.drawRoundRect(1, 1, getWidth() - 3, HIGH - 3, 6, 6);
            }
            pen.dispose();
        }

        /** The line falls a little from the first page to the last. */
        private int level(double place) {
            return 16 + (int) Math.round(FALL * Math.max(0, Math.min(all - 1, place)) / (all - 1));
        }

        private static void centered(Graphics2D pen, String text, int x, int y) {
            FontMetrics size = pen.getFontMetrics();
            pen.drawString(text, x - size.stringWidth(text) / 2, y);
        }
    }
}
