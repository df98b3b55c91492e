package spadework.office.agreement;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spadework.office.Outcome;
import spadework.office.records.JobRecords;
import spadework.register.Entry;

/** A step that was registered while the job file does not say so: the program died between the two. */
public final class InterruptedStep {
    private InterruptedStep() {}

    /**
     * Writes into the job file what the register says of it.
     *
     * @param pointers the places that the step writes
     */
    static Outcome written(JobRecords records, Entry entry, JobText text, List<String> pointers, Path file)
            throws IOException {
        String number = entry.number().orElseThrow().text();
        Optional<byte[]> kept = records.file(entry, "-job.json");
        if (kept.isEmpty()) {
            return new Outcome.Refused(List.of(number + " is registered, but the job file that it kept is gone. "
                    + "Run: spadework register check"));
        }
        JobText agreed = JobText.of(new String(kept.get(), StandardCharsets.UTF_8));
        JobText whole = text.with(agreed, pointers);
        if (whole.equals(text)) {
            return new Outcome.Standing(number);
        }
        whole.write(file);
        return new Outcome.Issued(number, RegisteredFiles.paths(records.folder(), entry));
    }
}
