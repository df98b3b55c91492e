package spadework.form.field;

import java.util.List;
import javax.swing.JCheckBox;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;

/** Says of a list that nothing belongs in it, which is not the same as not having said so yet. */
public final class EmptyListCheckBox extends JCheckBox {
    private final JobSession desk;
    private final String list;

    public EmptyListCheckBox(JobSession desk, String list) {
        super(Messages.of("nobody" + list.replace('/', '.')));
        this.desk = desk;
        this.list = list;
        setName(list + " nobody");
        getAccessibleContext().setAccessibleName(getText());
        addActionListener(event -> {
            Draft draft = desk.draft();
            desk.edit(isSelected() ? draft.with(list, new DraftValue.Rows(List.of())) : draft.without(list));
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
