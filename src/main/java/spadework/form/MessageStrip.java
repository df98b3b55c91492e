// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.Theme;

/** The room that is kept for messages, whether or not there are any: nothing in the window moves when one comes. */
final class MessageStrip extends JPanel {
    private static final int HIGH = 46;
    private static final int MOST = 64;

    /**
     * Lays messages side by side.
     *
     * @param notice of the window
     * @param faults of the field that has the keyboard
     */
    MessageStrip(JComponent notice, JComponent faults) {
        super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[grow 60,fill][grow 40,fill]", "[grow,fill]"));
        setName("messages");
        add(notice, "w 0:300:, growx, pushx");
        add(faults, "w 0:200:, growx, pushx");
    }

    @Override
    public Dimension getPreferredSize() {
        // Large letters leave the page its room; what does not fit is read by the wheel.
        return new Dimension(100, Math.min(MOST, Theme.scaled(HIGH)));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, UIManager.getColor("Component.borderColor")));
    }
}
