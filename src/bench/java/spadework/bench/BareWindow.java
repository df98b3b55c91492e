// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import com.formdev.flatlaf.FlatLightLaf;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;

/** The least that any window with this look does: a frame with one table. */
final class BareWindow {
    private BareWindow() {}

    public static void main(String[] none) {
        WindowWatch.begin();
        SwingUtilities.invokeLater(() -> {
            FlatLightLaf.setup();
            JFrame frame = new JFrame("table");
            frame.add(new JScrollPane(new JTable(40, 8)));
            frame.setSize(1366, 768);
            frame.setVisible(true);
        });
    }
}
