// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.CalendarPick;
import spadework.form.kit.DropArea;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.SignaturePad;
import spadework.form.session.JobFiles;
import spadework.office.agreement.Canceling;
import spadework.office.agreement.ConsentInput;
import spadework.office.agreement.SignatureInput;

/** Who signed, when and how: entered for one step, and written into the job by that step alone. */
public final class SignatureFields {
    private static final Set<String> DAYS = Set.of("on", "given", "disclosed", "received", "sent", "completed");

    private final String step;
    private final SignaturePad pad;
    private final List<JButton> drawn = new ArrayList<>();
    private boolean may = true;
    private Optional<String> kept = Optional.empty();
    private final Map<String, JTextField> fields = new LinkedHashMap<>();
    private final Map<String, LabeledControl> looks = new LinkedHashMap<>();

    /** @param step names the fields, as {@code accept on} */
    SignatureFields(String step) {
        this.step = step;
        pad = new SignaturePad(step + " pad");
    }

    /** The fields that take a signature, put on a page. */
    SignatureFields onto(FormPage page, JobFiles files) {
        field(page, "on", 3);
        field(page, "by", 9);
        field(page, "file", 3);
        field(page, "typed", 3);
        DropArea area = new DropArea(
                step + " paper",
                Messages.of("signed.drop"),
                Messages.of("signed.choose"),
                () -> files.choosePaper(page, this::signedOn),
                dropped -> dropped.stream().findFirst().ifPresent(file -> files.paper(file, this::signedOn)));
        area.alsoOn(fields.get("file"));
        page.put(area, "span 6, aligny bottom, wmin 60");
        page.put(pad, "newline, span 8, wmin 60");
        JButton keep = new JButton(KeyBindings.action(Messages.of("sign.keep"), () -> keep(files)));
        keep.setName(step + " keep");
        keep.getAccessibleContext().setAccessibleName(Messages.of("sign.keep"));
        JButton clear = new JButton(KeyBindings.action(Messages.of("sign.clear"), pad::clear));
        clear.setName(step + " clear");
        clear.getAccessibleContext().setAccessibleName(Messages.of("sign.clear"));
        drawn.addAll(List.of(keep, clear));
        pad.onChanged(this::allowDrawn);
        JPanel beside = new JPanel(new MigLayout("insets 0, gap 6, wrap 1, fillx", "[grow,fill]"));
        beside.setOpaque(false);
        beside.add(keep);
        beside.add(clear);
        page.put(beside, "span 4, top, wmin 60");
        allowDrawn();
        field(page, "given", 3);
        field(page, "disclosed", 3);
        field(page, "paper", 4);
        field(page, "withdrawal", 4);
        field(page, "equipment", 6);
        field(page, "access", 6);
        return this;
    }

    private void signedOn(String name) {
        fields.get("file").setText(name);
    }

    private void allowDrawn() {
        drawn.forEach(button -> button.setEnabled(may && !pad.isBlank()));
    }

    /** Keeps what was drawn, with its time; by whom is typed beside it. */
    private void keep(JobFiles files) {
        LocalDateTime now = LocalDateTime.now(ZoneId.systemDefault());
        files.signature(pad.picture(JobFiles.drawn(now)), now, name -> {
            kept = Optional.of(name);
            signedOn(name);
        });
    }

    /** The name of who signed on the screen: as good as typed, so it needs the same consent. */
    private Optional<String> typed() {
        boolean onScreen = kept.isPresent() && kept.equals(said("file"));
        return said("typed").or(() -> onScreen ? said("by") : Optional.empty());
    }

    /** One field on a page. */
    void field(FormPage page, String key, int wide) {
        JTextField field = new JTextField();
        field.setName(step + " " + key);
        if (DAYS.contains(key)) {
            new CalendarPick(field, page.session()::day);
        }
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
        return new SignatureInput(day("on"), names("by"), said("file"), typed(), consent);
    }

    /** Empties them, once what they say is written. */
    void clear() {
        fields.values().forEach(field -> field.setText(""));
        pad.clear();
    }

    void enable(boolean now) {
        may = now;
        pad.setEnabled(now);
        pad.repaint();
        allowDrawn();
        fields.values().forEach(field -> field.setEnabled(now));
    }
}
