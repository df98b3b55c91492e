// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.disk.ChangedElsewhere;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.office.files.FileName;

/** A job file into which the office writes what was agreed. Everything else in it stays. */
public record JobText(Draft draft) {

    /** The text of a job that was read without fault. */
    public static JobText of(String text) {
        return new JobText(Draft.read(text).orElseThrow(() -> new IllegalArgumentException("no JSON object")));
    }

    public String text() {
        return draft.text();
    }

    /** One value, in the spelling of its kind. */
    public JobText with(String pointer, String value) {
        return new JobText(draft.typed(pointer, value));
    }

    /** A list of words. */
    public JobText withWords(String pointer, List<String> words) {
        List<DraftValue> rows = words.stream()
                .map(word -> (DraftValue) new DraftValue.Text(word))
                .toList();
        return rows.isEmpty() ? this : new JobText(draft.with(pointer, new DraftValue.Rows(rows)));
    }

    /** Who signed, when and how: one paper of all, or each one's own signature. */
    public JobText with(String pointer, List<SignatureInput> signatures) {
        List<String> by = signatures.stream().flatMap(one -> one.by().stream()).toList();
        JobText text = with(pointer + "/on", signatures.get(0).on().toString()).withWords(pointer + "/by", by);
        boolean several = signatures.size() > 1;
        for (int i = 0; i < signatures.size(); i++) {
            String place = pointer + (i == 0 ? "/signature" : "/furtherSignatures/" + (i - 1));
            SignatureInput one = signatures.get(i);
            JobText named = several ? text.withWords(place + "/by", one.by()) : text;
            Map<String, String> said = new LinkedHashMap<>();
            one.signature().file().ifPresent(name -> said.put("/file", name));
            one.typed().ifPresent(name -> said.put("/typed", name));
            text = named.with(place, said);
            if (one.typed().isPresent()) {
                text = text.with(place + "/electronic", one.consent());
            }
        }
        return text;
    }

    private JobText with(String pointer, ConsentInput consent) {
        Map<String, String> said = new LinkedHashMap<>();
        consent.given().ifPresent(day -> said.put("/given", day.toString()));
        consent.disclosed().ifPresent(day -> said.put("/disclosed", day.toString()));
        consent.paper().ifPresent(words -> said.put("/paper", words));
        consent.withdrawal().ifPresent(words -> said.put("/withdrawal", words));
        consent.equipment().ifPresent(words -> said.put("/equipment", words));
        consent.access().ifPresent(words -> said.put("/access", words));
        return with(pointer, said);
    }

    /** Values below a place, in the spelling of their kind. */
    private JobText with(String pointer, Map<String, String> values) {
        JobText text = this;
        for (Map.Entry<String, String> value : values.entrySet()) {
            text = text.with(pointer + value.getKey(), value.getValue());
        }
        return text;
    }

    /** What stands at those places of another text, put into this one. */
    public JobText with(JobText other, List<String> pointers) {
        Draft changed = draft;
        for (String pointer : pointers) {
            Optional<DraftValue> value = other.draft.at(pointer);
            changed = value.isPresent() ? changed.with(pointer, value.get()) : changed;
        }
        return new JobText(changed);
    }

    /** A list of words that stands at a place. */
    List<String> words(String list) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < draft.rows(list); i++) {
            words.add(draft.shown(list + "/" + i));
        }
        return words;
    }

    byte[] bytes() {
        return text().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Writes what a step says at those places into the file as it is now: what somebody else saved meanwhile stays.
     *
     * @throws spadework.disk.ChangedElsewhere if the file became something that no step can be written into
     */
    public void write(Path file, List<String> pointers) throws IOException {
        SharedFile.alone(file, () -> {
            Snapshot now = Snapshot.of(file);
            Optional<Draft> draft = now.text().flatMap(Draft::read);
            if (draft.isEmpty()) {
                throw new ChangedElsewhere(file, now, "it is no JSON object any more");
            }
            JobText whole = new JobText(draft.get()).with(this, pointers);
            SharedFile.replace(file, now, whole.text().getBytes(StandardCharsets.UTF_8));
            return whole;
        });
    }

    /** The name under which an entry of the register keeps the job file that it led to. */
    static void keep(Map<String, byte[]> files, String number, JobText text) {
        files.put(FileName.safe(number) + "-job.json", text.text().getBytes(StandardCharsets.UTF_8));
    }
}
