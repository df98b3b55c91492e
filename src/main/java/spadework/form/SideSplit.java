// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;

/**
 * The page, and beside it what comes of it; where there is not room for both, the page alone until the other is asked
 * for.
 */
final class SideSplit extends JSplitPane {
    /** Pixels of the usual size that a page takes at least. */
    private static final int LEAST_PAGE = 640;

    /** Pixels of the usual size below which what is beside the page cannot be read. */
    private static final int LEAST_SIDE = 240;

    private static final double SHARE = 0.62;

    SideSplit(JComponent page, JComponent side) {
        super(HORIZONTAL_SPLIT, true, page, side);
        setName("split");
        getAccessibleContext().setAccessibleName(Messages.of("split"));
        setResizeWeight(SHARE);
        setBorder(null);
        // The toolkit would take the key that shows and hides the margin, from every field in it.
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("F8"), "none");
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                divide();
            }
        });
    }

    private void divide() {
        int wide = getWidth();
        int page = Math.max(Math.min(wide, Theme.scaled(LEAST_PAGE)), (int) (wide * SHARE));
        setDividerLocation(wide - page < Theme.scaled(LEAST_SIDE) ? wide : page);
    }

    /** Makes room for what is beside the page, if it has too little. */
    void showSide() {
        int wide = getWidth();
        if (wide > 0 && wide - getDividerLocation() < Theme.scaled(LEAST_SIDE)) {
            setDividerLocation(Math.max(0, wide - Math.max(Theme.scaled(LEAST_SIDE), wide / 2)));
        }
    }
}
