package spadework.office.agreement;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.office.files.FileName;
import spadework.register.AtomicFile;

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

    public JobText with(String pointer, Optional<String> value) {
        return value.map(text -> with(pointer, text)).orElse(this);
    }

    /** A list of words. */
    public JobText with(String pointer, List<String> words) {
        List<DraftValue> rows = words.stream()
                .map(word -> (DraftValue) new DraftValue.Text(word))
                .toList();
        return rows.isEmpty() ? this : new JobText(draft.with(pointer, new DraftValue.Rows(rows)));
    }

    /** Who signed, when and how. */
    public JobText with(String pointer, SignatureInput yes) {
        return with(pointer + "/on", yes.on().toString())
                .with(pointer + "/by", yes.by())
                .with(pointer + "/signature/file", yes.file())
                .with(pointer + "/signature/typed", yes.typed())
                .with(pointer + "/signature/consent", yes.consent());
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

    public void write(Path file) throws IOException {
        AtomicFile.write(file, text().getBytes(StandardCharsets.UTF_8));
    }

    /** The name under which an entry of the register keeps the job file that it led to. */
    static void keep(Map<String, byte[]> files, String number, JobText text) {
        files.put(FileName.safe(number) + "-job.json", text.text().getBytes(StandardCharsets.UTF_8));
    }
}
