// SPDX-License-Identifier: Apache-2.0
package spadework.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** Turns a picture upright and makes it as small as print needs. */
final class Upright {
    private Upright() {}

    /**
     * The picture as it was seen.
     *
     * @param orientation 1 to 8 as Exif counts
     * @param longest side in pixels; a smaller picture stays as large as it is
     */
    static BufferedImage of(BufferedImage picture, int orientation, int longest) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        double scale = Math.min(1, (double) longest / Math.max(width, height));
        int wide = Math.max(1, (int) Math.round(width * scale));
        int high = Math.max(1, (int) Math.round(height * scale));
        boolean lies = orientation >= 5;
        boolean clear = picture.getColorModel().hasAlpha();
        BufferedImage upright = new BufferedImage(
                lies ? high : wide,
                lies ? wide : high,
                clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = upright.createGraphics();
        canvas.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        canvas.transform(turn(orientation, wide, high));
        canvas.drawImage(picture, 0, 0, wide, high, null);
        canvas.dispose();
        return upright;
    }

    /** From the picture as it lies in the file to the picture as it was seen (Exif 2.32, 4.6.4, tag 274). */
    private static AffineTransform turn(int orientation, int wide, int high) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, wide, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, wide, high);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, high);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, high, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, high, wide);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, wide);
            default -> new AffineTransform();
        };
    }
}
