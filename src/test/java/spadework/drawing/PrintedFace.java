// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** The face that drawings are printed in, measured by the machine's own font code from the font files. */
public final class PrintedFace {
    private static final Font REGULAR = face("SourceSans3_400Regular.ttf");
    private static final Font BOLD = face("SourceSans3_700Bold.ttf");
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private PrintedFace() {}

    /** Width in points of a text at that size in points. */
    public static double width(String text, double size, boolean bold) {
        return (bold ? BOLD : REGULAR).getStringBounds(text, EXACT).getWidth() / 1000 * size;
    }

    private static Font face(String file) {
        try {
            return Font.createFont(
                            Font.TRUETYPE_FONT, Path.of("templates/fonts", file).toFile())
                    .deriveFont(1000f);
        } catch (FontFormatException | IOException broken) {
            throw new UncheckedIOException(new IOException(broken));
        }
    }
}
