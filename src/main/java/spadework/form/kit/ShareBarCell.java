// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.util.function.IntToDoubleFunction;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;

/** A figure in a cell over a bar that is as long as its share, so that parts are compared at a glance. */
public final class ShareBarCell extends DefaultTableCellRenderer {
    /** Of 255: letters keep their contrast over it. */
    static final int FAINT = 48;

    private final IntToDoubleFunction share;
    private double shown;

    /** @param share from 0 to 1 of a row of the model */
    public ShareBarCell(IntToDoubleFunction share) {
        this.share = share;
        PlainText.of(this);
        setHorizontalAlignment(SwingConstants.RIGHT);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        shown = Math.max(0, Math.min(1, share.applyAsDouble(table.convertRowIndexToModel(row))));
        return super.getTableCellRendererComponent(table, value, selected, focused, row, column);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(getBackground());
        graphics.fillRect(0, 0, getWidth(), getHeight());
        Color water = UIManager.getColor("Spadework.water");
        graphics.setColor(new Color(water.getRed(), water.getGreen(), water.getBlue(), FAINT));
        graphics.fillRect(0, 2, (int) Math.round(getWidth() * shown), getHeight() - 4);
        setOpaque(false);
        super.paintComponent(graphics);
        setOpaque(true);
    }
}
