// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;

/** The program's own picture: a spade that stands in the ground beside a wall, and a drop that stays outside. */
public final class AppIcon {
    /** Sides in pixels that desktops ask for. */
    private static final int[] SIDES = {16, 24, 32, 48, 64, 128, 256};

    /** The drawing is made on a square of this side. */
    private static final double SIDE = 64;

    private static final Color SKY = new Color(0xeef3f1);
    private static final Color WALL = new Color(0x5c6166);
    private static final Color SOIL = new Color(0x8b7355);
    private static final Color WATER = new Color(0x1f6f80);
    private static final Color STEEL = new Color(0x24343a);
    private static final Color HANDLE = new Color(0xc98a3a);

    private AppIcon() {}

    /** The picture in every size. */
    public static List<Image> images() {
        return IntStream.of(SIDES).mapToObj(side -> (Image) image(side)).toList();
    }

    /** @param side in pixels, 16 to 512 */
    public static BufferedImage image(int side) {
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(side / SIDE, side / SIDE);
        Area card = new Area(new RoundRectangle2D.Double(1, 1, 62, 62, 14, 14));
        fill(pen, SKY, card);
        fill(pen, SOIL, within(card, new Rectangle2D.Double(0, 36, 64, 28)));
        fill(pen, WALL, within(card, new Rectangle2D.Double(0, 14, 16, 50)));
        pen.setColor(WATER);
        pen.fill(drop());
        spade(pen);
        pen.dispose();
        return image;
    }

    private static void fill(Graphics2D pen, Color color, Area area) {
        pen.setColor(color);
        pen.fill(area);
    }

    private static Area within(Area card, Rectangle2D part) {
        Area area = new Area(part);
        area.intersect(card);
        return area;
    }

    private static Path2D drop() {
        Path2D drop = new Path2D.Double();
        drop.moveTo(26, 12);
        drop.curveTo(31, 19, 32.5, 21, 32.5, 24.5);
        drop.curveTo(32.5, 33, 19.5, 33, 19.5, 24.5);
        drop.curveTo(19.5, 21, 21, 19, 26, 12);
        drop.closePath();
        return drop;
    }

    private static void spade(Graphics2D pen) {
        AffineTransform upright = pen.getTransform();
        pen.rotate(Math.toRadians(14), 44, 36);
        pen.setColor(HANDLE);
        pen.setStroke(new BasicStroke(5, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D handle = new Path2D.Double();
        handle.moveTo(38, 8);
        handle.lineTo(50, 8);
        handle.moveTo(44, 8);
        handle.lineTo(44, 34);
        pen.draw(handle);
        Path2D blade = new Path2D.Double();
        blade.moveTo(34, 32);
        blade.lineTo(54, 32);
        blade.lineTo(54, 45);
        blade.curveTo(54, 53, 48, 57, 44, 60);
        blade.curveTo(40, 57, 34, 53, 34, 45);
        blade.closePath();
        pen.setColor(STEEL);
        pen.fill(blade);
        pen.setTransform(upright);
    }
}
