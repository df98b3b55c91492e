package spadework.form;

import java.util.List;
import javax.swing.JCheckBox;
import spadework.draft.Draft;
import spadework.draft.Value;

/** Says of a list that nothing belongs in it, which is not the same as not having said so yet. */
final class NobodyBox extends JCheckBox {
    private final Desk desk;
    private final String list;

    NobodyBox(Desk desk, String list) {
        super(Words.of("nobody" + list.replace('/', '.')));
        this.desk = desk;
        this.list = list;
        setName(list + " nobody");
        getAccessibleContext().setAccessibleName(getText());
        addActionListener(event -> {
            Draft draft = desk.draft();
            desk.edit(isSelected() ? draft.with(list, new Value.Rows(List.of())) : draft.without(list));
        });
        desk.onDraft(this::showDraft);
        showDraft();
    }

    private void showDraft() {
        boolean rows = desk.draft().rows(list) > 0;
        setSelected(!rows && desk.draft().at(list).isPresent());
        setEnabled(!rows);
    }
}
