// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import spadework.draft.FieldKind;
import spadework.draft.FileSchema;
import spadework.draft.SchemaField;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.TypedPrefix;
import spadework.form.kit.WordChoice;
import spadework.form.session.JobSession;

/** A field for one word out of a few, or for yes and no; it can also be left open. */
public final class BoundChoiceField implements BoundField {
    private final JobSession session;
    private final BasePointer base;
    private final String key;
    private final JComboBox<WordChoice> box = new JComboBox<>();
    private final LabeledControl look;
    private final List<WordChoice> choices;
    private boolean showing;

    public BoundChoiceField(JobSession session, BasePointer base, String key) {
        this(session, base, key, Messages.field(base.format(key)));
    }

    /** @param name what it is called where its own name would not tell it from others beside it */
    public BoundChoiceField(JobSession session, BasePointer base, String key, String name) {
        this.session = session;
        this.base = base;
        this.key = key;
        String format = base.format(key);
        SchemaField spot = FileSchema.job().at(format).orElseThrow();
        this.choices = choices(spot);
        box.setModel(new DefaultComboBoxModel<>(choices.toArray(WordChoice[]::new)));
        box.setName(format);
        box.setMaximumRowCount(14);
        PlainText.inList(box);
        TypedPrefix.in(box);
        look = new LabeledControl(name, spot.needed(), box, box, Messages.help(spot));
        box.addActionListener(event -> choose());
    }

    /** What may be chosen, with what each is called; first of all nothing. */
    static List<WordChoice> choices(SchemaField spot) {
        List<WordChoice> choices = new ArrayList<>();
        choices.add(new WordChoice(
                "",
                spot.usual()
                        .map(usual -> Messages.of("field.usual", Messages.or("choice." + usual, usual)))
                        .orElse(Messages.of("choice.unsaid"))));
        List<String> words = spot.kind() == FieldKind.YES_OR_NO ? List.of("true", "false") : spot.choices();
        words.forEach(word -> choices.add(new WordChoice(word, Messages.or("choice." + word, word))));
        return choices;
    }

    private void choose() {
        Optional<String> pointer = pointer();
        if (!showing && pointer.isPresent() && box.getSelectedItem() instanceof WordChoice choice) {
            session.type(pointer.get(), choice.word());
            session.settle();
        }
    }

    @Override
    public Optional<String> pointer() {
        return base.at(key);
    }

    @Override
    public JComponent control() {
        return box;
    }

    @Override
    public JPanel panel() {
        return look.panel();
    }

    @Override
    public void showDraft() {
        Optional<String> pointer = pointer();
        box.setEnabled(pointer.isPresent());
        String says = pointer.map(session.draft()::shown).orElse("");
        showing = true;
        // A word that the format does not know is shown as it stands, so that it can be seen and fixed.
        box.setSelectedItem(WordChoice.of(choices, says));
        if (!(box.getSelectedItem() instanceof WordChoice now) || !now.word().equals(says)) {
            box.setModel(
                    new DefaultComboBoxModel<>(WordChoice.with(choices, says).toArray(WordChoice[]::new)));
            box.setSelectedItem(new WordChoice(says, says));
        }
        showing = false;
    }

    @Override
    public void showFaults() {
        showFaults(look, session);
    }
}
