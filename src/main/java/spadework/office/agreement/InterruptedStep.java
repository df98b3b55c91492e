// SPDX-License-Identifier: Apache-2.0
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

    /** The job file as an entry kept it; empty where it is gone. */
    static Optional<JobText> kept(JobRecords records, Entry entry) throws IOException {
        Optional<byte[]> bytes = records.file(entry, "-job.json");
        return bytes.map(text -> JobText.of(new String(text, StandardCharsets.UTF_8)));
    }

    /**
     * Writes into the job file what the register says of it.
     *
     * @param pointers the places that the step writes
     */
    static Outcome written(JobRecords records, Entry entry, JobText text, List<String> pointers, Path file)
            throws IOException {
        String number = entry.number().orElseThrow().text();
        Optional<JobText> kept = kept(records, entry);
        if (kept.isEmpty()) {
            return new Outcome.Refused(List.of(number + " is registered, but the job file that it kept is gone. "
                    + "Run: spadework register check"));
        }
        JobText whole = text.with(kept.get(), pointers);
        if (whole.equals(text)) {
            return new Outcome.Standing(number);
        }
        whole.write(file, pointers);
        return new Outcome.Issued(number, RegisteredFiles.paths(records.folder(), entry));
    }
}
