// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.UIManager;

/** Paper to sign on with mouse, pen or finger. */
public final class SignaturePad extends JPanel {
    private static final Color PAPER = Color.WHITE;
    private static final Color INK = new Color(0x10204a);
    private static final float STROKE = 2.4f;
    private static final int HIGH = 130;
    private static final int LETTERS = 13;
    /** Pixels of the kept picture to one of the screen. */
    private static final int FINE = 2;

    private final List<Path2D> strokes = new ArrayList<>();
    private Runnable changed = () -> {};

    public SignaturePad(String name) {
        setName(name);
        setOpaque(true);
        getAccessibleContext().setAccessibleName(Messages.of("sign.pad"));
        setToolTipText(Messages.of("sign.pad"));
        setBorder(BorderFactory.createLineBorder(UIManager.getColor("Component.borderColor")));
        MouseAdapter hand = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                if (isEnabled()) {
                    Path2D stroke = new Path2D.Double();
                    stroke.moveTo(event.getX(), event.getY());
                    stroke.lineTo(event.getX() + 0.1, event.getY());
                    strokes.add(stroke);
                    tell();
                }
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                if (isEnabled() && !strokes.isEmpty()) {
                    strokes.get(strokes.size() - 1).lineTo(event.getX(), event.getY());
                    tell();
                }
            }
        };
        addMouseListener(hand);
        addMouseMotionListener(hand);
    }

    /** Tells whenever it is drawn on or cleared. */
    public void onChanged(Runnable watcher) {
        changed = watcher;
    }

    private void tell() {
        repaint();
        changed.run();
    }

    public boolean isBlank() {
        return strokes.isEmpty();
    }

    public void clear() {
        strokes.clear();
        tell();
    }

    /** What was drawn, with a line of words under it. */
    public BufferedImage picture(String words) {
        int foot = 2 * LETTERS;
        BufferedImage made =
                new BufferedImage(getWidth() * FINE, (getHeight() + foot) * FINE, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = made.createGraphics();
        pen.scale(FINE, FINE);
        pen.setColor(PAPER);
        pen.fillRect(0, 0, getWidth(), getHeight() + foot);
        draw(pen);
        pen.setColor(Color.DARK_GRAY);
        pen.setFont(Theme.face(false).deriveFont((float) LETTERS));
        pen.drawString(words, 8, getHeight() + foot - LETTERS / 2);
        pen.dispose();
        return made;
    }

    private void draw(Graphics2D pen) {
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(Color.LIGHT_GRAY);
        int line = getHeight() - 28;
        pen.drawLine(16, line, getWidth() - 16, line);
        pen.setColor(INK);
        pen.setStroke(new BasicStroke(STROKE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        strokes.forEach(pen::draw);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(360, Theme.scaled(HIGH));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setColor(isEnabled() ? PAPER : UIManager.getColor("Panel.background"));
        pen.fillRect(0, 0, getWidth(), getHeight());
        draw(pen);
        pen.dispose();
    }
}
