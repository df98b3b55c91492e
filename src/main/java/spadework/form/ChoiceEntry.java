package spadework.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import spadework.draft.Kind;
import spadework.draft.Outline;
import spadework.draft.Spot;

/** A field for one word out of a few, or for yes and no; it can also be left open. */
final class ChoiceEntry implements Entry {
    private final Desk desk;
    private final Base base;
    private final String key;
    private final JComboBox<Choice> box = new JComboBox<>();
    private final FieldLook look;
    private final List<Choice> choices;
    private boolean showing;

    ChoiceEntry(Desk desk, Base base, String key) {
        this.desk = desk;
        this.base = base;
        this.key = key;
        String format = base.format(key);
        Spot spot = Outline.job().at(format).orElseThrow();
        this.choices = choices(spot);
        box.setModel(new DefaultComboBoxModel<>(choices.toArray(Choice[]::new)));
        box.setName(format);
        box.setMaximumRowCount(14);
        PlainText.inList(box);
        look = new FieldLook(Words.field(format), spot.needed(), box, box, spot.help());
        box.addActionListener(event -> choose());
    }

    /** What may be chosen, with what each is called; first of all nothing. */
    static List<Choice> choices(Spot spot) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(
                "",
                spot.usual()
                        .map(usual -> Words.of("field.usual", Words.or("choice." + usual, usual)))
                        .orElse(Words.of("choice.open"))));
        List<String> words = spot.kind() == Kind.YES_OR_NO ? List.of("true", "false") : spot.choices();
        words.forEach(word -> choices.add(new Choice(word, Words.or("choice." + word, word))));
        return choices;
    }

    private void choose() {
        Optional<String> pointer = pointer();
        if (!showing && pointer.isPresent() && box.getSelectedItem() instanceof Choice choice) {
            desk.type(pointer.get(), choice.word());
            desk.settle();
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
        String says = pointer.map(desk.draft()::shown).orElse("");
        showing = true;
        // A word that the format does not know is shown as it stands, so that it can be seen and mended.
        box.setSelectedItem(Choice.of(choices, says));
        if (!(box.getSelectedItem() instanceof Choice now) || !now.word().equals(says)) {
            box.setModel(new DefaultComboBoxModel<>(Choice.with(choices, says).toArray(Choice[]::new)));
            box.setSelectedItem(new Choice(says, says));
        }
        showing = false;
    }

    @Override
    public void showFaults() {
        showFaults(look, desk);
    }
}
