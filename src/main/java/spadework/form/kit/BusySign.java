// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.JProgressBar;
import javax.swing.Timer;

/** Shows, in room that is kept for it, that something is under way; what takes no longer than a blink shows nothing. */
public final class BusySign extends JProgressBar {
    private static final int BLINK = 100;

    private final WorkCounter work;
    private final Timer timer = new Timer(BLINK, event -> look());
    private int seen;

    public BusySign(WorkCounter work) {
        this.work = work;
        setName("busy");
        setPreferredSize(new Dimension(56, 6));
        setBorderPainted(false);
        getAccessibleContext().setAccessibleName(Messages.of("busy.idle"));
    }

    @Override
    public void addNotify() {
        super.addNotify();
        timer.start();
    }

    @Override
    public void removeNotify() {
        timer.stop();
        super.removeNotify();
    }

    /** Its room stays; nothing is drawn in it while nothing is under way. */
    @Override
    public void paint(Graphics graphics) {
        if (isIndeterminate()) {
            super.paint(graphics);
        }
    }

    private void look() {
        seen = work.isIdle() ? 0 : seen + 1;
        boolean busy = seen > 1;
        if (busy != isIndeterminate()) {
            setIndeterminate(busy);
            getAccessibleContext().setAccessibleName(Messages.of(busy ? "busy" : "busy.idle"));
        }
    }
}
