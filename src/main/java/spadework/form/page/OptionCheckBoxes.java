// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.office.agreement.Progress;

/** The options of the job, each with its price, to be ticked as the homeowner takes them. */
public final class OptionCheckBoxes extends JPanel {
    private final Map<String, JCheckBox> boxes = new LinkedHashMap<>();
    private List<Progress.Offer> shown = List.of();

    OptionCheckBoxes() {
        super(new MigLayout("insets 0, gap 4, fillx, wrap 1", "[grow,fill]"));
        setOpaque(false);
        setName("offers");
        getAccessibleContext().setAccessibleName(Messages.of("offers"));
    }

    /**
     * Shows them.
     *
     * @param signed whether somebody has signed which are taken; nothing can be ticked any more, as all sign the same
     */
    void show(List<Progress.Offer> offers, boolean signed) {
        if (!offers.equals(shown)) {
            TreeSet<String> taken = new TreeSet<>(taken());
            shown = offers;
            boxes.clear();
            removeAll();
            for (Progress.Offer offer : offers) {
                JCheckBox box = PlainText.of(new JCheckBox());
                box.setText(Messages.of("offer", offer.label(), offer.title(), offer.price()));
                box.setName("take " + offer.label());
                box.getAccessibleContext().setAccessibleName(box.getText());
                box.setSelected(offer.taken() || (!signed && taken.contains(offer.label())));
                boxes.put(offer.label(), box);
                add(box, "wmin 60");
            }
            revalidate();
            repaint();
        }
        setVisible(!offers.isEmpty());
        boxes.values().forEach(box -> box.setEnabled(!signed));
    }

    /** Labels of those that are ticked, in their order. */
    List<String> taken() {
        return boxes.entrySet().stream()
                .filter(box -> box.getValue().isSelected())
                .map(Map.Entry::getKey)
                .toList();
    }
}
