// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.TransferHandler;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** Takes files that are dropped on it or pasted into it, or chosen by its button. */
public final class DropArea extends JPanel {
    private final Consumer<List<Path>> dropped;

    /**
     * Makes the area.
     *
     * @param name of its button
     * @param words what may be dropped here
     * @param choose asks for files
     * @param dropped given files on the window's thread
     */
    public DropArea(String name, String words, String button, Runnable choose, Consumer<List<Path>> dropped) {
        super(new MigLayout("insets 8 12 8 12, gap 8, fillx", "[grow,fill][]"));
        this.dropped = dropped;
        setOpaque(false);
        add(new JLabel(words), "wmin 60");
        JButton pressed = new JButton(KeyBindings.action(button, choose));
        pressed.setName(name);
        pressed.getAccessibleContext().setAccessibleName(button);
        add(pressed);
        setTransferHandler(new Files());
        KeyBindings.inside(
                this,
                "ctrl V",
                () -> TransferHandler.getPasteAction()
                        .actionPerformed(new java.awt.event.ActionEvent(this, 0, "paste")));
    }

    /** Has another component take dropped files as well. */
    public void alsoOn(JComponent other) {
        other.setTransferHandler(new Files());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setColor(UIManager.getColor("Component.borderColor"));
        pen.setStroke(new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0));
        pen.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, 8, 8);
        pen.dispose();
    }

    private final class Files extends TransferHandler {
        @Override
        public boolean canImport(TransferSupport support) {
            return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
        }

        @Override
        public boolean importData(TransferSupport support) {
            if (!canImport(support)) {
                return false;
            }
            try {
                List<Path> files = new ArrayList<>();
                Object given = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
                for (Object file : (List<?>) given) {
                    files.add(((File) file).toPath());
                }
                dropped.accept(files);
                return true;
            } catch (UnsupportedFlavorException | IOException refused) {
                return false;
            }
        }
    }
}
