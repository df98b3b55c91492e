// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JTextField;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.TextChanges;

/** A field that belongs to no file: its label above it, what is wrong below. */
public final class StandaloneField {
    private final JTextField field;
    private final LabeledControl look;

    /**
     * Makes a field.
     *
     * @param key of its label in the words, which is the name of the field too
     */
    StandaloneField(String key, String start) {
        field = new JTextField(start);
        field.setName(key);
        look = new LabeledControl(Messages.of(key), false, field, field, Messages.or(key + ".help", ""));
    }

    JPanel panel() {
        return look.panel();
    }

    JTextField field() {
        return field;
    }

    String text() {
        return field.getText().strip();
    }

    void onTyped(Runnable typed) {
        TextChanges.in(field, typed);
    }

    /** The words in it; nothing, and it is marked, where there are none. */
    Optional<String> needed() {
        look.tell(
                text().isEmpty()
                        ? List.of(fault(Messages.of("standalone.nothing"), Messages.of("standalone.words")))
                        : List.of());
        return text().isEmpty() ? Optional.empty() : Optional.of(text());
    }

    /** Whether a day stands in it, or nothing where nothing may; it is marked where it is no day. */
    boolean isDay(boolean needed) {
        boolean fits = text().isEmpty() ? !needed : day().isPresent();
        look.tell(
                fits
                        ? List.of()
                        : List.of(fault(
                                text().isEmpty() ? Messages.of("standalone.nothing") : "\"" + text() + "\"",
                                Messages.of("standalone.day"))));
        return fits;
    }

    /** The day in it. */
    Optional<LocalDate> day() {
        try {
            return Optional.of(LocalDate.parse(text()));
        } catch (DateTimeParseException other) {
            return Optional.empty();
        }
    }

    private static Fault fault(String found, String allowed) {
        return new Fault(Place.ofFile(""), found, allowed, Messages.of("standalone.fix"));
    }
}
