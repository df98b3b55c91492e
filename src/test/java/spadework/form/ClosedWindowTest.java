// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.Window;
import java.io.IOException;
import java.lang.ref.WeakReference;
import java.nio.file.Path;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.form.kit.Theme;

/** A job that was closed is let go of, also when the look changes before its window is forgotten. */
@WindowTest
class ClosedWindowTest {
    @TempDir
    Path folder;

    @AfterEach
    void light() {
        GuiActionRunner.execute(() -> Theme.apply(false));
    }

    /** The toolkit may go on holding the window that had the keyboard last, but no more than that one. */
    @Test
    void memoryOfAClosedWindowIsFreed() throws IOException {
        WeakReference<Window> closed = openedAndClosed("block-basement-to-swale");
        openedAndClosed("corners-by-assembly");
        GuiActionRunner.execute(() -> Theme.apply(true));
        try (OnScreen another = OnScreen.job(SampleCopies.of("stone-wall-engineer-first", folder))) {
            another.waitFor("a closed window to be forgotten", () -> {
                System.gc();
                return closed.refersTo(null);
            });
        }
    }

    private WeakReference<Window> openedAndClosed(String sample) throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of(sample, folder))) {
            return new WeakReference<>(screen.job());
        }
    }
}
