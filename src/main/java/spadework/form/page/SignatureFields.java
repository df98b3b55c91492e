// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JTextField;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.office.agreement.Canceling;
import spadework.office.agreement.ConsentInput;
import spadework.office.agreement.SignatureInput;

/** Who signed, when and how: entered for one step, and written into the job by that step alone. */
public final class SignatureFields {
    private final String step;
    private final Map<String, JTextField> fields = new LinkedHashMap<>();
    private final Map<String, LabeledControl> looks = new LinkedHashMap<>();

    /** @param step names the fields, as {@code accept on} */
    SignatureFields(String step) {
        this.step = step;
    }

    /** The fields that take a signature, put on a page. */
    SignatureFields onto(FormPage page) {
        field(page, "on", 3);
        field(page, "by", 9);
        field(page, "file", 3);
        field(page, "typed", 3);
        field(page, "given", 3);
        field(page, "disclosed", 3);
        field(page, "paper", 4);
        field(page, "withdrawal", 4);
        field(page, "equipment", 6);
        field(page, "access", 6);
        return this;
    }

    /** One field on a page. */
    void field(FormPage page, String key, int wide) {
        JTextField field = new JTextField();
        field.setName(step + " " + key);
        field.putClientProperty("JTextField.placeholderText", Messages.or("signed." + key + ".example", ""));
        LabeledControl look = new LabeledControl(
                Messages.of("signed." + key), false, field, field, Messages.of("signed." + key + ".help"));
        fields.put(key, field);
        looks.put(key, look);
        page.put(look.panel(), "span " + wide + ", top, wmin 40");
    }

    /** What stands in a field; nothing where it is empty. */
    Optional<String> said(String key) {
        return Optional.of(fields.get(key).getText().strip()).filter(text -> !text.isEmpty());
    }

    /** Marks the fields that hold no day, and says so; whether all hold one, or may be empty and are. */
    boolean areDays(String... keys) {
        boolean all = true;
        for (String key : keys) {
            boolean optional = key.endsWith("?");
            String name = key.replace("?", "");
            boolean day = said(name).map(SignatureFields::isDay).orElse(optional);
            looks.get(name)
                    .tell(day ? "" : Messages.of("signed.day", fields.get(name).getText()));
            all &= day;
        }
        return all;
    }

    private static boolean isDay(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException noDay) {
            return false;
        }
    }

    /** The day in a field that holds one. */
    LocalDate day(String key) {
        return LocalDate.parse(said(key).orElseThrow());
    }

    private List<String> names(String key) {
        return said(key).stream()
                .flatMap(names -> Stream.of(names.split(";")))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    /** A notice of cancellation, of fields that hold a day. */
    Canceling.NoticeInput notice() {
        return new Canceling.NoticeInput(
                names("giver"), said("sent").map(LocalDate::parse), day("received"), said("notice"), said("released"));
    }

    /** What was signed, of fields that hold a day. */
    SignatureInput yes() {
        ConsentInput consent = new ConsentInput(
                said("given").map(LocalDate::parse),
                said("disclosed").map(LocalDate::parse),
                said("paper"),
                said("withdrawal"),
                said("equipment"),
                said("access"));
        return new SignatureInput(day("on"), names("by"), said("file"), said("typed"), consent);
    }

    /** Empties them, once what they say is written. */
    void clear() {
        fields.values().forEach(field -> field.setText(""));
    }

    void enable(boolean may) {
        fields.values().forEach(field -> field.setEnabled(may));
    }
}
