// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.Container;
import java.awt.event.MouseWheelEvent;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;

/** The wheel scrolls what is under it; where that is at its end, or has nothing to scroll, what lies around it. */
public final class WheelScroll {
    private WheelScroll() {}

    /** Has a pane that lies inside another hand on what it has no use for. */
    public static JScrollPane in(JScrollPane pane) {
        // The toolkit's own way takes every turn of the wheel, also at the end.
        pane.setWheelScrollingEnabled(false);
        pane.addMouseWheelListener(event -> turn(pane, event));
        return pane;
    }

    private static void turn(JScrollPane pane, MouseWheelEvent event) {
        JScrollBar bar = event.isShiftDown() ? pane.getHorizontalScrollBar() : pane.getVerticalScrollBar();
        double turned = event.getPreciseWheelRotation();
        if (canMove(bar, turned)) {
            int step = bar.getUnitIncrement(turned > 0 ? 1 : -1);
            double by = turned * Math.max(1, event.getScrollAmount()) * step;
            bar.setValue(bar.getValue() + (int) Math.signum(by) * Math.max(1, (int) Math.abs(Math.round(by))));
            event.consume();
        } else {
            handOn(pane, event);
        }
    }

    private static boolean canMove(JScrollBar bar, double turned) {
        return bar.isVisible()
                && (turned > 0
                        ? bar.getValue() + bar.getVisibleAmount() < bar.getMaximum()
                        : bar.getValue() > bar.getMinimum());
    }

    private static void handOn(JScrollPane pane, MouseWheelEvent event) {
        Container around = SwingUtilities.getAncestorOfClass(JScrollPane.class, pane);
        if (around != null) {
            around.dispatchEvent(SwingUtilities.convertMouseEvent(pane, event, around));
            event.consume();
        }
    }
}
