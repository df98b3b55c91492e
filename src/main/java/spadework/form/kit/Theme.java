// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Window;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;

/** The window's own look: the face of the papers, one accent, light or dark. */
public final class Theme {
    private static final float SIZE = 14;
    private static final Font REGULAR = read("SourceSans3_400Regular.ttf");
    private static final Font BOLD = read("SourceSans3_600SemiBold.ttf");

    private static float larger = 1;

    private Theme() {}

    /** Whether the look is on. */
    public static boolean isOn() {
        return UIManager.getLookAndFeel() instanceof FlatLaf;
    }

    /** How much larger than usual letters, fields, and buttons are; 1 as usual, at most 2. */
    public static void size(float times, boolean dark) {
        larger = Math.max(1, Math.min(2, times));
        apply(dark);
    }

    /** A step larger or smaller, in the look that is on. */
    public static void step(float by) {
        size(larger + by, FlatLaf.isLafDark());
    }

    /** So many pixels of the usual size, at the size that is on. */
    public static int scaled(int pixels) {
        return Math.round(pixels * larger);
    }

    /** Puts the look on, and on the windows that are open. */
    public static void apply(boolean dark) {
        FlatLaf.setGlobalExtraDefaults(Map.of(
                "@accentColor", dark ? "#5fa8b8" : "#1f6f80",
                "Component.focusWidth", "1",
                "TextComponent.arc", "4",
                "Button.arc", "4",
                "Component.arc", "4",
                "Table.showHorizontalLines", "true",
                "ScrollBar.width", "12"));
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        UIManager.put("defaultFont", new FontUIResource(REGULAR.deriveFont(SIZE * larger)));
        UIManager.put("Spadework.fault", dark ? new Color(0xffa59e) : new Color(0xb3261e));
        UIManager.put("Spadework.quiet", dark ? new Color(0xc0c6cb) : new Color(0x5c6166));
        UIManager.put("Label.disabledForeground", UIManager.get("Spadework.quiet"));
        UIManager.put("TextField.placeholderForeground", UIManager.get("Spadework.quiet"));
        UIManager.put("Spadework.missing", dark ? new Color(0xd9a441) : new Color(0x875a00));
        UIManager.put("Spadework.soil", dark ? new Color(0xa89880) : new Color(0x8b7355));
        UIManager.put("Spadework.water", dark ? new Color(0x7cc0cf) : new Color(0x1f6f80));
        // Not those that were closed: a new look enters their keys with the toolkit again, which then keeps them for
        // good.
        Stream.of(Window.getWindows()).filter(Window::isDisplayable).forEach(SwingUtilities::updateComponentTreeUI);
    }

    /** The face of the papers. */
    public static Font face(boolean bold) {
        return bold ? BOLD : REGULAR;
    }

    /** The weight for key figures. */
    public static Font bold(float size) {
        return BOLD.deriveFont(size * larger);
    }

    private static Font read(String file) {
        try (InputStream in = Theme.class.getResourceAsStream("/templates/fonts/" + file)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException unusable) {
            throw new UncheckedIOException(new IOException(file, unusable));
        }
    }
}
