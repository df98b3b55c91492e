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
import java.awt.geom.Path2D;
import javax.swing.JToggleButton;
import javax.swing.UIManager;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;

/** One stop: its mark on the line, its name below, and how much is to fix there. */
final class StopButton extends JToggleButton {
    private static final int HIGH = 52;
    private static final int FALL = 8;
    private static final int ROUND = 10;

    private final JobStop stop;
    private int faults;
    private boolean done;

    StopButton(JobStop stop) {
        this.stop = stop;
        setContentAreaFilled(false);
        setBorderPainted(false);
        tell();
    }

    void count(int now) {
        faults = now;
        tell();
    }

    void done(boolean now) {
        done = now;
        tell();
    }

    private void tell() {
        String name = Messages.of(done ? "stop.done" : "stop.open", stop.ordinal() + 1, stop.title());
        getAccessibleContext().setAccessibleName(faults == 0 ? name : Messages.of("way.faults", name, faults));
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Theme.scaled(150), Theme.scaled(HIGH));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        int last = JobStop.values().length - 1;
        int index = stop.ordinal();
        Color water = UIManager.getColor("Spadework.water");
        Color ink = getForeground();
        Color ground = UIManager.getColor("Panel.background");
        int middle = getWidth() / 2;
        pen.setColor(UIManager.getColor("Spadework.soil"));
        pen.setStroke(new BasicStroke(3));
        pen.drawLine(index == 0 ? middle : 0, level(index - 0.5, last), middle, level(index, last));
        pen.drawLine(middle, level(index, last), index == last ? middle : getWidth(), level(index + 0.5, last));
        int y = level(index, last);
        int round = Theme.scaled(ROUND);
        boolean full = isSelected() || done;
        pen.setColor(full ? water : ground);
        pen.fillOval(middle - round, y - round, 2 * round, 2 * round);
        pen.setStroke(new BasicStroke(1.5f));
        pen.setColor(full ? water : ink);
        pen.drawOval(middle - round, y - round, 2 * round, 2 * round);
        pen.setColor(full ? ground : ink);
        if (done) {
            tick(pen, middle, y);
        } else {
            pen.setFont(Theme.bold(13));
            centered(pen, Integer.toString(index + 1), middle, y + 5);
        }
        Font font = UIManager.getFont("defaultFont");
        pen.setFont(isSelected() ? Theme.bold(15) : font);
        for (int size = pen.getFont().getSize();
                size > 9 && pen.getFontMetrics().stringWidth(stop.title()) > getWidth() - 4;
                size--) {
            pen.setFont(pen.getFont().deriveFont((float) size));
        }
        pen.setColor(ink);
        centered(pen, stop.title(), middle, getHeight() - Theme.scaled(6));
        if (faults > 0) {
            pen.setFont(Theme.bold(12));
            pen.setColor(UIManager.getColor("Spadework.missing"));
            pen.drawString(Messages.of("way.count", faults), middle + round + 5, y - 2);
        }
        if (isFocusOwner()) {
            pen.setColor(water);
            pen.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, 6, 6);
        }
        pen.dispose();
    }

    private static void tick(Graphics2D pen, int x, int y) {
        Path2D tick = new Path2D.Double();
        tick.moveTo(x - 5, y);
        tick.lineTo(x - 1.5, y + 4);
        tick.lineTo(x + 5, y - 4.5);
        pen.setStroke(new BasicStroke(2));
        pen.draw(tick);
    }

    /** The line falls a little from the first stop to the last. */
    private static int level(double place, int last) {
        return Theme.scaled(14) + (int) Math.round(Theme.scaled(FALL) * Math.max(0, Math.min(last, place)) / last);
    }

    private static void centered(Graphics2D pen, String text, int x, int y) {
        FontMetrics size = pen.getFontMetrics();
        pen.drawString(text, x - size.stringWidth(text) / 2, y);
    }
}
